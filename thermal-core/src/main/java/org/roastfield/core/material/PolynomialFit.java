package org.roastfield.core.material;

import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.units.Temperatures;

/**
 * Polynomial through a smooth function at Chebyshev nodes: within a few times the best possible
 * error of its degree.
 */
final class PolynomialFit {

  private PolynomialFit() {}

  /**
   * Curve of the given degree through {@code function} on [{@code lowest}, {@code highest}] [K].
   *
   * @param degree at least 1; nodes at the zeros of the Chebyshev polynomial of one degree more
   */
  static PropertyCurve of(double lowest, double highest, int degree, DoubleUnaryOperator function) {
    int n = degree + 1;
    double[] x = new double[n];
    double[] divided = new double[n];
    for (int i = 0; i < n; i++) {
      double node = StrictMath.cos(Math.PI * (2 * i + 1) / (2 * n));
      double temperature = 0.5 * (lowest + highest) + 0.5 * (highest - lowest) * node;
      x[i] = temperature - Temperatures.ZERO_CELSIUS;
      divided[i] = function.applyAsDouble(temperature);
    }
    dividedDifferences(x, divided);
    return PropertyCurve.polynomial(lowest, highest, powers(x, divided));
  }

  private static void dividedDifferences(double[] x, double[] y) {
    for (int level = 1; level < x.length; level++) {
      for (int i = x.length - 1; i >= level; i--) {
        y[i] = (y[i] - y[i - 1]) / (x[i] - x[i - level]);
      }
    }
  }

  /** Newton's form to powers of x by nested multiplication. */
  private static double[] powers(double[] x, double[] divided) {
    int n = x.length;
    double[] c = new double[n];
    c[0] = divided[n - 1];
    for (int level = n - 2; level >= 0; level--) {
      for (int power = n - 1 - level; power > 0; power--) {
        c[power] = c[power - 1] - x[level] * c[power];
      }
      c[0] = divided[level] - x[level] * c[0];
    }
    return c;
  }
}
