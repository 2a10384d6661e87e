package org.roastfield.core.plan;

/**
 * A wish that a plan cannot meet; the plan is then the nearest possible.
 *
 * @param reason why
 * @param wished what was asked for, in the unit of the reason
 * @param reached what the plan has instead
 */
public record Shortfall(Reason reason, double wished, double reached) {

  /** Why a wish cannot be met. */
  public enum Reason {
    /**
     * The gentle heat does not bring the display to the reading that the wish needs, in the time
     * allowed, with the demanded chance; final core, middle of the wish against median [K].
     */
    HEAT_TOO_LOW,
    /** The same, while those that get there are as wished; chances of getting there, in [0, 1]. */
    HEAT_TOO_SELDOM,
    /** Sear and carryover alone overshoot the wish; final core, end of the wish, median [K]. */
    SEAR_TOO_MUCH,
    /** A demanded minimum lies above the wish: final core, end of the wish, median [K]. */
    MINIMUM_ABOVE_WISH,
    /** A demanded minimum is not met with its chance at any reading; chances, in [0, 1]. */
    MINIMUM_NOT_MET,
    /** It should have gone on already; how long before the wanted carving, needed and left [s]. */
    TOO_LATE,
    /**
     * Times differ more than it may be held, so that it is ready by the latest carving less often
     * than demanded; chances, in [0, 1].
     */
    LATE_TOO_OFTEN,
    /** Times differ so much that it may be held for too long; chances of not, in [0, 1]. */
    HELD_TOO_LONG
  }
}
