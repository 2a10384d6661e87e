package org.roastfield.lab.report;

/**
 * Straight map from values to places in a drawing.
 *
 * @param low value at {@code from}
 * @param high value at {@code to}, above {@code low}
 * @param from place of {@code low}
 * @param to place of {@code high}; below {@code from} if the axis runs the other way
 */
record Axis(double low, double high, double from, double to) {

  Axis {
    if (!(high > low)) {
      throw new IllegalArgumentException("high must be above low, was [" + low + ", " + high + "]");
    }
  }

  /** Place of a value. */
  double at(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  /** Whether the value lies on the axis, but for rounding. */
  boolean holds(double value) {
    double slack = 1e-9 * (high - low);
    return value >= low - slack && value <= high + slack;
  }
}
