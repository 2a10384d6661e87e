package org.roastfield.core.reference;

import java.util.function.DoubleUnaryOperator;

/**
 * Bessel functions J0 and J1 of the first kind by the trapezium rule on their integral over a
 * quarter period (DLMF 10.9.1 and 10.9.2).
 *
 * <p>The integrand is periodic and entire, so that the rule with K intervals errs by about J of
 * order 4K, which is below round-off once 4K exceeds the argument by {@value #MARGIN}. Validity:
 * arguments in [0, 200], error below 3e-16 + 2e-16 x.
 */
final class Bessel {
  private static final int MARGIN = 80;

  private Bessel() {}

  static double j0(double x) {
    return quarterPeriodMean(x, cosine -> Math.cos(x * cosine));
  }

  static double j1(double x) {
    return quarterPeriodMean(x, cosine -> cosine * Math.sin(x * cosine));
  }

  private static double quarterPeriodMean(double x, DoubleUnaryOperator integrandOfCosine) {
    int intervals = (int) Math.ceil((Require.within("x", 0, 250, x) + MARGIN) / 4);
    double sum = 0.5 * (integrandOfCosine.applyAsDouble(1) + integrandOfCosine.applyAsDouble(0));
    for (int i = 1; i < intervals; i++) {
      sum += integrandOfCosine.applyAsDouble(Math.cos(0.5 * Math.PI * i / intervals));
    }
    return sum / intervals;
  }
}
