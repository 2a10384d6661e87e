package org.roastfield.core.integration;

/**
 * Implicit part of ARK4(3)6L[2]SA [KennedyCarpenter2003], an ESDIRK method in the letters of the
 * paper: order 4, embedded order 3, six stages, the first explicit, stage order 2, L-stable,
 * stiffly accurate (b is the last row of a), all c in [0, 1].
 */
final class Esdirk4 {

  static final int STAGES = 6;
  static final double GAMMA = 0.25;

  private static final double[] C = {0, 1.0 / 2, 83.0 / 250, 31.0 / 50, 17.0 / 20, 1};

  private static final double[][] A = {
    {0},
    {1.0 / 4, GAMMA},
    {8611.0 / 62500, -1743.0 / 31250, GAMMA},
    {5012029.0 / 34652500, -654441.0 / 2922500, 174375.0 / 388108, GAMMA},
    {
      15267082809.0 / 155376265600.0,
      -71443401.0 / 120774400,
      730878875.0 / 902184768,
      2285395.0 / 8070912,
      GAMMA
    },
    {82889.0 / 524892, 0, 15625.0 / 83664, 69875.0 / 102672, -2260.0 / 8211, GAMMA},
  };

  private static final double[] B_HAT = {
    4586570599.0 / 29645900160.0,
    0,
    178811875.0 / 945068544,
    814220225.0 / 1159782912,
    -3700637.0 / 11593932,
    61727.0 / 225920
  };

  private static final double[][] BASE_WEIGHTS = baseWeights();
  private static final double[][] GUESS_WEIGHTS = guessWeights();
  private static final double[] ERROR_WEIGHTS = {
    errorWeight(0), errorWeight(1), errorWeight(2), errorWeight(3), errorWeight(4), errorWeight(5)
  };

  private Esdirk4() {}

  private static double[][] baseWeights() {
    double[][] weights = new double[STAGES][];
    for (int s = 0; s < STAGES; s++) {
      weights[s] = new double[s];
      for (int j = 0; j < s; j++) {
        weights[s][j] = A[s][j] / GAMMA;
      }
    }
    return weights;
  }

  /** Lagrange weights of the earlier stages for the polynomial through them at c of a stage. */
  private static double[][] guessWeights() {
    double[][] weights = new double[STAGES][];
    for (int s = 0; s < STAGES; s++) {
      weights[s] = new double[s];
      for (int j = 0; j < s; j++) {
        weights[s][j] = 1;
        for (int k = 0; k < s; k++) {
          if (k != j) {
            weights[s][j] *= (C[s] - C[k]) / (C[j] - C[k]);
          }
        }
      }
    }
    return weights;
  }

  /** a_sj/γ of the stages before {@code stage}; not to be modified. */
  static double[] baseWeights(int stage) {
    return BASE_WEIGHTS[stage];
  }

  /** Weights of the earlier stages' values in a guess for {@code stage}; not to be modified. */
  static double[] guessWeights(int stage) {
    return GUESS_WEIGHTS[stage];
  }

  /** Weights of all stages in the difference between the orders; not to be modified. */
  static double[] errorWeights() {
    return ERROR_WEIGHTS;
  }

  static double c(int stage) {
    return C[stage];
  }

  static double a(int stage, int earlier) {
    return A[stage][earlier];
  }

  static double b(int stage) {
    return A[STAGES - 1][stage];
  }

  /** Weight of a stage in the difference between the orders 4 and 3. */
  static double errorWeight(int stage) {
    return b(stage) - B_HAT[stage];
  }

  /** γ² times the squared embedded error of each cell, summed by volume. */
  static double squaredErrors(double[] volumes, double[][] increments) {
    double[] w = errorWeights();
    double[] z0 = increments[0];
    double[] z2 = increments[2];
    double[] z3 = increments[3];
    double[] z4 = increments[4];
    double[] z5 = increments[5];
    double sum = 0;
    for (int i = 0; i < volumes.length; i++) {
      double e = (w[0] * z0[i] + w[2] * z2[i]) + (w[3] * z3[i] + w[4] * z4[i] + w[5] * z5[i]);
      sum = Math.fma(volumes[i] * e, e, sum);
    }
    return sum;
  }
}
