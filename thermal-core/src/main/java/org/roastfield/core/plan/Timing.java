package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/**
 * What the clock decides after a pull.
 *
 * @param leastRest [s], at least 0
 * @param leave when it is carved, if it has rested, since the start of the cook [s], at least 0
 * @param sears when a cut that waits for its sear stops waiting, since the start of the cook [s],
 *     at least 0; one that is pulled later is seared at once
 */
public record Timing(double leastRest, double leave, double sears) {

  /**
   * @throws IllegalArgumentException if a number is negative
   */
  public Timing {
    Check.notNegative("leastRest", leastRest);
    Check.notNegative("leave", leave);
    Check.notNegative("sears", sears);
  }

  /** Nobody waits. */
  static Timing atOnce(double leastRest) {
    return new Timing(leastRest, 0, 0);
  }

  /**
   * For a cook that begins so long before the wanted carving [s].
   *
   * @param after from the end of a wait to having rested [s]
   */
  static Timing of(Service service, double lead, double after) {
    return new Timing(service.leastRest(), lead, Math.max(0, lead - after));
  }

  /** The same with everything so much later [s]. */
  Timing later(double by) {
    return new Timing(leastRest, leave + by, sears + by);
  }
}
