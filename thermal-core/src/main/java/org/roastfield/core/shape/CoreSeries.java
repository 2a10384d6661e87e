package org.roastfield.core.shape;

import java.util.Arrays;

/**
 * Core temperature of a body with any geometry exponent m ≥ 0 and a Robin surface, over Fo = α t/R²
 * as the share of the first temperature difference that is left: θ = Σ C exp(−β² Fo), eq. (41).
 *
 * <p>The mode is φ(z) = Σ (−z²/4)ⁿ / (n! (ν + 1) … (ν + n)) with ν = (m − 1)/2, a multiple of
 * z^(−ν) J_ν(z): cos z for m = 0, J0(z) for 1, sin z/z for 2. β are the roots of β s(β) = Bi φ(β)
 * with s = −φ′, and C = 2 g/(g² + β² φ² + (1 − m) g φ) with g = β s [CarslawJaeger1959].
 *
 * <p>Below Fo = {@value #EARLIEST} θ is 1; from there on the terms left out are below 1e-5. Holds
 * the scratch numbers of its construction, so not for more than one thread while it is made.
 */
final class CoreSeries {

  private static final double EARLIEST = 0.02;

  /** exp(−12) is below 1e-5. */
  private static final double LARGEST_DECAY = 12;

  /** Neighbouring roots lie at least 2 apart. */
  private static final double SCAN_STEP = 1;

  private static final int MOST_CORRECTIONS = 60;
  private static final double PRECISION = 1e-13;

  private final double exponent;
  private final double biotNumber;
  private final double[] rates;
  private final double[] weights;

  /** φ and s at the last place asked for. */
  private double mode;

  private double descent;

  /**
   * @param exponent m, at least 0
   * @param biotNumber h R/k, greater than 0
   * @param earliest least Fo that is asked for
   */
  CoreSeries(double exponent, double biotNumber, double earliest) {
    this.exponent = exponent;
    this.biotNumber = biotNumber;
    this.rates = roots(Math.sqrt(LARGEST_DECAY / Math.max(EARLIEST, earliest)));
    this.weights = new double[rates.length];
    for (int i = 0; i < rates.length; i++) {
      double root = rates[i];
      evaluate(root);
      double g = root * descent;
      weights[i] = 2 * g / (g * g + root * root * mode * mode + (1 - exponent) * g * mode);
      rates[i] = root * root;
    }
  }

  /** θ at Fo. */
  double at(double fourierNumber) {
    if (fourierNumber < EARLIEST) {
      return 1;
    }
    double sum = 0;
    for (int i = rates.length - 1; i >= 0; i--) {
      sum += weights[i] * StrictMath.exp(-rates[i] * fourierNumber);
    }
    return sum;
  }

  /** Roots up to the first beyond a limit. */
  private double[] roots(double limit) {
    double[] roots = new double[2 + (int) (limit / SCAN_STEP)];
    int count = 0;
    double left = 0;
    double before = -biotNumber;
    while (count == 0 || roots[count - 1] < limit) {
      double right = left + SCAN_STEP;
      double after = residual(right);
      if (before < 0 != after < 0) {
        roots[count++] = refine(left, before, right, after);
      }
      left = right;
      before = after;
    }
    return Arrays.copyOf(roots, count);
  }

  /** Newton's method kept inside its bracket. */
  private double refine(double left, double before, double right, double after) {
    double low = left;
    double high = right;
    double root = left + (right - left) * before / (before - after);
    for (int i = 0; i < MOST_CORRECTIONS; i++) {
      double residual = residual(root);
      if (residual < 0 == before < 0) {
        low = root;
      } else {
        high = root;
      }
      // The mode's equation gives s′ = φ − m s/z.
      double slope = (1 - exponent + biotNumber) * descent + root * mode;
      double next = root - residual / slope;
      next = next > low && next < high ? next : 0.5 * (low + high);
      if (Math.abs(next - root) <= PRECISION * root) {
        return next;
      }
      root = next;
    }
    return root;
  }

  private double residual(double z) {
    evaluate(z);
    return z * descent - biotNumber * mode;
  }

  private void evaluate(double z) {
    double order = 0.5 * (exponent - 1);
    double square = -0.25 * z * z;
    double term = 1;
    double value = 1;
    double slope = 0;
    for (int n = 1; n < z || Math.abs(term) > 1e-17; n++) {
      term *= square / (n * (order + n));
      value += term;
      slope += n * term;
    }
    mode = value;
    descent = -2 * slope / z;
  }
}
