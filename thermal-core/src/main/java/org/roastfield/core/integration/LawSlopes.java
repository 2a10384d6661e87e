package org.roastfield.core.integration;

/**
 * What tangents need of the laws in each stage of an attempt of many lanes: rows are
 * [stages][lanes]; the last two are of one parameter.
 */
final class LawSlopes {

  /** ∂q/∂Ts [W/(m²·K)]. */
  final double[][] slope;

  /** ∂q/∂t [W/(m²·s)]. */
  final double[][] trend;

  /** ∂j/∂Ts [kg/(m²·s·K)]. */
  final double[][] evaporationSlope;

  /** ∂j/∂t [kg/(m²·s²)]. */
  final double[][] evaporationTrend;

  /** j [kg/(m²·s)]. */
  final double[][] evaporation;

  /** ∂q/∂p [W/m² per unit of p]. */
  final double[][] change;

  /** ∂j/∂p [kg/(m²·s) per unit of p]. */
  final double[][] evaporationChange;

  LawSlopes(int width) {
    slope = new double[Esdirk4.STAGES][width];
    trend = new double[Esdirk4.STAGES][width];
    evaporationSlope = new double[Esdirk4.STAGES][width];
    evaporationTrend = new double[Esdirk4.STAGES][width];
    evaporation = new double[Esdirk4.STAGES][width];
    change = new double[Esdirk4.STAGES][width];
    evaporationChange = new double[Esdirk4.STAGES][width];
  }

  /** Takes the laws of lane {@code from} of others as the only lane, without a parameter. */
  void takeAlone(LawSlopes others, int from) {
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      slope[s][0] = others.slope[s][from];
      trend[s][0] = others.trend[s][from];
      evaporationSlope[s][0] = others.evaporationSlope[s][from];
      evaporationTrend[s][0] = others.evaporationTrend[s][from];
      evaporation[s][0] = others.evaporation[s][from];
      change[s][0] = 0;
      evaporationChange[s][0] = 0;
    }
  }

  /** The change with a parameter becomes 0 in all stages. */
  void clearChange(int lanes) {
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      java.util.Arrays.fill(change[s], 0, lanes, 0);
      java.util.Arrays.fill(evaporationChange[s], 0, lanes, 0);
    }
  }
}
