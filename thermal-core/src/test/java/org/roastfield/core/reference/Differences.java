package org.roastfield.core.reference;

import java.util.function.DoubleUnaryOperator;

/** Derivatives by central differences of fourth order, to check closed forms against. */
final class Differences {
  private Differences() {}

  /** f′(x) with step h; the error is of order h⁴, and of order 1e-16 / h from round-off. */
  static double first(DoubleUnaryOperator f, double x, double h) {
    double near = f.applyAsDouble(x + h) - f.applyAsDouble(x - h);
    double far = f.applyAsDouble(x + 2 * h) - f.applyAsDouble(x - 2 * h);
    return (8 * near - far) / (12 * h);
  }

  /** f″(x) with step h; the error is of order h⁴, and of order 1e-16 / h² from round-off. */
  static double second(DoubleUnaryOperator f, double x, double h) {
    double near = f.applyAsDouble(x + h) + f.applyAsDouble(x - h);
    double far = f.applyAsDouble(x + 2 * h) + f.applyAsDouble(x - 2 * h);
    return (16 * near - far - 30 * f.applyAsDouble(x)) / (12 * h * h);
  }
}
