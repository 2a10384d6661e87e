package org.roastfield.core.integration;

import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Partial derivatives of the laws of both faces at one face temperature and time: by temperature,
 * time and each parameter. Scratch memory of one integration.
 *
 * <p>Those by time and parameters are difference quotients, so that a law needs no derivative code.
 * Its own slope by temperature, which the plain run may do with a wrong one of, is believed where
 * it agreed with a difference quotient at the start of the stage, and where there is no quotient,
 * as next to boiling.
 */
final class FaceSlopes {

  /** Half the difference of face temperatures [K]. */
  private static final double TEMPERATURE_STEP = 1e-3;

  /** Largest relative difference between a law's own slope and a difference quotient. */
  private static final double AGREEMENT = 1e-5;

  /** Half the difference of times [s]. */
  private static final double TIME_STEP = 1e-2;

  private final Counters counters;
  private final SurfaceFlux first = new SurfaceFlux();
  private final SurfaceFlux second = new SurfaceFlux();

  /** ∂q/∂Ts of each face [2] [W/(m²·K)]. */
  final double[] slope = new double[2];

  /** Change of the evaporation with Ts of each face [2] [kg/(m²·s·K)]. */
  final double[] evaporationSlope = new double[2];

  /** ∂q/∂t of each face [2] [W/(m²·s)]. */
  final double[] trend = new double[2];

  /** Change of the evaporation with time of each face [2] [kg/(m²·s²)]. */
  final double[] evaporationTrend = new double[2];

  /** ∂q/∂p [2][parameters] [W/m² per unit of p]. */
  final double[][] change;

  /** Change of the evaporation with p [2][parameters] [kg/(m²·s) per unit of p]. */
  final double[][] evaporationChange;

  FaceSlopes(int parameters, Counters counters) {
    this.counters = counters;
    change = new double[2][parameters];
    evaporationChange = new double[2][parameters];
  }

  /** Whether a law's own slopes are right at a temperature and time. */
  boolean believes(SurfaceLaw law, double temperature, double time) {
    evaluate(law, temperature + TEMPERATURE_STEP, time, first);
    double heat = first.heatFlux();
    double water = first.evaporation();
    evaluate(law, temperature - TEMPERATURE_STEP, time, first);
    heat = (heat - first.heatFlux()) / (2 * TEMPERATURE_STEP);
    water = (water - first.evaporation()) / (2 * TEMPERATURE_STEP);
    evaluate(law, temperature, time, first);
    return !isFinite(heat)
        || (agree(heat, first.slope()) && agree(water, first.evaporationSlope()));
  }

  private static boolean agree(double quotient, double slope) {
    return Math.abs(quotient - slope) <= AGREEMENT * Math.abs(quotient) + Double.MIN_NORMAL;
  }

  private static boolean isFinite(double value) {
    return Math.abs(value) <= Double.MAX_VALUE;
  }

  /** Sets the derivatives by temperature, and those by time to 0. */
  void byTemperature(int face, SurfaceLaw law, boolean believed, double temperature, double time) {
    trend[face] = 0;
    evaporationTrend[face] = 0;
    evaluate(law, temperature, time, first);
    slope[face] = first.slope();
    evaporationSlope[face] = first.evaporationSlope();
    if (!believed) {
      difference(face, law, temperature, time);
    }
  }

  private void difference(int face, SurfaceLaw law, double temperature, double time) {
    evaluate(law, temperature + TEMPERATURE_STEP, time, first);
    evaluate(law, temperature - TEMPERATURE_STEP, time, second);
    double quotient = (first.heatFlux() - second.heatFlux()) / (2 * TEMPERATURE_STEP);
    if (isFinite(quotient)) {
      slope[face] = quotient;
      evaporationSlope[face] =
          (first.evaporation() - second.evaporation()) / (2 * TEMPERATURE_STEP);
    }
  }

  /** Sets the derivatives by temperature and by time. */
  void byTemperatureAndTime(
      int face, SurfaceLaw law, boolean believed, double temperature, double time) {
    evaluate(law, temperature, time + TIME_STEP, first);
    evaluate(law, temperature, time - TIME_STEP, second);
    trend[face] = (first.heatFlux() - second.heatFlux()) / (2 * TIME_STEP);
    evaporationTrend[face] = (first.evaporation() - second.evaporation()) / (2 * TIME_STEP);
    slope[face] = 0.5 * (first.slope() + second.slope());
    evaporationSlope[face] = 0.5 * (first.evaporationSlope() + second.evaporationSlope());
    if (!believed) {
      difference(face, law, temperature, time);
    }
  }

  /**
   * Sets the derivatives by one parameter.
   *
   * @param begun when what counts from the beginning of a stage began [s]
   */
  void byParameter(
      int face,
      int parameter,
      CookVariation by,
      int stage,
      double begun,
      double temperature,
      double time) {
    evaluate(by.lawAbove(stage, face).from(begun), temperature, time, first);
    evaluate(by.lawBelow(stage, face).from(begun), temperature, time, second);
    double perWidth = by.perWidth();
    change[face][parameter] = (first.heatFlux() - second.heatFlux()) * perWidth;
    evaporationChange[face][parameter] = (first.evaporation() - second.evaporation()) * perWidth;
  }

  /**
   * Adds what comes with the beginning of what counts from it, as contact does.
   *
   * @param begunChange change of the beginning with each parameter [s per unit of it]
   */
  void byBeginning(
      int face,
      SurfaceLaw law,
      double begun,
      double[] begunChange,
      double temperature,
      double time) {
    evaluate(law.from(begun + TIME_STEP), temperature, time, first);
    evaluate(law.from(begun - TIME_STEP), temperature, time, second);
    double heat = (first.heatFlux() - second.heatFlux()) / (2 * TIME_STEP);
    double water = (first.evaporation() - second.evaporation()) / (2 * TIME_STEP);
    for (int p = 0; p < begunChange.length; p++) {
      change[face][p] += heat * begunChange[p];
      evaporationChange[face][p] += water * begunChange[p];
    }
  }

  private void evaluate(SurfaceLaw law, double temperature, double time, SurfaceFlux flux) {
    flux.clear();
    law.evaluate(temperature, time, flux);
    counters.fluxEvaluations++;
  }
}
