package org.roastfield.core.integration;

/**
 * What an attempt of many lanes leaves that other right-hand sides can be solved with: the factors
 * of its stages and the plain increments. Rows are [lanes], arrays of rows [cells][lanes].
 */
final class StepFactors {

  /** γ h α₀/ℓ². */
  final double[] lambda;

  /** γ h [s]. */
  final double[] gammaStep;

  /** 1/(γ h) [1/s]. */
  final double[] inverseGammaStep;

  /** κ [m²·K/W]. */
  final double[] kappa;

  /** Change of the flow at the face with its temperature. */
  final double[] gain;

  /** Response of the cell at the face to its temperature. */
  final double[] response;

  /** Inverse pivots [cells][lanes]. */
  final double[][] inverse;

  /** Entries above over pivots [cells][lanes]. */
  final double[][] carry;

  /** Z of each stage [stages][cells][lanes] [K]. */
  final double[][][] increments;

  StepFactors(int cells, int width) {
    lambda = new double[width];
    gammaStep = new double[width];
    inverseGammaStep = new double[width];
    kappa = new double[width];
    gain = new double[width];
    response = new double[width];
    inverse = new double[cells][width];
    carry = new double[cells][width];
    increments = new double[Esdirk4.STAGES][cells][width];
  }

  /** Takes lane {@code from} of others as lane {@code to}. */
  void take(StepFactors others, int from, int to) {
    lambda[to] = others.lambda[from];
    gammaStep[to] = others.gammaStep[from];
    inverseGammaStep[to] = others.inverseGammaStep[from];
    kappa[to] = others.kappa[from];
    gain[to] = others.gain[from];
    response[to] = others.response[from];
    for (int i = 0; i < inverse.length; i++) {
      inverse[i][to] = others.inverse[i][from];
      carry[i][to] = others.carry[i][from];
      for (int s = 0; s < increments.length; s++) {
        increments[s][i][to] = others.increments[s][i][from];
      }
    }
  }
}
