package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/**
 * When the cut shall be carved, and what is possible around it. Times in seconds after the wanted
 * carving; before it they are negative.
 *
 * @param latest how much later will do [s], at least 0
 * @param earliestOn before this nothing can go on [s], such as now; {@code NEGATIVE_INFINITY} if
 *     there is time enough
 * @param chance demanded of being ready by the latest carving, in [0.5, 0.999]
 * @param leastRest [s], at least 0
 * @param longestHold how long it may wait for its sear, or be kept after its rest [s], at least 0
 * @param missed what a cook counts as that misses this: one whose core is so far short of the wish
 *     [K], greater than 0
 * @param kept whether the window holds whatever the core is: what is not done comes off in time for
 *     the latest carving, and nothing so early that it would wait longer than it may
 */
public record Service(
    double latest,
    double earliestOn,
    double chance,
    double leastRest,
    double longestHold,
    double missed,
    boolean kept) {

  /** A band of doneness, assumed [K]. */
  public static final double USUAL_MISSED = 2.5;

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Service {
    Check.notNegative("latest", latest);
    if (!(earliestOn < latest)) {
      throw new IllegalArgumentException(
          "earliestOn must be before the latest carving, was " + earliestOn);
    }
    Check.inRange("chance", chance, 0.5, 0.999);
    Check.notNegative("leastRest", leastRest);
    Check.notNegative("longestHold", longestHold);
    Check.positive("missed", missed);
  }

  /**
   * On time with a chance of nine in ten, after a rest of at least 15 minutes, and kept for another
   * hour at most; the rest, the hour and what missing it counts as are assumed.
   */
  public static Service usual() {
    return new Service(0, Double.NEGATIVE_INFINITY, 0.9, 900, 3600, USUAL_MISSED, false);
  }

  /** The same with a later end of the window [s]. */
  public Service withLatest(double latest) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }

  /** The same with nothing going on before a time [s]. */
  public Service withEarliestOn(double earliestOn) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }

  /** The same with another chance. */
  public Service withChance(double chance) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }

  /** The same with another rest and hold [s]. */
  public Service withRest(double leastRest, double longestHold) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }

  /** The same that counts as a core so far short if it is missed [K]. */
  public Service withMissed(double missed) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }

  /** The same whose window holds, or does not. */
  public Service withKept(boolean kept) {
    return new Service(latest, earliestOn, chance, leastRest, longestHold, missed, kept);
  }
}
