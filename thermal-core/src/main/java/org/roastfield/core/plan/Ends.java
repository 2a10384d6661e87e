package org.roastfield.core.plan;

import org.roastfield.core.cook.StageEnd;

/** What ends the stages after the gentle heat that a plan decides about. */
record Ends(StageEnd waiting, StageEnd resting, StageEnd keeping) {

  /** By the clock. */
  static Ends of(Timing timing) {
    return new Ends(
        StageEnd.at(timing.sears()),
        StageEnd.after(timing.leastRest()),
        StageEnd.at(timing.leave()));
  }

  /**
   * After so long a wait for the sear, or a rest that is so much longer where a course has none.
   *
   * @param held [s]
   */
  static Ends of(Course course, double leastRest, double held) {
    boolean waits = course.waits() && held > 0;
    return new Ends(
        waits ? StageEnd.after(held) : StageEnd.at(0),
        StageEnd.after(waits ? leastRest : leastRest + held),
        StageEnd.at(0));
  }
}
