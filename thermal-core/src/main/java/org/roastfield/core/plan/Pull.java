package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/**
 * When the gentle heat ends: as soon as the display, drawn on for a while as fast as it rose over
 * its last {@link Plan#AHEAD} kelvin, gets to a target, eq. (93). A cut that warms fast carries
 * over more, and comes off at a lower reading.
 *
 * @param target [K]
 * @param ahead how long the rise is drawn on [s], at least 0; 0 for a pull at a fixed reading
 */
public record Pull(double target, double ahead) {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Pull {
    Check.positive("target", target);
    Check.notNegative("ahead", ahead);
  }
}
