package org.roastfield.lab.plan;

import java.util.Locale;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Spread;

/**
 * A line of a timetable.
 *
 * @param id stable from plan to plan, such as "pull"
 * @param what to do or to see, in a few words
 * @param time after the wanted carving [s]; three times the same where the clock decides
 * @param slack how much later than its median it may come [s], below 0 where it must come earlier;
 *     infinite where it does not matter
 * @param slips what to do when it slips, in a few words
 * @param advice the same in whole sentences
 */
public record PlanStep(
    String id, String what, Spread time, double slack, String slips, String advice) {

  /** The id of a milestone's line. */
  public static String id(Milestone.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the clock decides when it is. */
  public boolean isByClock() {
    return time.low() == time.high();
  }

  /** Whether it would have to come earlier for the chance that is asked for, by half a minute. */
  boolean isBehind() {
    return slack < -30;
  }

  /** The same with more advice. */
  PlanStep withAdvice(String more) {
    return new PlanStep(id, what, time, slack, slips, advice + more);
  }

  /** The same at another time, where it cannot be any more when it should have been. */
  PlanStep at(double other, String instead) {
    double left = slack - (other - time.median());
    return new PlanStep(id, instead, new Spread(other, other, other), left, slips, advice);
  }
}
