package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.internal.Check;

/**
 * How a cut is seared: for how long, in how many rounds, and when. A round is one time on each
 * face, or on each side.
 *
 * @param duration of the whole sear [s], greater than 0
 * @param rounds at least 1; of a sear that is never turned, 1
 * @param order before or after the gentle heat
 */
public record SearSchedule(double duration, int rounds, Order order) {

  /** When a cut is seared. */
  public enum Order {
    /** After the gentle heat. */
    LAST,
    /** Before the gentle heat. */
    FIRST,
    /** Before it and after, each its part. */
    BOTH
  }

  /**
   * @throws IllegalArgumentException if the duration is not positive, or there is no round
   */
  public SearSchedule {
    Check.inRange("duration", duration, Double.MIN_NORMAL, StageEnd.LONGEST);
    Check.inRange("rounds", rounds, 1, 1000);
  }

  /**
   * Time that sears take together [s].
   *
   * @throws IllegalArgumentException if one does not end after a duration
   */
  static double duration(List<Stage> sears) {
    return sears.stream().mapToDouble(SearSchedule::durationOf).sum();
  }

  /** Rounds of sears; 0 of none. */
  static int rounds(List<Stage> sears) {
    return sears.isEmpty() ? 0 : sears.size() / round(sears);
  }

  /** Legs of a part of this schedule that takes a share of its time, each like {@code sears}. */
  List<Stage> legs(List<Stage> sears, double share, int partRounds) {
    int legs = round(sears);
    double whole = 0;
    for (Stage stage : sears.subList(0, legs)) {
      whole += durationOf(stage);
    }
    List<Stage> made = new ArrayList<>();
    for (int i = 0; i < partRounds * legs; i++) {
      Stage like = sears.get(i % legs);
      double length = duration * share * durationOf(like) / whole / partRounds;
      made.add(
          new Stage(
              "sear, round " + (i / legs + 1) + (legs == 1 ? "" : ", leg " + (i % legs + 1)),
              like.upper(),
              like.lower(),
              StageEnd.after(length),
              like.wetting(),
              false));
    }
    return made;
  }

  /** How many legs a round has: until the laws come again, or all of them. */
  private static int round(List<Stage> sears) {
    for (int legs = 1; legs <= sears.size() / 2; legs++) {
      if (sears.size() % legs == 0 && repeats(sears, legs)) {
        return legs;
      }
    }
    return sears.size();
  }

  private static boolean repeats(List<Stage> sears, int legs) {
    for (int i = legs; i < sears.size(); i++) {
      Stage stage = sears.get(i);
      Stage before = sears.get(i - legs);
      if (!stage.upper().equals(before.upper()) || !stage.lower().equals(before.lower())) {
        return false;
      }
    }
    return true;
  }

  private static double durationOf(Stage stage) {
    if (stage.end() instanceof StageEnd.After after) {
      return after.duration();
    }
    throw new IllegalArgumentException(
        "end of the sear \""
            + stage.name()
            + "\" must be a duration, was "
            + stage.end().description());
  }
}
