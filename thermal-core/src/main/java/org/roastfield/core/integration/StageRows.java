package org.roastfield.core.integration;

/**
 * Sums over the stages of {@link Esdirk4} for rows of lanes or cells; element by element and short,
 * like {@link Rows}.
 */
final class StageRows {

  private StageRows() {}

  /**
   * base = u + Σ (a/γ) z over the stages before one.
   *
   * @param stage 1 … 5
   * @param z increments [stages][lanes]
   */
  static void base(int stage, int lanes, double[] base, double[] u, double[][] z) {
    base(stage, lanes, base, u, z[0], z[1], z[2], z[3], z[4]);
  }

  /** The same with the increments one by one. */
  static void base(
      int stage,
      int lanes,
      double[] base,
      double[] u,
      double[] z0,
      double[] z1,
      double[] z2,
      double[] z3,
      double[] z4) {
    double[] w = Esdirk4.baseWeights(stage);
    switch (stage) {
      case 1 -> sum(lanes, base, u, w[0], z0);
      case 2 -> sum(lanes, base, u, w[0], z0, w[1], z1);
      case 3 -> sum(lanes, base, u, w[0], z0, w[1], z1, w[2], z2);
      case 4 -> sum(lanes, base, u, w[0], z0, w[1], z1, w[2], z2, w[3], z3);
      case 5 -> sum(lanes, base, u, w[0], z0, w[2], z2, w[3], z3, w[4], z4);
      default -> throw new IllegalArgumentException("stage must be in [1, 5], was " + stage);
    }
  }

  /**
   * The polynomial through the stages before one.
   *
   * @param stage 2 … 5
   * @param zero row of zeros
   * @param t values [stages][lanes]
   */
  static void guess(int stage, int lanes, double[] guess, double[] zero, double[][] t) {
    double[] w = Esdirk4.guessWeights(stage);
    switch (stage) {
      case 2 -> sum(lanes, guess, zero, w[0], t[0], w[1], t[1]);
      case 3 -> sum(lanes, guess, zero, w[0], t[0], w[1], t[1], w[2], t[2]);
      case 4 -> sum(lanes, guess, zero, w[0], t[0], w[1], t[1], w[2], t[2], w[3], t[3]);
      case 5 -> sum(lanes, guess, zero, w[0], t[0], w[1], t[1], w[2], t[2], w[3], t[3], w[4], t[4]);
      default -> throw new IllegalArgumentException("stage must be in [2, 5], was " + stage);
    }
  }

  /** guess = start + c · rate. */
  static void tangent(int lanes, double c, double[] start, double[] rate, double[] guess) {
    sum(lanes, guess, start, c, rate);
  }

  /** z0 = γ h u̇ and base = u + w0 z0. */
  static void begin(
      int lanes,
      double[] gammaStep,
      double[] rate,
      double[] z0,
      double[] u,
      double w0,
      double[] base) {
    for (int l = 0; l < lanes; l++) {
      double z = gammaStep[l] * rate[l];
      z0[l] = z;
      base[l] = u[l] + w0 * z;
    }
  }

  static void sum(int lanes, double[] base, double[] u, double w0, double[] z0) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + w0 * z0[l];
    }
  }

  static void sum(
      int lanes, double[] base, double[] u, double w0, double[] z0, double w1, double[] z1) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + (w0 * z0[l] + w1 * z1[l]);
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + (w0 * z0[l] + w1 * z1[l] + w2 * z2[l]);
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2,
      double w3,
      double[] z3) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + ((w0 * z0[l] + w1 * z1[l]) + (w2 * z2[l] + w3 * z3[l]));
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2,
      double w3,
      double[] z3,
      double w4,
      double[] z4) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + ((w0 * z0[l] + w1 * z1[l]) + (w2 * z2[l] + w3 * z3[l]) + w4 * z4[l]);
    }
  }
}
