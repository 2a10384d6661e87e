package org.roastfield.lab.synthetic;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** The truth of a made-up cook, as a cook of the core. */
final class TrueCook {

  static final String GENTLE = "gentle heat";
  static final String SEAR = "sear";
  static final String REST = "rest";

  /** Longest gentle heat [s], after which it is given up. */
  static final double LONGEST = 36_000;

  /** Stated convective coefficients [W/(m²·K)], gentle and sear. */
  static final int GENTLE_COEFFICIENT = 6;

  static final int SEAR_COEFFICIENT = 10;

  /** Stated air and walls of the sear, and of the room [°C]. */
  static final int SEAR_AIR = 180;

  static final int SEAR_WALLS = 200;
  static final int ROOM = 22;

  /** Stated humidity ratio of the sear [kg/kg]; water activity of the face. */
  static final double SEAR_HUMIDITY = 0.02;

  static final double WATER_ACTIVITY = 0.98;

  /** Conductance of the bars [W/(m²·K)]: that which lasts, 100-500 in the literature. */
  static final int BARS_CONDUCTANCE = 250;

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  private final ScenarioCut cut;
  private final SyntheticCooker cooker;
  private final TrueValues values;
  private final TrueDeparture departure;
  private final Signal air;

  TrueCook(
      ScenarioCut cut,
      SyntheticCooker cooker,
      TrueValues values,
      TrueDeparture departure,
      Signal air) {
    this.cut = cut;
    this.cooker = cooker;
    this.values = values;
    this.departure = departure;
    this.air = air;
  }

  /** How finely the truth is computed. */
  Settings settings() {
    Settings usual = Settings.withDefaults().withAccuracy(1e-3);
    return departure.has(Departure.FINER_GRID)
        ? usual.withAccuracy(1e-5).withCells(160).withSurfaceCell(0.05e-3)
        : usual;
  }

  /** The cook, off the gentle heat at the pull temperature. */
  Cook cook() {
    return cook(StageEnd.coreRisesTo(Temperatures.celsius(cut.pull()), LONGEST));
  }

  /** The cook, off the gentle heat when it has taken too long. */
  Cook givenUp() {
    return cook(StageEnd.after(LONGEST));
  }

  private Cook cook(StageEnd pull) {
    Shape shape =
        cut.trueShape(
            values.size(), departure.has(Departure.FINITE_LENGTH), departure.taperPosition());
    List<Stage> stages = new ArrayList<>();
    double far = departure.has(Departure.CHAMBER_GRADIENT) ? -departure.gradient() : 0;
    if (far != 0 && shape instanceof Slab) {
      stages.add(Stage.ofFaces(GENTLE, gentle(far, far), gentle(0, 0), pull));
    } else {
      stages.add(Stage.allRound(GENTLE, gentle(0, far), pull));
    }
    if (cut.sear() > 0) {
      stages.add(Stage.allRound(SEAR, sear(), StageEnd.after(cut.sear())));
    }
    SurfaceLaw rest = new Convection(values.rest(), Signal.constant(Temperatures.celsius(ROOM)));
    stages.add(Stage.allRound(REST, rest, StageEnd.after(60.0 * cut.restMinutes())));
    return new Cook(new Cut(shape, material(), values.startTemperature()), stages, List.of());
  }

  /** The core probe with its tip off the middle. */
  Probe probe(double offset) {
    double response = values.probeResponse();
    return new Probe(
        "core probe",
        Double.POSITIVE_INFINITY,
        offset,
        new Instrument(response, Stem.NONE, values.probeBias(), 0));
  }

  private Material material() {
    Material stated = cut.material();
    return stated.withDensity(stated.density() / values.diffusivity());
  }

  /**
   * Gentle heat on a face whose halves see the chamber.
   *
   * @param near difference of the near half's air from the chamber's [K]
   * @param far that of the far half
   */
  private SurfaceLaw gentle(double near, double far) {
    double h = GENTLE_COEFFICIENT * cooker.convection() * values.convection();
    Signal vapour = Signal.constant(MoistAir.vapourPressure(cooker.humidityRatio(), PRESSURE));
    SurfaceLaw dry = near == far ? dry(h, near) : SurfaceLaw.shared(0.5, dry(h, near), dry(h, far));
    boolean isConstant = departure.has(Departure.WETNESS_LAW);
    SurfaceLaw wet =
        wandering(
            Evaporation.of(
                isConstant ? departure.wetness() : 1, h, WATER_ACTIVITY, vapour, PRESSURE));
    return isConstant
        ? SurfaceLaw.sum(dry, wet)
        : DryingFace.ofMeat(dry, wet, values.drive(), PRESSURE);
  }

  private SurfaceLaw dry(double h, double offset) {
    Signal here = offset == 0 ? air : air.plus(offset);
    return SurfaceLaw.sum(
        wandering(new Convection(h, here)),
        new Radiation(values.emissivity(), here.plus(cooker.wallOffset())));
  }

  private SurfaceLaw wandering(SurfaceLaw law) {
    return departure.has(Departure.WANDERING_HEAT_TRANSFER)
        ? new TimedLaw(law, departure.heatTransfer())
        : law;
  }

  /** The sear, turned so often that each side gets its share of the bars. */
  private SurfaceLaw sear() {
    double touching = values.bars() * barsSeen(cut.shape());
    double open = 1 - touching;
    double h = SEAR_COEFFICIENT * cooker.convection() * values.convection() * open;
    SurfaceLaw dry =
        SurfaceLaw.sum(
            new Convection(h, Signal.constant(Temperatures.celsius(SEAR_AIR))),
            new Radiation(
                values.emissivity() * open, Signal.constant(Temperatures.celsius(SEAR_WALLS))),
            new Contact(BARS_CONDUCTANCE * touching, Signal.constant(cooker.grate())));
    Signal vapour = Signal.constant(MoistAir.vapourPressure(SEAR_HUMIDITY, PRESSURE));
    SurfaceLaw wet = Evaporation.of(1, h, WATER_ACTIVITY, vapour, PRESSURE);
    return DryingFace.ofMeat(dry, wet, values.drive(), PRESSURE);
  }

  /** Share of the surface that lies on the grate at a time: one of two faces, or of four sides. */
  static double barsSeen(Shape shape) {
    return shape instanceof Slab ? 0.5 : 0.25;
  }
}
