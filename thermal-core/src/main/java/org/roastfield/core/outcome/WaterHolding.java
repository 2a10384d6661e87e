package org.roastfield.core.outcome;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * How much of its water lean meat presses out by its highest temperature, eq. (69). Immutable.
 *
 * @param drop share of the raw mass that great heat presses out, greater than 0, below 1
 * @param middle temperature of half of it [K]
 * @param slope steepness [1/K], greater than 0
 */
public record WaterHolding(double drop, double middle, double slope) {

  /**
   * Beef: 0.345 of the raw mass, half of it at 65.6 °C, 0.25 per kelvin. A curve of roasting models
   * that was written down from memory, so assumed.
   */
  public static final WaterHolding BEEF =
      new WaterHolding(0.345, Temperatures.celsius(52) + StrictMath.log(30) / 0.25, 0.25);

  /** Standard deviation of {@link #drop} between kinds of meat and animals; assumed. */
  public static final double DROP_SPREAD = 0.04;

  /** The same of {@link #middle} [K]; assumed. */
  public static final double MIDDLE_SPREAD = 2.5;

  /** The same of {@link #slope} [1/K]; assumed. */
  public static final double SLOPE_SPREAD = 0.06;

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public WaterHolding {
    Check.positive("drop", drop);
    Check.positive("1 - drop", 1 - drop);
    Check.positive("middle", middle);
    Check.positive("slope", slope);
  }

  /** Share of the raw mass pressed out at a highest temperature [K]. */
  public double pressedOut(double temperature) {
    return drop / (1 + StrictMath.exp(-slope * (temperature - middle)));
  }

  /** Beef that holds its water less well by one standard deviation of drop and middle. */
  public static WaterHolding looser() {
    return new WaterHolding(BEEF.drop + DROP_SPREAD, BEEF.middle - MIDDLE_SPREAD, BEEF.slope);
  }

  /** Beef that holds it better by as much. */
  public static WaterHolding tighter() {
    return new WaterHolding(BEEF.drop - DROP_SPREAD, BEEF.middle + MIDDLE_SPREAD, BEEF.slope);
  }
}
