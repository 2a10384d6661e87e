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

  private Esdirk4() {}

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
}
