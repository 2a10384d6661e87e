package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Cooks whose times are normal around a mean that one forecaster knows; bounds are four standard
 * errors.
 */
class ScoreSummaryTest {

  private static final int COOKS = 2000;
  private static final double KNOWN = 30;
  private static final double UNKNOWN = 10;

  /** The mean CRPS of a right normal forecast is its deviation over √π. */
  @Test
  void rightForecasts_haveTheScoresOfTheNormal() {
    ScoreSummary summary = scored(1, 0);
    double expected = UNKNOWN / Math.sqrt(Math.PI);
    assertEquals(expected, summary.crps(), 4 * deviation(summary) / Math.sqrt(COOKS));
    double mae = UNKNOWN * Math.sqrt(2 / Math.PI);
    double maeError = UNKNOWN * Math.sqrt((1 - 2 / Math.PI) / COOKS);
    assertEquals(mae, summary.meanAbsoluteError(), 4 * maeError);
    assertEquals(UNKNOWN, summary.rootMeanSquareError(), 4 * UNKNOWN / Math.sqrt(2.0 * COOKS));
    assertEquals(0, summary.bias(), 4 * UNKNOWN / Math.sqrt(COOKS));
    for (double level : ForecastCase.LEVELS) {
      Coverage coverage = summary.coverage(level);
      assertEquals(level, coverage.share(), 4 * Math.sqrt(level * (1 - level) / COOKS));
      double width = 2 * UNKNOWN * Laws.normalQuantile((1 + level) / 2);
      assertEquals(width, coverage.width(), 1e-3 * width);
    }
    assertTrue(Uniformity.chiSquared(summary.pits(), 20) > 0.01);
    assertTrue(Uniformity.kolmogorovSmirnov(summary.pits()) > 0.01);
  }

  /** Knowing the mean takes the deviation from √(30² + 10²) to 10. */
  @Test
  void skill_isTheShareOfDeviationThatKnowledgeTakes() {
    PairedScores paired = PairedScores.ofCrps(scored(1, 0), climatology());
    double expected = 1 - UNKNOWN / Math.hypot(KNOWN, UNKNOWN);
    PairedBootstrap bootstrap = paired.bootstrap(1000, new SplittableRandom(4));
    assertTrue(bootstrap.skill(0.9999).covers(expected), () -> bootstrap.skill(0.9999).toString());
    assertEquals(1, bootstrap.shareBetter(), 0);
    assertEquals(expected, paired.skill(), 0.03);
  }

  /** A forecaster who is too sure covers Φ(0.6·1.645) twice less 1, and PIT shows it. */
  @Test
  void tooSureForecasts_areSeen() {
    ScoreSummary summary = scored(0.6, 0);
    double expected = 2 * Laws.normalShare(0.6 * Laws.normalQuantile(0.95)) - 1;
    double error = Math.sqrt(expected * (1 - expected) / COOKS);
    assertEquals(expected, summary.coverage(0.9).share(), 4 * error);
    assertTrue(Uniformity.chiSquared(summary.pits(), 20) < 1e-6);
    assertTrue(summary.crps() > scored(1, 0).crps());
    assertTrue(summary.weightedIntervalScore() > scored(1, 0).weightedIntervalScore());
  }

  @Test
  void lateForecasts_areSeen() {
    ScoreSummary summary = scored(1, 5);
    assertEquals(5, summary.bias(), 4 * UNKNOWN / Math.sqrt(COOKS));
    assertTrue(Uniformity.kolmogorovSmirnov(summary.pits()) < 1e-6);
  }

  @Test
  void shareWithin_countsErrorsAgainstTheOutcome() {
    List<ForecastCase> cases =
        List.of(
            new ForecastCase("a", Predictive.ofPoint(110), 100),
            new ForecastCase("b", Predictive.ofPoint(80), 100),
            new ForecastCase("c", Predictive.ofPoint(10), 20));
    ScoreSummary summary = ScoreSummary.of(cases, new SplittableRandom(1));
    assertEquals(2.0 / 3, summary.shareWithin(0.2), 1e-15);
    assertEquals(1.0 / 3, summary.shareWithin(0.1), 1e-15);
  }

  @Test
  void beyondTheHorizon_forecastAndOutcomeAgree() {
    ForecastCase never =
        new ForecastCase(
            "a",
            Predictive.ofDraws(new double[] {90, 300, Double.POSITIVE_INFINITY}),
            Double.POSITIVE_INFINITY);
    assertThrows(IllegalArgumentException.class, () -> never.scored(0.5));
    CaseScore score = never.censoredAt(120).scored(0.5);
    assertEquals(120, score.outcome(), 0);
    assertEquals(30.0 / 9, score.crps(), 1e-13);
    assertEquals(0, score.error(), 0);
    assertEquals(2.0 / 3, score.pit(), 1e-15);
  }

  @Test
  void oneCookTwice_isRefused() {
    ForecastCase one = new ForecastCase("a", Predictive.ofPoint(1), 2);
    SplittableRandom random = new SplittableRandom(1);
    assertEquals(
        "scores must be of one forecast a cook, two were of a",
        assertThrows(
                IllegalArgumentException.class, () -> ScoreSummary.of(List.of(one, one), random))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> ScoreSummary.of(List.of(), random));
    ScoreSummary summary = ScoreSummary.of(List.of(one), random);
    assertEquals(
        "level must be one of [0.5, 0.8, 0.9], was 0.95",
        assertThrows(IllegalArgumentException.class, () -> summary.coverage(0.95)).getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> new ForecastCase(" ", Predictive.ofPoint(1), 2));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ForecastCase("a", Predictive.ofPoint(1), Double.NaN));
  }

  private static ScoreSummary scored(double sureness, double late) {
    return summary(mean -> Laws.normal(mean + late, sureness * UNKNOWN));
  }

  private static ScoreSummary climatology() {
    Predictive all = Laws.normal(300, Math.hypot(KNOWN, UNKNOWN));
    return summary(mean -> all);
  }

  private static ScoreSummary summary(java.util.function.DoubleFunction<Predictive> forecaster) {
    SplittableRandom random = new SplittableRandom(12);
    List<ForecastCase> cases = new ArrayList<>();
    for (int i = 0; i < COOKS; i++) {
      double mean = 300 + KNOWN * Laws.normalQuantile(random.nextDouble());
      double outcome = mean + UNKNOWN * Laws.normalQuantile(random.nextDouble());
      cases.add(new ForecastCase("cook-" + i, forecaster.apply(mean), outcome));
    }
    return ScoreSummary.of(cases, random);
  }

  private static double deviation(ScoreSummary summary) {
    double mean = summary.crps();
    double squares =
        summary.scores().stream().mapToDouble(s -> (s.crps() - mean) * (s.crps() - mean)).sum();
    return Math.sqrt(squares / summary.cooks());
  }
}
