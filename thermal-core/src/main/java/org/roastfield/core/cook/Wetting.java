package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;

/**
 * Water put on the faces when a stage begins, by basting or spritzing. The water is as warm as the
 * face.
 *
 * @param upper on the surface; in a slab, on the upper face [kg/m²], at least 0. A spray gives 0.02
 *     to 0.1, assumed
 * @param lower on a slab's lower face [kg/m²], at least 0
 */
public record Wetting(double upper, double lower) {

  /** No water. */
  public static final Wetting NONE = new Wetting(0, 0);

  /**
   * @throws IllegalArgumentException if an amount is negative or not finite
   */
  public Wetting {
    Check.notNegative("upper", upper);
    Check.notNegative("lower", lower);
  }

  /** The same on all of the surface [kg/m²]. */
  public static Wetting allRound(double water) {
    return new Wetting(water, water);
  }
}
