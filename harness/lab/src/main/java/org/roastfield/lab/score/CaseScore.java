package org.roastfield.lab.score;

import java.util.List;

/**
 * Scores of one forecast, in the unit of its outcome.
 *
 * @param cook its id
 * @param outcome what came
 * @param error median of the forecast less the outcome
 * @param crps continuous ranked probability score
 * @param weightedIntervalScore of the levels of {@code intervals}
 * @param intervals central intervals, one for each level
 * @param pit where in its forecast the outcome fell, in [0, 1]
 */
public record CaseScore(
    String cook,
    double outcome,
    double error,
    double crps,
    double weightedIntervalScore,
    List<Interval> intervals,
    double pit) {

  /** Copies the intervals. */
  public CaseScore {
    intervals = List.copyOf(intervals);
  }

  /**
   * Interval of a level.
   *
   * @throws IllegalArgumentException if none of that level was scored
   */
  public Interval interval(double level) {
    return intervals.stream()
        .filter(interval -> interval.level() == level)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "level must be one of "
                        + intervals.stream().map(Interval::level).toList()
                        + ", was "
                        + level));
  }
}
