package org.roastfield.core.integration;

/**
 * Derivatives of one number that the faces carry along, of its rate, and of its increments in the
 * stages of a step. Memory of one integration, in units of the number's per unit of the parameter.
 */
final class TangentScalar {

  private static final int LAST = Esdirk4.STAGES - 1;

  /** The number [2][parameters]. */
  final double[][] now;

  /** Its rate [2][parameters]. */
  final double[][] rate;

  private final double[][][] increment;

  TangentScalar(int size) {
    now = new double[2][size];
    rate = new double[2][size];
    increment = new double[Esdirk4.STAGES][2][size];
  }

  /**
   * The number of a stage before its own rate: Ḃ = Ẇ_n + Σ_{j<stage} (a_j/γ) Ż_j; itself in stage
   * 0, where a stage of the cook begins.
   *
   * @param step h [s]
   */
  double base(int stage, double step, int face, int p) {
    if (stage == 0) {
      return now[face][p];
    }
    double[] weights = Esdirk4.baseWeights(stage);
    double sum = now[face][p] + weights[0] * Esdirk4.GAMMA * step * rate[face][p];
    for (int j = 1; j < stage; j++) {
      sum += weights[j] * increment[j][face][p];
    }
    return sum;
  }

  /**
   * Keeps the number of a stage, and that of the step after the last.
   *
   * @param base before the stage's own rate
   * @param longer d ln h
   * @param own increment of the number itself in the stage
   */
  void keep(
      int stage,
      double step,
      int face,
      int p,
      double value,
      double base,
      double longer,
      double own) {
    increment[stage][face][p] = value - base;
    if (stage == LAST) {
      now[face][p] = value;
      rate[face][p] = (value - base - longer * own) / (Esdirk4.GAMMA * step);
    }
  }

  /** Begins the derivative of a step by its own length, of one parameter. */
  void lengthen(int face, double perLength) {
    now[face][0] = 0;
    rate[face][0] = perLength;
  }

  /** Adds a multiple of another's, of one parameter. */
  void add(int face, int p, double factor, TangentScalar other) {
    now[face][p] += factor * other.now[face][0];
    rate[face][p] += factor * other.rate[face][0];
  }
}
