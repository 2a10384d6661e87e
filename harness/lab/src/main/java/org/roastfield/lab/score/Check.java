package org.roastfield.lab.score;

/** Checks of arguments: each returns the value, or names the argument, the rule and the value. */
final class Check {

  private Check() {}

  static double finite(String name, double value) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite, was " + value);
  }

  static double notNegative(String name, double value) {
    if (value >= 0 && Double.isFinite(value)) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite and at least 0, was " + value);
  }

  static double inRange(String name, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + low + ", " + high + "], was " + value);
  }

  static double inside(String name, double value, double low, double high) {
    if (value > low && value < high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in (" + low + ", " + high + "), was " + value);
  }

  static int atLeast(String name, int value, int least) {
    if (value >= least) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be at least " + least + ", was " + value);
  }

  static void sameLength(String name, int length, String other, int expected) {
    if (length != expected) {
      throw new IllegalArgumentException(
          name + " must be as many as " + other + ", " + expected + ", were " + length);
    }
  }
}
