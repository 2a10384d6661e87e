package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Role;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Cooks of the trial: a round cut in gentle heat, a sear rolled over a grate, a rest under foil.
 *
 * @param diameter [m]
 * @param setting of the air [K]
 * @param wish for the final core [K]
 */
record TrialCook(double diameter, double setting, double wish) {

  static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  static final double REST = 900;
  static final double LENGTH = 0.31;
  static final List<Role> ROLES = roles();

  /** Unknown numbers: of cooker, cut and probe, and the weather of the chamber. */
  static final ParameterSet PARAMETERS = parametersOf();

  private static final Material PORK = Materials.named("pork loin").material();
  private static final double HUMIDITY = 0.035;
  private static final double CONVECTION = 6;
  private static final double WETNESS = 0.3;
  private static final double LONGEST = 10 * 3600;

  /** Laws that a truth may have in place of the model's. */
  interface Laws {

    /** Of the gentle heat. */
    SurfaceLaw gentle(ParameterPoint point, Signal air);

    /** Shape of the cut, as long as {@link #LENGTH}. */
    Shape shape(double diameter);
  }

  private static ParameterSet parametersOf() {
    ParameterSet set =
        ParameterSet.of(
            CookParameters.CONVECTION,
            CookParameters.WALLS,
            CookParameters.AIR_BIAS,
            CookParameters.CONTACT,
            CookParameters.WETNESS,
            CookParameters.SIZE,
            CookParameters.START,
            CookParameters.PROBE_OFFSET,
            CookParameters.PROBE_BIAS);
    for (Parameter parameter : TrialWeather.parameters().list()) {
      set = set.with(parameter);
    }
    return set;
  }

  private static List<Role> roles() {
    List<Role> roles = new ArrayList<>(List.of(Role.GENTLE));
    roles.addAll(Collections.nCopies(4, Role.SEAR));
    roles.add(Role.REST);
    return roles;
  }

  /** As plans see it. */
  PlannedCook planned() {
    return new PlannedCook(
        point -> cook(point, TrialWeather.smooth(air(point), point)), ROLES, "core probe");
  }

  /** By the model, in air of its own. */
  Cook cook(ParameterPoint point, Signal air) {
    return cook(
        point,
        air,
        new Laws() {
          @Override
          public SurfaceLaw gentle(ParameterPoint at, Signal around) {
            return SurfaceLaw.sum(dry(at, around), wet(at, around));
          }

          @Override
          public Shape shape(double thick) {
            return Cylinder.ofDiameter(thick);
          }
        });
  }

  /** By other laws. */
  Cook cook(ParameterPoint point, Signal air, Laws laws) {
    Chamber hot = Chamber.steady(Temperatures.celsius(180), 0.01, PRESSURE);
    double h = 10 * point.value("convection");
    SurfaceLaw free = hot.around(h, 0.92, 0, 0.98);
    SurfaceLaw touched =
        SurfaceLaw.sum(
            hot.around(0.75 * h, 0.69, 0, 0.98),
            new Contact(62.5 * point.value("contact"), Signal.constant(Temperatures.celsius(260))));
    List<Stage> stages = new ArrayList<>();
    stages.add(
        Stage.allRound("gentle", laws.gentle(point, air), StageEnd.coreRisesTo(wish, LONGEST)));
    stages.addAll(Turns.every(25, 8).rolls("sear", touched, free, 4));
    Chamber room = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);
    stages.add(Stage.allRound("rest", room.around(6, 0.3, 0, 0.98), StageEnd.after(REST)));
    double start = Temperatures.celsius(8) + point.value("start");
    Cut cut = new Cut(laws.shape(diameter * point.value("size")), PORK, start);
    return new Cook(cut, stages, List.of(probe(point)));
  }

  private static Probe probe(ParameterPoint point) {
    return Probe.besideCore("core probe", point.value("probe-offset"))
        .with(Instrument.IDEAL.withBias(point.value("probe-bias")));
  }

  /** Mean air where a probe shows the setting [K]. */
  double air(ParameterPoint point) {
    return setting - point.value("air-bias");
  }

  /** Convection and radiation of the gentle heat. */
  SurfaceLaw dry(ParameterPoint point, Signal air) {
    return chamber(air, point).around(h(point), 0.92, 0, 0.98);
  }

  /** Vapour of the gentle heat, without its convection and radiation. */
  SurfaceLaw wet(ParameterPoint point, Signal air) {
    double wetness = Math.min(1, WETNESS * point.value("wetness"));
    Chamber chamber = chamber(air, point);
    return Evaporation.of(wetness, h(point), 0.98, chamber.vapourPressure(), PRESSURE);
  }

  /** Vapour of a face that is wet throughout. */
  SurfaceLaw soaked(ParameterPoint point, Signal air) {
    Chamber chamber = chamber(air, point);
    return Evaporation.of(1, h(point), 0.98, chamber.vapourPressure(), PRESSURE);
  }

  private static double h(ParameterPoint point) {
    return CONVECTION * point.value("convection");
  }

  private static Chamber chamber(Signal air, ParameterPoint point) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(HUMIDITY, PRESSURE));
    return new Chamber(air, air.plus(point.value("walls")), vapour, PRESSURE);
  }

  /** Weight as stated [kg]. */
  double weight() {
    return PORK.density() * Math.PI / 4 * diameter * diameter * LENGTH;
  }
}
