package org.roastfield.core.material;

import java.util.Optional;
import org.roastfield.core.internal.Check;

/**
 * Water of a food, and how much of it heat presses out.
 *
 * @param content water in a cubic metre of the raw food [kg/m³]; 0 where it is not known: then a
 *     face that dries is fed without an end
 * @param share of the raw mass that is water, in [0, 1]; 0 where it is not known
 * @param holding what heat presses out of lean meat; empty for food that nothing is pressed out of
 */
public record Moisture(double content, double share, Optional<WaterHolding> holding) {

  /** Nothing is known of the water. */
  public static final Moisture UNKNOWN = new Moisture(0, 0, Optional.empty());

  /** Share of water of the lean meat that eq. (69) is for. */
  private static final double LEAN = 0.72;

  /**
   * @throws IllegalArgumentException if an argument is outside its range, or one of content and
   *     share is 0 alone
   */
  public Moisture {
    Check.notNegative("content", content);
    Check.inRange("share", share, 0, 1);
    if ((content > 0) != (share > 0)) {
      throw new IllegalArgumentException(
          "content and share must both be 0 or both be positive, were "
              + content
              + " and "
              + share);
    }
    if (holding.isPresent() && !(holding.get().drop() < LEAN)) {
      throw new IllegalArgumentException(
          "drop of holding must be below " + LEAN + ", was " + holding.get().drop());
    }
  }

  /**
   * Lean meat of a density [kg/m³]: 72 % of water, held as by beef. For food whose water nobody
   * states.
   */
  public static Moisture ofLeanMeat(double density) {
    return new Moisture(LEAN * density, LEAN, Optional.of(WaterHolding.BEEF));
  }

  /** The same water held otherwise; of food that nothing is pressed out of, the same. */
  public Moisture held(WaterHolding other) {
    return holding.isEmpty() ? this : new Moisture(content, share, Optional.of(other));
  }

  /** Mass of a cubic metre of the raw food [kg/m³]; 0 where its water is not known. */
  public double rawDensity() {
    return share > 0 ? content / share : 0;
  }

  /** Whether the food's water is known. */
  public boolean isKnown() {
    return content > 0;
  }

  /**
   * Water that a highest temperature presses out, eq. (69), of a cubic metre of the raw food
   * [kg/m³]: of fatty meat as of lean in proportion to its water, which is assumed.
   *
   * @param temperature [K]
   */
  public double pressedOut(double temperature) {
    return holding.isEmpty() ? 0 : holding.get().pressedOut(temperature) * content / LEAN;
  }

  /** Water that no heat presses out, of a cubic metre of the raw food [kg/m³]. */
  public double kept() {
    return holding.isEmpty() ? content : content * (1 - holding.get().drop() / LEAN);
  }
}
