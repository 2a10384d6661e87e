package org.roastfield.core.reference;

/**
 * Complementary error function, plain and scaled by exp(x²), for arguments from zero up.
 *
 * <p>Below {@value #SERIES_LIMIT} the series DLMF 7.6.2, above it the continued fraction DLMF
 * 7.9.1, which needs no exponential and so never overflows. Relative error of the scaled function
 * below 2e-14.
 */
final class ErrorFunction {
  private static final double SERIES_LIMIT = 1.5;
  private static final int SERIES_TERMS = 40;
  private static final int FRACTION_TERMS = 160;
  private static final double ROOT_OF_PI = Math.sqrt(Math.PI);

  private ErrorFunction() {}

  /** exp(x²) erfc(x), which falls from 1 as 1 / (x √π) for large x. */
  static double scaledComplement(double x) {
    Require.atLeast("x", 0, x);
    return x < SERIES_LIMIT ? bySeries(x) : byContinuedFraction(x);
  }

  /** erfc(x) = 1 − erf(x). */
  static double complement(double x) {
    return Math.exp(-x * x) * scaledComplement(x);
  }

  private static double bySeries(double x) {
    double term = x;
    double sum = term;
    for (int n = 1; n < SERIES_TERMS; n++) {
      term *= 2 * x * x / (2 * n + 1);
      sum += term;
    }
    return Math.exp(x * x) - 2 / ROOT_OF_PI * sum;
  }

  private static double byContinuedFraction(double x) {
    double tail = x;
    for (int n = FRACTION_TERMS; n >= 1; n--) {
      tail = x + 0.5 * n / tail;
    }
    return 1 / (ROOT_OF_PI * tail);
  }
}
