package org.roastfield.lab.score;

/**
 * A range and the probability with which it is said to hold a number.
 *
 * @param level that probability, in (0, 1)
 * @param low its lower end, finite
 * @param high its upper end, finite, at least {@code low}
 */
public record Interval(double level, double low, double high) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public Interval {
    Check.inside("level", level, 0, 1);
    Check.finite("low", low);
    Check.finite("high", high);
    Check.inRange("low", low, -Double.MAX_VALUE, high);
  }

  /** Upper less lower end. */
  public double width() {
    return high - low;
  }

  /** Whether the range holds a number; it holds its ends. */
  public boolean covers(double value) {
    return value >= low && value <= high;
  }

  /**
   * Interval score: the width, and 2/(1 − level) times the distance by which the outcome lies
   * outside [GneitingRaftery2007].
   *
   * @param outcome finite
   */
  public double score(double outcome) {
    Check.finite("outcome", outcome);
    double outside = Math.max(0, low - outcome) + Math.max(0, outcome - high);
    return width() + 2 / (1 - level) * outside;
  }
}
