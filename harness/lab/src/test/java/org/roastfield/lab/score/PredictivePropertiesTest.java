package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class PredictivePropertiesTest {

  /** Who says what they believe has the least mean score, whatever others say. */
  @Property
  void crps_isProper(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = -100, max = 100) Double> truth,
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = -100, max = 100) Double> other) {
    double honest = meanCrps(draws(truth), truth);
    double dishonest = meanCrps(draws(other), truth);
    assertTrue(honest <= dishonest + 1e-11, () -> honest + " above " + dishonest);
  }

  /** Scores move and stretch with their unit. */
  @Property
  void scores_scaleWithTheirUnit(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = -100, max = 100) Double> values,
      @ForAll @DoubleRange(min = -150, max = 150) double outcome) {
    Predictive forecast = draws(values);
    Predictive moved = draws(values.stream().map(value -> 60 * value + 7).toList());
    double other = 60 * outcome + 7;
    assertEquals(60 * forecast.crps(outcome), moved.crps(other), 1e-9);
    assertEquals(
        60 * forecast.weightedIntervalScore(ForecastCase.LEVELS, outcome),
        moved.weightedIntervalScore(ForecastCase.LEVELS, other),
        1e-9);
  }

  /** An outcome inside the central interval has a transform between its tails, and only then. */
  @Property
  void intervalAndTransform_agree(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0, max = 10) Double> values,
      @ForAll @DoubleRange(min = -1, max = 11) double outcome) {
    Predictive forecast = draws(values);
    boolean covered = forecast.interval(0.8).covers(outcome);
    double least = forecast.pit(outcome, 0);
    double most = forecast.pit(outcome, 1);
    assertEquals(covered, most >= 0.1 - 1e-12 && least < 0.9 - 1e-12);
  }

  /** Censoring and taking quantiles may change places. */
  @Property
  void censoring_cutsQuantiles(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = -100, max = 100) Double> values,
      @ForAll @DoubleRange(min = -120, max = 120) double horizon,
      @ForAll @DoubleRange(min = 0, max = 1) double probability) {
    Predictive forecast = draws(values);
    double expected = Math.min(horizon, forecast.quantile(probability));
    assertEquals(expected, forecast.censoredAt(horizon).quantile(probability), 1e-12);
    double cut = Math.min(horizon, 30);
    Predictive censored = draws(values.stream().map(value -> Math.min(horizon, value)).toList());
    assertEquals(censored.crps(cut), forecast.censoredAt(horizon).crps(cut), 1e-12);
  }

  private static Predictive draws(List<Double> values) {
    return Predictive.ofDraws(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double meanCrps(Predictive forecast, List<Double> truth) {
    return truth.stream().mapToDouble(forecast::crps).average().orElseThrow();
  }
}
