package org.roastfield.core.reference;

/** Checks of arguments of the exact solutions; each is written positive-first so that NaN fails. */
final class Require {
  private Require() {}

  static double positive(String name, double value) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be positive and finite, was " + value);
  }

  static double atLeast(String name, double lowest, double value) {
    if (value >= lowest && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be at least " + lowest + " and finite, was " + value);
  }

  static double within(String name, double lowest, double highest, double value) {
    if (value >= lowest && value <= highest) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + lowest + ", " + highest + "], was " + value);
  }

  static double finite(String name, double value) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite, was " + value);
  }
}
