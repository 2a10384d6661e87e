package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.chamber.HoldBox;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.Touch;

/** Reads the surroundings of a face. What a face does not state, its stage does. */
final class FaceReader {

  /** In place of a wetness: the face dries, is fed from inside and grows a crust. */
  private static final String DRYING = "drying";

  /** What says how contact begins. */
  private static final List<String> SETTLING =
      List.of("first-conductance", "settling-time", "plate-drop", "cooling-time");

  private final CutSetup cut;
  private final double pressure;
  private final HeatTransferReader heatTransfers;
  private final CoverReader covers;
  private final DraughtReader draughts;

  FaceReader(CutSetup cut, double pressure, CoverReader covers) {
    this.cut = cut;
    this.pressure = pressure;
    this.heatTransfers = new HeatTransferReader(cut, pressure);
    this.covers = covers;
    this.draughts = new DraughtReader(cut, pressure);
  }

  /** Surroundings of one side by what a stage states for all of the surface. */
  FaceSetup ofStage(Section stage, Side side) {
    return of(stage, stage, side);
  }

  /**
   * Surroundings of one face, which may state its own chamber, contact or board, wetness and
   * emissivity, and coals below if it is the lower one.
   */
  FaceSetup ofFace(Entry face, Section stage, Side side) {
    Section section =
        side == Side.UPPER
            ? face.section("chamber", "wetness", "emissivity", "contact", "board")
            : face.section("chamber", "wetness", "emissivity", "contact", "board", "coal-bed");
    return of(section, stage, side);
  }

  /** Surroundings in an insulated box. */
  FaceSetup inBox(Section stage) {
    for (String key :
        List.of(
            "chamber", "wetness", "emissivity", "contact", "board", "coal-bed", "wrap", "lid")) {
      stage
          .optional(key)
          .ifPresent(
              entry -> {
                throw entry.error("no " + key + " beside box, which keeps heat and vapour");
              });
    }
    Section box = stage.required("box").section("room", "loss");
    double room = box.quantity("room", Dimension.TEMPERATURE, 233.15, 373.15);
    double loss =
        box.optional("loss")
            .map(entry -> entry.quantity(Dimension.HEAT_TRANSFER, 0.1, 5))
            .orElse(HoldBox.LOSS_COEFFICIENT);
    return new FaceSetup(
        room,
        room,
        0,
        new HeatTransfer.Stated(loss),
        0,
        0,
        cut.waterActivity(),
        Optional.empty(),
        Optional.empty(),
        CoverSetup.NONE,
        0);
  }

  private FaceSetup of(Section face, Section stage, Side side) {
    Optional<Entry> stated = face.optional("wetness").or(() -> stage.optional("wetness"));
    boolean drying = isDrying(stated, stage);
    double wetness = drying ? 1 : stated.orElseThrow().quantity(Dimension.SHARE, 0, 1);
    double emissivity =
        face.optional("emissivity")
            .or(() -> stage.optional("emissivity"))
            .map(entry -> entry.quantity(Dimension.SHARE, 0, 1))
            .orElse(cut.emissivity());
    Section chamber =
        inherited("chamber", face, stage)
            .section("air", "walls", "humidity-ratio", "heat-transfer", "draught");
    double air = chamber.quantity("air", Dimension.TEMPERATURE, 233.15, 873.15);
    double walls =
        chamber
            .optional("walls")
            .map(entry -> entry.quantity(Dimension.TEMPERATURE, 233.15, 1473.15))
            .orElse(air);
    Optional<Draught> draught = draughts.read(chamber);
    return new FaceSetup(
        air,
        walls,
        draught.isPresent()
            ? draughtHumidity(chamber, draught.get())
            : humidityRatio(chamber, air, wetness),
        heatTransfers.read(chamber, side, air),
        emissivity,
        wetness,
        cut.waterActivity(),
        touching(face).or(() -> touching(stage)),
        side == Side.UPPER
            ? Optional.empty()
            : face.optional("coal-bed").or(() -> stage.optional("coal-bed")).map(this::bed),
        new CoverSetup(
            covers.wrap(stage),
            covers.lid(stage, walls),
            draught
                .map(flow -> draughts.load(flow, chamber, stage, drying, air))
                .orElse(AirLoad.NONE)),
        drying ? cut.surface().drive() : 0);
  }

  /** As stated, else as it is of a cut whose surface is stated. */
  private boolean isDrying(Optional<Entry> wetness, Section stage) {
    if (wetness.isEmpty()) {
      return cut.surface().isStated() || stage.required("wetness").text().equals(DRYING);
    }
    boolean drying = wetness.get().text().equals(DRYING);
    if (!drying && wetness.get().text().chars().noneMatch(Character::isDigit)) {
      throw wetness.get().error("a share, such as 0.3 or 30 %, or " + DRYING);
    }
    return drying;
  }

  private static double draughtHumidity(Section chamber, Draught draught) {
    chamber
        .optional("humidity-ratio")
        .ifPresent(
            entry -> {
              throw entry.error("no humidity-ratio beside draught, which says what it is");
            });
    return draught.humidityRatio();
  }

  private Optional<ContactSetup> touching(Section section) {
    Optional<Entry> board = section.optional("board");
    if (board.isPresent() && section.has("contact")) {
      throw board.get().error("either contact or board");
    }
    return section.optional("contact").map(FaceReader::contact).or(() -> board.map(this::board));
  }

  private static Entry inherited(String key, Section face, Section stage) {
    return face.optional(key).orElseGet(() -> stage.required(key));
  }

  /** Dry faces need no humidity. */
  private double humidityRatio(Section chamber, double air, double wetness) {
    if (wetness == 0 && !chamber.has("humidity-ratio")) {
      return 0;
    }
    Entry entry = chamber.required("humidity-ratio");
    double ratio = entry.quantity(Dimension.HUMIDITY_RATIO, 0, 2);
    double saturation =
        air >= SaturationPressure.LOWEST && air <= SaturationPressure.HIGHEST
            ? SaturationPressure.at(air)
            : Double.POSITIVE_INFINITY;
    if (!(MoistAir.vapourPressure(ratio, pressure) <= saturation)) {
      double most = MoistAir.MOLAR_MASS_RATIO * saturation / (pressure - saturation);
      throw entry.error(
          "at most "
              + Dimension.HUMIDITY_RATIO.text(most)
              + ", where air of "
              + Dimension.TEMPERATURE.text(air)
              + " is saturated");
    }
    return ratio;
  }

  /** A board, plate or rack that the cut rests on. */
  private ContactSetup board(Entry entry) {
    Section section = entry.section("temperature", "conductance", "share");
    return new ContactSetup(
        section.quantity("temperature", Dimension.TEMPERATURE, 233.15, 473.15),
        section
            .optional("conductance")
            .map(value -> value.quantity(Dimension.HEAT_TRANSFER, 0, 500))
            .orElse(Contact.BOARD_CONDUCTANCE),
        share(section));
  }

  /** The same all the time if only its conductance is stated, or else from its beginning. */
  private static ContactSetup contact(Entry entry) {
    Section section =
        entry.section(
            Stream.concat(Stream.of("plate", "conductance", "share"), SETTLING.stream())
                .toArray(String[]::new));
    double plate = section.quantity("plate", Dimension.TEMPERATURE, 233.15, 873.15);
    double share = share(section);
    boolean settles = SETTLING.stream().anyMatch(section::has) || !section.has("conductance");
    if (!settles) {
      double conductance = section.quantity("conductance", Dimension.HEAT_TRANSFER, 0, 5000);
      return new ContactSetup(plate, conductance, share);
    }
    Signal metal = Signal.constant(plate);
    Touch usual = share == 1 ? Touch.ofPlate(metal) : Touch.ofBars(metal);
    return new ContactSetup(
        plate,
        stated(section, "conductance", Dimension.HEAT_TRANSFER, 0, 5000, usual.lasting()),
        share,
        Optional.of(
            new ContactSetup.Settling(
                stated(
                    section, "first-conductance", Dimension.HEAT_TRANSFER, 0, 5000, usual.first()),
                stated(section, "settling-time", Dimension.TIME, 1, 3600, usual.settling()),
                stated(
                    section, "plate-drop", Dimension.TEMPERATURE_DIFFERENCE, 0, 300, usual.drop()),
                stated(section, "cooling-time", Dimension.TIME, 1, 3600, usual.cooling()))));
  }

  private static double stated(
      Section section, String key, Dimension dimension, double low, double high, double otherwise) {
    return section
        .optional(key)
        .map(entry -> entry.quantity(dimension, low, high))
        .orElse(otherwise);
  }

  private static double share(Section section) {
    return section
        .optional("share")
        .map(share -> share.quantity(Dimension.SHARE, 0.001, 1))
        .orElse(1.0);
  }

  private BedSetup bed(Entry entry) {
    Section section = entry.section("temperature", "view-factor", "diameter", "distance");
    return new BedSetup(
        section.quantity("temperature", Dimension.TEMPERATURE, 273.15, 1573.15),
        viewFactor(section));
  }

  /** As stated, or that of a round bed under the middle of a slab of known size. */
  private double viewFactor(Section bed) {
    Optional<Entry> diameter = bed.optional("diameter");
    if (diameter.isEmpty()) {
      bed.optional("distance")
          .ifPresent(
              unwanted -> {
                throw unwanted.error("no distance without the diameter of the bed");
              });
      return bed.quantity("view-factor", Dimension.SHARE, 0, 1);
    }
    bed.optional("view-factor")
        .ifPresent(
            unwanted -> {
              throw unwanted.error("no view-factor beside a diameter, which gives it");
            });
    Optional<Extent> extent = cut.extent();
    if (cut.areaPerPerimeter().isEmpty() || extent.isEmpty()) {
      throw diameter
          .get()
          .error("a view-factor instead, for a cut that is no slab of stated length and width");
    }
    return CoalBed.viewFactorOfDiscs(
        Math.sqrt(extent.get().area() / Math.PI),
        0.5 * diameter.get().quantity(Dimension.LENGTH, 0.01, 5),
        bed.quantity("distance", Dimension.LENGTH, 0.01, 5));
  }
}
