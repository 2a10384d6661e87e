package org.roastfield.lab.study;

import java.util.List;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * The cook that studies calibrate: a loin of 80 mm under a cap of fat, slowly over gentle heat, in
 * a chamber that was logged. Its numbers are made up, but for those of the literature.
 *
 * @param logged air as the chamber's probe showed it [K]
 */
record StudyCook(Signal logged) {

  private static final String SOURCE = "assumed: the prior of made-up cooks and their truths";

  /** Heat transfer by convection on one cooker, over the stated one. */
  static final Parameter CONVECTION =
      Parameter.multiplier("convection", Owner.COOKER, 0.3, 0.4, 3, SOURCE);

  /** What its walls are warmer than its air [K]. */
  static final Parameter WALLS = Parameter.offset("walls", "K", Owner.COOKER, 8, -25, 25, SOURCE);

  /** What its chamber's probe shows too much [K]. */
  static final Parameter AIR_BIAS =
      Parameter.offset("air-bias", "K", Owner.COOKER, 4, -15, 15, SOURCE);

  /** Convection of one cook over that of its cooker. */
  static final Parameter CONVECTION_OF_COOK =
      Parameter.multiplier("convection-of-cook", Owner.CUT, 0.15, 0.5, 2, SOURCE);

  /** Every length of the cut over the stated one. */
  static final Parameter SIZE = Parameter.multiplier("size", Owner.CUT, 0.07, 0.75, 1.25, SOURCE);

  /** Thermal diffusivity over that of the material. */
  static final Parameter DIFFUSIVITY =
      Parameter.multiplier("diffusivity", Owner.CUT, 0.07, 0.75, 1.25, SOURCE);

  /** Wetness of the face over the stated one. */
  static final Parameter WETNESS = Parameter.multiplier("wetness", Owner.CUT, 0.4, 0.1, 3, SOURCE);

  /** How far the probe's tip misses the middle [m]. */
  static final Parameter PROBE_OFFSET =
      new Parameter("probe-offset", "m", Owner.PROBE, Scale.PLAIN, 0.004, 0.003, 0, 0.015, SOURCE);

  /** What the probe shows too much [K]. */
  static final Parameter PROBE_BIAS =
      new Parameter("probe-bias", "K", Owner.PROBE, Scale.PLAIN, 0.3, 0.5, -2.5, 3, SOURCE);

  /** What is free in a study: of the cooker the first three. */
  static final ParameterSet PARAMETERS =
      ParameterSet.of(
          CONVECTION,
          WALLS,
          AIR_BIAS,
          CONVECTION_OF_COOK,
          SIZE,
          DIFFUSIVITY,
          WETNESS,
          PROBE_OFFSET,
          PROBE_BIAS);

  /** How many of them, from the first on, are the cooker's. */
  static final int OF_COOKER = 3;

  static final List<String> IDS = PARAMETERS.list().stream().map(Parameter::id).toList();

  /** Name of its probe. */
  static final String PROBE = "stem";

  /** At which core it is done [K]. */
  static final double TARGET = Temperatures.celsius(60);

  /** Setting of the chamber [K]. */
  static final double SETTING = Temperatures.celsius(100);

  /** After which nobody waits any more [s]. */
  static final double HORIZON = 12 * 3600.0;

  static final double RADIUS = 0.04;

  /** Convective coefficient stated, without the walls' radiation [W/(m²·K)]. */
  static final double COEFFICIENT = 6;

  /** Wetness stated: under fat [1]. */
  static final double STATED_WETNESS = 0.15;

  private static final double START = Temperatures.celsius(5);
  private static final double EMISSIVITY = 0.92;
  private static final double WATER_ACTIVITY = 0.98;
  private static final double HUMIDITY_RATIO = 0.035;
  static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Signal VAPOUR =
      Signal.constant(MoistAir.vapourPressure(HUMIDITY_RATIO, PRESSURE));
  private static final Material LOIN = Materials.named("pork loin").material();

  /** The probe of a cook, which shows its tip's temperature and its bias. */
  static Probe probe(Cook cook) {
    return cook.probes().get(0);
  }

  /** Coordinates of all parameters as a point. */
  static ParameterPoint point(double[] coordinates) {
    ParameterPoint point = ParameterPoint.empty();
    for (int p = 0; p < PARAMETERS.size(); p++) {
      Parameter parameter = PARAMETERS.get(p);
      double value = parameter.scale().value(coordinates[p]);
      point =
          point.with(
              parameter.id(),
              value,
              parameter.scale() == Scale.LOGARITHM ? value : parameter.spread());
    }
    return point;
  }

  /** The cook in the fitted model's words. */
  Cook at(ParameterPoint point) {
    double h = coefficient(point);
    SurfaceLaw law =
        SurfaceLaw.sum(dry(point, h, 0), evaporation(h, STATED_WETNESS * point.value("wetness")));
    return of(shape(point), law, point);
  }

  static Shape shape(ParameterPoint point) {
    return Cylinder.ofRadius(RADIUS * point.value("size"));
  }

  static double coefficient(ParameterPoint point) {
    return COEFFICIENT * point.value("convection") * point.value("convection-of-cook");
  }

  /**
   * Convection and radiation.
   *
   * @param cooler by how much the chamber is cooler than at its probe [K]
   */
  SurfaceLaw dry(ParameterPoint point, double h, double cooler) {
    return SurfaceLaw.sum(new Convection(h, air(point).plus(-cooler)), radiation(point, cooler));
  }

  SurfaceLaw convection(ParameterPoint point, double h) {
    return new Convection(h, air(point));
  }

  SurfaceLaw radiation(ParameterPoint point, double cooler) {
    return new Radiation(EMISSIVITY, air(point).plus(point.value("walls") - cooler));
  }

  private Signal air(ParameterPoint point) {
    return logged.plus(-point.value("air-bias"));
  }

  static SurfaceLaw evaporation(double h, double wetness) {
    return Evaporation.of(wetness, h, WATER_ACTIVITY, VAPOUR, PRESSURE);
  }

  /** A cook of one stage to the horizon. */
  static Cook of(Shape shape, SurfaceLaw law, ParameterPoint point) {
    Probe probe = Probe.besideCore(PROBE, point.value("probe-offset"));
    Stage stage = Stage.allRound("gentle heat", law, StageEnd.after(HORIZON));
    Cut cut = new Cut(shape, loin(point.value("diffusivity")), START);
    return new Cook(cut, List.of(stage), List.of(probe));
  }

  private static Material loin(double diffusivity) {
    return new Material(
        LOIN.name(),
        LOIN.density() / diffusivity,
        LOIN.conductivity(),
        LOIN.heatCapacity(),
        LOIN.latentHeats(),
        LOIN.freezingPoint());
  }
}
