package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;

/**
 * One number that somebody read once: a weight, an instant reading, a time.
 *
 * @param name for messages
 * @param value finite
 * @param spread standard deviation of value less model, greater than 0; includes what the model
 *     leaves out
 * @param resolution step of the reading, 0 if none
 */
public record SingleReading(String name, double value, double spread, double resolution) {

  /**
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public SingleReading {
    Check.notBlank("name", name);
    Check.finite("value", value);
    Check.positive("spread", spread);
    Check.notNegative("resolution", resolution);
  }

  /** Standard deviation with rounding. */
  double totalSpread() {
    return Math.sqrt(spread * spread + resolution * resolution / 12);
  }
}
