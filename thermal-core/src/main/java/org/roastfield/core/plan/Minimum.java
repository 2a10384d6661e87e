package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/**
 * A final core that the user demands with a chance.
 *
 * @param temperature [K]
 * @param chance in [0.5, 0.999]
 */
public record Minimum(double temperature, double chance) {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Minimum {
    Check.positive("temperature", temperature);
    Check.inRange("chance", chance, 0.5, 0.999);
  }
}
