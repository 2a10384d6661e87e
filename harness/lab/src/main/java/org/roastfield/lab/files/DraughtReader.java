package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.surface.AirLoad;

/** Reads the air that is drawn through a chamber: that of a fire, or as an oven leaks. */
final class DraughtReader {

  /** Humidity ratio outside where a file states none: a mild day; assumed. */
  private static final double OUTSIDE = 0.008;

  private static final List<String> FIRE = List.of("burn-rate", "excess-air");

  private final CutSetup cut;
  private final double pressure;

  DraughtReader(CutSetup cut, double pressure) {
    this.cut = cut;
    this.pressure = pressure;
  }

  /** Humidity ratio of the air outside, if stated under a key, or that of a mild day. */
  static double outside(Section section, String key) {
    return section
        .optional(key)
        .map(e -> e.quantity(Dimension.HUMIDITY_RATIO, 0, 0.1))
        .orElse(OUTSIDE);
  }

  /** Draught of a chamber, if stated. */
  Optional<Draught> read(Section chamber) {
    return chamber.optional("draught").map(this::read);
  }

  private Draught read(Entry entry) {
    if (cut.extent().isEmpty()) {
      throw entry.error("the size of the whole cut beside a draught, such as its length");
    }
    Section section = section(entry);
    double outside = outside(section, "outside-humidity-ratio");
    Optional<Entry> flow = section.optional("air-flow");
    if (flow.isPresent()) {
      FIRE.forEach(key -> refuseBesideFlow(section, key));
      refuseBesideFlow(section, "fuel");
      return new Draught(flow.get().quantity(Dimension.MASS_FLOW, 1e-6, 1), outside, 0);
    }
    return Draught.ofFire(
        fuel(section.required("fuel")),
        section.quantity("burn-rate", Dimension.MASS_FLOW, 1e-6, 0.1),
        section.quantity("excess-air", Dimension.SHARE, 1, 50),
        outside);
  }

  private static Section section(Entry entry) {
    return entry.section(
        "fuel",
        "burn-rate",
        "excess-air",
        "air-flow",
        "outside-humidity-ratio",
        "air-volume",
        "pieces");
  }

  private static void refuseBesideFlow(Section section, String key) {
    section
        .optional(key)
        .ifPresent(
            entry -> {
              throw entry.error("no " + key + " beside air-flow, which stands for a fire's");
            });
  }

  private static Draught.Fuel fuel(Entry entry) {
    return switch (entry.text()) {
      case "charcoal" -> Draught.Fuel.CHARCOAL;
      case "wood" -> Draught.Fuel.WOOD;
      default -> throw entry.error("charcoal or wood");
    };
  }

  /**
   * What the whole cut, both faces of a slab, and others like it do to the air.
   *
   * @param drying whether the face dries: only such a face goes along with air that fills
   * @param air temperature [K]
   */
  AirLoad load(Draught draught, Section chamber, Section stage, boolean drying, double air) {
    Section section = section(chamber.required("draught"));
    double pieces =
        section.optional("pieces").map(e -> e.quantity(Dimension.RATIO, 1, 100)).orElse(1.0);
    double surface = pieces * cut.evaporatingArea().orElseThrow();
    return draught.airLoad(surface, volume(section, stage, drying), air, pressure);
  }

  private static double volume(Section draught, Section stage, boolean drying) {
    Optional<Entry> entry = draught.optional("air-volume");
    if (entry.isEmpty()) {
      return 0;
    }
    if (!drying) {
      throw entry
          .get()
          .error("no air-volume beside a constant wetness, whose air is in balance at each moment");
    }
    if (stage.has("lid")) {
      throw entry.get().error("no air-volume beside lid, which lets the vapour out at once");
    }
    return entry.get().quantity(Dimension.VOLUME, 1e-3, 100);
  }
}
