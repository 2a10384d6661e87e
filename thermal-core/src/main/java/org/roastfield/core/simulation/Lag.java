package org.roastfield.core.simulation;

/**
 * A lag of first order behind a cubic, eq. (55): τ dy/dt = p(t) − y, solved exactly.
 *
 * <p>The cubic runs over 0 ≤ u ≤ 3 through values at 0, 1, 2, 3. The lag ε is in the same unit.
 */
final class Lag {

  private static final double[] POINTS = {0.5384693101056831, 0.906179845938664};
  private static final double[] WEIGHTS = {0.47862867049936647, 0.23692688505618908};
  private static final double MIDDLE_WEIGHT = 0.5688888888888889;

  private final double a0;
  private final double a1;
  private final double a2;
  private final double a3;

  Lag(double p0, double p1, double p2, double p3) {
    double d1 = p1 - p0;
    double d2 = p2 - 2 * p1 + p0;
    double d3 = p3 - 3 * p2 + 3 * p1 - p0;
    a0 = p0;
    a1 = d1 - d2 / 2 + d3 / 3;
    a2 = d2 / 2 - d3 / 2;
    a3 = d3 / 6;
  }

  /** The cubic. */
  double cubic(double u) {
    return a0 + u * (a1 + u * (a2 + u * a3));
  }

  /**
   * What lags, at u.
   *
   * @param before its value at 0
   * @param lag ε, greater than 0
   */
  double after(double u, double before, double lag) {
    double z = u / lag;
    double left = StrictMath.exp(-z);
    if (z >= 1) {
      return particular(u, lag) + (before - particular(0, lag)) * left;
    }
    return left * before + z * weighted(u, z);
  }

  /** p − ε p′ + ε² p″ − ε³ p‴. */
  private double particular(double u, double lag) {
    double first = a1 + u * (2 * a2 + 3 * u * a3);
    double second = 2 * a2 + 6 * u * a3;
    return cubic(u) - lag * (first - lag * (second - lag * 6 * a3));
  }

  /**
   * ∫ exp(−z (1 − s)) p(u s) ds over 0 ≤ s ≤ 1, by five points: below 1e-11 for z ≤ 1, where the
   * closed form would cancel.
   */
  private double weighted(double u, double z) {
    double sum = MIDDLE_WEIGHT * integrand(0.5, u, z);
    for (int i = 0; i < POINTS.length; i++) {
      double half = 0.5 * POINTS[i];
      sum += WEIGHTS[i] * (integrand(0.5 - half, u, z) + integrand(0.5 + half, u, z));
    }
    return 0.5 * sum;
  }

  private double integrand(double s, double u, double z) {
    return StrictMath.exp(-z * (1 - s)) * cubic(u * s);
  }
}
