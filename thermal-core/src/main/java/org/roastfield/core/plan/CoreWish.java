package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;
import org.roastfield.core.outcome.DonenessScale;

/**
 * How hot the core shall get at most, carryover included: a range, or one temperature.
 *
 * @param low [K]
 * @param high [K], at least {@code low}
 */
public record CoreWish(double low, double high) {

  /**
   * Width that a band without an end is given [K]: as wide as the trade's band of medium; assumed.
   */
  private static final double OPEN_BAND = 5;

  /** How far a core may be from one temperature that is wished [K]; assumed. */
  public static final double NEAR = 2;

  /**
   * @throws IllegalArgumentException if a temperature is not positive or high is below low
   */
  public CoreWish {
    Check.positive("low", low);
    Check.inRange("high", high, low, Double.MAX_VALUE);
  }

  /** One temperature [K]. */
  public static CoreWish of(double temperature) {
    return new CoreWish(temperature, temperature);
  }

  /**
   * One temperature, from which a core may be off by {@link #NEAR}: what is wished of a cook, whom
   * no core meets exactly.
   *
   * @param temperature [K]
   */
  public static CoreWish near(double temperature) {
    return new CoreWish(temperature - NEAR, temperature + NEAR);
  }

  /**
   * A name of a scale.
   *
   * @param band index of the name, not the first, which has no lower end
   */
  public static CoreWish of(DonenessScale scale, int band) {
    int last = scale.bands().size() - 1;
    double low = scale.bands().get(Check.inRange("band", band, 1, last)).from();
    return new CoreWish(low, band == last ? low + OPEN_BAND : scale.end(band));
  }

  /** Middle of the range [K]. */
  public double middle() {
    return 0.5 * (low + high);
  }
}
