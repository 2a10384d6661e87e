package org.roastfield.core.integration;

/** The two cubics of dense output. */
final class Cubic {

  /** Stages whose face temperatures the cubic passes through: c = 0, 0.332, 0.62, 1. */
  static final int STAGE_0 = 0;

  static final int STAGE_1 = 2;
  static final int STAGE_2 = 3;
  static final int STAGE_3 = 5;

  private static final double C1 = Esdirk4.c(STAGE_1);
  private static final double C2 = Esdirk4.c(STAGE_2);

  private static final double[] END_SLOPE = {
    throughStagesSlope(1, 1, 0, 0, 0),
    throughStagesSlope(1, 0, 1, 0, 0),
    throughStagesSlope(1, 0, 0, 1, 0),
    throughStagesSlope(1, 0, 0, 0, 1)
  };

  private Cubic() {}

  /** Hermite polynomial at θ in [0, 1] of a step h, from values y and rates y′ at both ends. */
  static double hermite(double theta, double h, double y0, double rate0, double y1, double rate1) {
    double rest = 1 - theta;
    double chord = y1 - y0;
    return rest * y0
        + theta * y1
        + theta * rest * ((theta - rest) * chord + (theta - 1) * -h * rate0 - theta * h * rate1);
  }

  /** Derivative of {@link #hermite} by h, at fixed θ. */
  static double hermiteByLength(double theta, double rate0, double rate1) {
    double rest = 1 - theta;
    return theta * rest * (rest * rate0 - theta * rate1);
  }

  /** Derivative of {@link #hermite} by θ. */
  static double hermiteSlope(
      double theta, double h, double y0, double rate0, double y1, double rate1) {
    double rest = 1 - theta;
    return 6 * theta * rest * (y1 - y0)
        + h * (rest * (rest - 2 * theta) * rate0 + theta * (theta - 2 * rest) * rate1);
  }

  /** Lagrange polynomial through the values of four stages. */
  static double throughStages(double theta, double y0, double y1, double y2, double y3) {
    double d0 = theta;
    double d1 = theta - C1;
    double d2 = theta - C2;
    double d3 = theta - 1;
    return y0 * (d1 * d2 * d3) / ((0 - C1) * (0 - C2) * (0 - 1))
        + y1 * (d0 * d2 * d3) / (C1 * (C1 - C2) * (C1 - 1))
        + y2 * (d0 * d1 * d3) / (C2 * (C2 - C1) * (C2 - 1))
        + y3 * (d0 * d1 * d2) / (1 * (1 - C1) * (1 - C2));
  }

  /** Derivative of {@link #throughStages} by θ at θ = 1. */
  static double slopeAtEnd(double y0, double y1, double y2, double y3) {
    return END_SLOPE[0] * y0 + END_SLOPE[1] * y1 + END_SLOPE[2] * y2 + END_SLOPE[3] * y3;
  }

  /** Weights of the four values in {@link #slopeAtEnd}; not to be modified. */
  static double[] endSlopeWeights() {
    return END_SLOPE;
  }

  /** Derivative of {@link #throughStages} by θ. */
  static double throughStagesSlope(double theta, double y0, double y1, double y2, double y3) {
    double d0 = theta;
    double d1 = theta - C1;
    double d2 = theta - C2;
    double d3 = theta - 1;
    return y0 * (d1 * d2 + d1 * d3 + d2 * d3) / ((0 - C1) * (0 - C2) * (0 - 1))
        + y1 * (d0 * d2 + d0 * d3 + d2 * d3) / (C1 * (C1 - C2) * (C1 - 1))
        + y2 * (d0 * d1 + d0 * d3 + d1 * d3) / (C2 * (C2 - C1) * (C2 - 1))
        + y3 * (d0 * d1 + d0 * d2 + d1 * d2) / (1 * (1 - C1) * (1 - C2));
  }
}
