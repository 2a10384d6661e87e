package org.roastfield.lab.score;

import java.util.List;

/**
 * One forecast and what then came.
 *
 * @param cook its id
 * @param forecast what was said
 * @param outcome what came: finite, or +∞ if it never did; a time counts from when the forecast was
 *     made
 */
public record ForecastCase(String cook, Predictive forecast, double outcome) {

  /** Levels of the intervals that are scored. */
  public static final List<Double> LEVELS = List.of(0.5, 0.8, 0.9);

  /**
   * Checks cook and outcome.
   *
   * @throws IllegalArgumentException if the cook is blank or the outcome neither finite nor +∞
   */
  public ForecastCase {
    if (cook.isBlank()) {
      throw new IllegalArgumentException("cook must not be blank, was \"" + cook + "\"");
    }
    Check.inRange("outcome", outcome, -Double.MAX_VALUE, Double.POSITIVE_INFINITY);
  }

  /**
   * The same for the lesser of the number and a horizon: what lies beyond, in forecast and outcome,
   * lies at it. The horizon may not depend on the outcome, but for this: where a log ends before
   * the target is reached, its end is the horizon.
   *
   * @param horizon finite
   */
  public ForecastCase censoredAt(double horizon) {
    return new ForecastCase(cook, forecast.censoredAt(horizon), Math.min(outcome, horizon));
  }

  /**
   * Scores with intervals of the {@link #LEVELS}.
   *
   * @param tie drawn evenly from [0, 1], independent of all else: see {@link Predictive#pit}
   * @throws IllegalArgumentException if the outcome or an interval is not finite: censor first
   */
  public CaseScore scored(double tie) {
    Check.finite("outcome", outcome);
    return new CaseScore(
        cook,
        outcome,
        forecast.median() - outcome,
        forecast.crps(outcome),
        forecast.weightedIntervalScore(LEVELS, outcome),
        LEVELS.stream().map(forecast::interval).toList(),
        forecast.pit(outcome, tie));
  }
}
