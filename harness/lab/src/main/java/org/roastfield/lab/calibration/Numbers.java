package org.roastfield.lab.calibration;

/** Checks of arguments: each returns the value, or names the argument, the rule and the value. */
final class Numbers {

  private Numbers() {}

  static int inRange(String name, int value, int low, int high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + low + ", " + high + "], was " + value);
  }

  static double inRange(String name, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + low + ", " + high + "], was " + value);
  }
}
