package org.roastfield.core.internal;

/** Checks of arguments: each returns the value, or names the argument, the rule and the value. */
public final class Check {

  private static final double ROUNDING = 1e-12;

  private Check() {}

  /** Returns {@code value} if finite. */
  public static double finite(String name, double value) {
    if (Math.abs(value) <= Double.MAX_VALUE) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite, was " + value);
  }

  /** Returns {@code value} if finite and greater than 0. */
  public static double positive(String name, double value) {
    if (value > 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite and greater than 0, was " + value);
  }

  /** Returns {@code value} if finite and at least 0. */
  public static double notNegative(String name, double value) {
    if (value >= 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw new IllegalArgumentException(name + " must be finite and at least 0, was " + value);
  }

  /** Returns {@code value} if it lies in [{@code low}, {@code high}]. */
  public static double inRange(String name, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + low + ", " + high + "], was " + value);
  }

  /** Returns {@code value} if it lies in [{@code low}, {@code high}]. */
  public static int inRange(String name, int value, int low, int high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " must be in [" + low + ", " + high + "], was " + value);
  }

  /**
   * Returns {@code value} if it lies in [{@code low}, {@code high}], and the end it missed if by no
   * more than rounding, 1e-12 of the larger end: a caller's x · n / n may do that.
   */
  public static double inRoundedRange(String name, double value, double low, double high) {
    double rounding = ROUNDING * Math.max(Math.abs(low), Math.abs(high));
    if (value >= low - rounding && value <= high + rounding) {
      return Math.max(low, Math.min(high, value));
    }
    return inRange(name, value, low, high);
  }

  /** Returns {@code text} if it has a visible character. */
  public static String notBlank(String name, String text) {
    if (!text.isBlank()) {
      return text;
    }
    throw new IllegalArgumentException(name + " must not be blank, was \"" + text + "\"");
  }
}
