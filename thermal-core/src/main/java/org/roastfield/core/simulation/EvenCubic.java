package org.roastfield.core.simulation;

/** Cubic through values at θ = 0, ⅓, ⅔, 1. */
final class EvenCubic {

  private EvenCubic() {}

  /** Derivative at θ. */
  static double slope(double theta, double[] y) {
    double s = 3 * theta;
    double d1 = y[1] - y[0];
    double d2 = y[2] - 2 * y[1] + y[0];
    double d3 = y[3] - 3 * y[2] + 3 * y[1] - y[0];
    return 3 * (d1 + d2 * (2 * s - 1) / 2 + d3 * (3 * s * s - 6 * s + 2) / 6);
  }

  /** Second derivative at θ. */
  static double curvature(double theta, double[] y) {
    double d2 = y[2] - 2 * y[1] + y[0];
    double d3 = y[3] - 3 * y[2] + 3 * y[1] - y[0];
    return 9 * (d2 + d3 * (3 * theta - 1));
  }
}
