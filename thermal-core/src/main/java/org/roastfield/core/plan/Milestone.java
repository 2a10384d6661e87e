package org.roastfield.core.plan;

/**
 * An awaited or decided event of a plan.
 *
 * @param kind what
 * @param time seconds after the wanted carving, negative before it; all three alike where it is
 *     decided by the clock
 * @param slack how much later than its median it may come for the demanded chance of being ready by
 *     the latest carving still to hold, if all after it goes as drawn [s]; below 0 where it must
 *     come earlier than that; infinite for what nothing waits for
 * @param rule what to do when it slips
 */
public record Milestone(Kind kind, Spread time, double slack, Rule rule) {

  /** Kinds in the order of time; not every plan has all. */
  public enum Kind {
    /** Salt goes on. */
    SALT,
    /** Out of the cold. */
    OUT_OF_COLD,
    /** The surface is dried. */
    PAT_DRY,
    /** The fire is lit. */
    LIGHT,
    /** A sear before the gentle heat begins. */
    FIRST_SEAR,
    /** The cut goes on the gentle heat. */
    ON,
    /** The display gets to the reading of the {@link FireCheck}. */
    CHECK,
    /** The display is {@link Plan#AHEAD} kelvin short of the pull. */
    NEAR,
    /** Off the gentle heat, at the pull reading. */
    PULL,
    /** The fire is raised for the sear. */
    RAISE,
    /** The sear begins. */
    SEAR,
    /** The rest begins. */
    REST,
    /** The core is hottest. */
    PEAK,
    /** Rested: it may be carved from now on. */
    READY,
    /** Carved. */
    CARVE
  }

  /** What to do when an event is late or early. */
  public enum Rule {
    /** Decided by the clock; beyond the slack all that follows moves along. */
    MOVE_THE_REST,
    /** By the display and not by the clock: late, raise the fire or serve later; early, hold. */
    BY_READING,
    /** By the clock and the crust; the reading hardly tells anything here. */
    BY_CLOCK_AND_CRUST,
    /** Early, keep it warm; late, carve as soon as it has rested. */
    HOLD_OR_CARVE_LATER
  }
}
