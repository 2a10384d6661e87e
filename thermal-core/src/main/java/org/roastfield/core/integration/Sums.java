package org.roastfield.core.integration;

/** Weighted sums of arrays in one pass: result = u + Σ w z. */
final class Sums {

  private Sums() {}

  /** result += w z. */
  static void add(double[] result, double w, double[] z) {
    for (int i = 0; i < result.length; i++) {
      result[i] += w * z[i];
    }
  }

  static void of(double[] result, double[] u, double w0, double[] z0) {
    for (int i = 0; i < result.length; i++) {
      result[i] = u[i] + w0 * z0[i];
    }
  }

  static void of(double[] result, double[] u, double w0, double[] z0, double w1, double[] z1) {
    for (int i = 0; i < result.length; i++) {
      result[i] = u[i] + (w0 * z0[i] + w1 * z1[i]);
    }
  }

  static void of(
      double[] result,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2) {
    for (int i = 0; i < result.length; i++) {
      result[i] = u[i] + (w0 * z0[i] + w1 * z1[i] + w2 * z2[i]);
    }
  }

  static void of(
      double[] result,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2,
      double w3,
      double[] z3) {
    for (int i = 0; i < result.length; i++) {
      result[i] = u[i] + ((w0 * z0[i] + w1 * z1[i]) + (w2 * z2[i] + w3 * z3[i]));
    }
  }

  static void of(
      double[] result,
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
    for (int i = 0; i < result.length; i++) {
      result[i] = u[i] + ((w0 * z0[i] + w1 * z1[i]) + (w2 * z2[i] + w3 * z3[i]) + w4 * z4[i]);
    }
  }
}
