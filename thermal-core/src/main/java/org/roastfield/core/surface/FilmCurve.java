package org.roastfield.core.surface;

import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.air.DryAir;

/**
 * A smooth function of film temperature as a polynomial of degree 8 through Chebyshev nodes over
 * the range of {@link DryAir}: cheap to evaluate and with an exact slope. Functions of air's
 * properties are met within 1e-5 of their value.
 */
final class FilmCurve {

  private static final int DEGREE = 8;
  private static final double CENTRE = 0.5 * (DryAir.HIGHEST + DryAir.LOWEST);
  private static final double HALF_RANGE = 0.5 * (DryAir.HIGHEST - DryAir.LOWEST);

  /** By powers of x = (T − centre)/half range. */
  private final double[] coefficients;

  private FilmCurve(double[] coefficients) {
    this.coefficients = coefficients;
  }

  static FilmCurve of(DoubleUnaryOperator function) {
    double[] nodes = new double[DEGREE + 1];
    double[] differences = new double[DEGREE + 1];
    for (int i = 0; i <= DEGREE; i++) {
      nodes[i] = StrictMath.cos(Math.PI * (i + 0.5) / (DEGREE + 1));
      differences[i] = function.applyAsDouble(CENTRE + HALF_RANGE * nodes[i]);
    }
    for (int order = 1; order <= DEGREE; order++) {
      for (int i = DEGREE; i >= order; i--) {
        differences[i] = (differences[i] - differences[i - 1]) / (nodes[i] - nodes[i - order]);
      }
    }
    return new FilmCurve(powers(nodes, differences));
  }

  /** From Newton's form to powers of x. */
  private static double[] powers(double[] nodes, double[] differences) {
    double[] powers = new double[DEGREE + 1];
    powers[0] = differences[DEGREE];
    for (int i = DEGREE - 1; i >= 0; i--) {
      for (int j = DEGREE - i; j > 0; j--) {
        powers[j] = powers[j - 1] - nodes[i] * powers[j];
      }
      powers[0] = differences[i] - nodes[i] * powers[0];
    }
    return powers;
  }

  /** Value at a film temperature [K] in the range of {@link DryAir}; meaningless outside. */
  double at(double filmTemperature) {
    double x = (filmTemperature - CENTRE) * (1 / HALF_RANGE);
    double sum = coefficients[DEGREE];
    for (int i = DEGREE - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  /** Derivative by film temperature. */
  double slope(double filmTemperature) {
    double x = (filmTemperature - CENTRE) * (1 / HALF_RANGE);
    double sum = DEGREE * coefficients[DEGREE];
    for (int i = DEGREE - 1; i >= 1; i--) {
      sum = sum * x + i * coefficients[i];
    }
    return sum * (1 / HALF_RANGE);
  }
}
