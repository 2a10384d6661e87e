package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PredictiveTest {

  private static final double[] DRAWS = {4, -1, 2.5, 2.5, 7};
  private static final double[] WEIGHTS = {3, 1, 2, 4, 0.5};

  @Test
  void crpsOfAPoint_isItsAbsoluteError() {
    assertEquals(3, Predictive.ofPoint(10).crps(13), 0);
    assertEquals(3, Predictive.ofPoint(10).crps(7), 0);
  }

  @Test
  void crpsOfWeightedDraws_isItsDefinition() {
    Predictive forecast = Predictive.ofDraws(DRAWS, WEIGHTS);
    for (double outcome : new double[] {-5, -1, 0, 2.5, 3, 6.9, 7, 20}) {
      assertEquals(definition(outcome), forecast.crps(outcome), 1e-13 * (1 + Math.abs(outcome)));
    }
  }

  /** E|X − y| − E|X − X′|/2 over all pairs. */
  private static double definition(double outcome) {
    double sum = IntStream.range(0, WEIGHTS.length).mapToDouble(i -> WEIGHTS[i]).sum();
    double error = 0;
    double spread = 0;
    for (int i = 0; i < DRAWS.length; i++) {
      error += WEIGHTS[i] / sum * Math.abs(DRAWS[i] - outcome);
      for (int j = 0; j < DRAWS.length; j++) {
        spread += WEIGHTS[i] / sum * WEIGHTS[j] / sum * Math.abs(DRAWS[i] - DRAWS[j]);
      }
    }
    return error - spread / 2;
  }

  @Test
  void weights_countDraws() {
    Predictive weighted = Predictive.ofDraws(new double[] {1, 5, 9}, new double[] {1, 0, 3});
    Predictive repeated = Predictive.ofDraws(new double[] {9, 1, 9, 9});
    for (double outcome : new double[] {0, 1, 5, 9, 11}) {
      assertEquals(repeated.crps(outcome), weighted.crps(outcome), 1e-15);
      assertEquals(repeated.pit(outcome, 0.3), weighted.pit(outcome, 0.3), 1e-15);
    }
    assertEquals(repeated.median(), weighted.median(), 0);
  }

  /**
   * Straight lines miss a quantile function by the square of a step of probability, but for the
   * logarithm in the tails: four times as many quantiles, an error at least ten times smaller.
   */
  @Test
  void crpsOfQuantiles_goesToThatOfTheNormal() {
    for (double outcome : new double[] {-3, 0.3, 1, 5}) {
      double exact = Laws.normalCrps(1, 2, outcome);
      double coarse = Math.abs(normal(50).crps(outcome) - exact);
      double fine = Math.abs(normal(200).crps(outcome) - exact);
      assertTrue(fine < coarse / 10, coarse + " to " + fine);
      assertEquals(exact, normal(2000).crps(outcome), 3e-6);
    }
  }

  /**
   * Of an outcome beyond all quantiles 1 is integrated up to the first, in place of (1 − F)²: more
   * by less than twice the integral of F, of which the lines beside the tail give some back.
   */
  @Test
  void crpsBeyondAllQuantiles_isLargerByTheTail() {
    double z = Laws.normalQuantile(0.5 / 200);
    double tail = 2 * (Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) + z * 0.5 / 200);
    double more = normal(200).crps(-8) - Laws.normalCrps(1, 2, -8);
    assertTrue(more > tail && more < 2 * tail, more + " of " + tail);
  }

  private static Predictive normal(int quantiles) {
    return Laws.quantiles(quantiles, p -> 1 + 2 * Laws.normalQuantile(p));
  }

  /** Between quantiles at almost 0 and almost 1 the uniform law is exact: y³/3 + (1 − y)³/3. */
  @Test
  void crpsOfTwoQuantiles_isThatOfTheUniform() {
    double edge = 1e-9;
    Predictive uniform =
        Predictive.ofQuantiles(new double[] {edge, 1 - edge}, new double[] {edge, 1 - edge});
    for (double y : new double[] {0.01, 0.3, 0.5, 0.99}) {
      assertEquals((y * y * y + (1 - y) * (1 - y) * (1 - y)) / 3, uniform.crps(y), 1e-14);
      assertEquals(y, uniform.pit(y, 0.7), 1e-15);
    }
    assertEquals(1.0 / 3 + 2, uniform.crps(3), 2e-9);
  }

  /**
   * The mean over many samples of n normal draws is the normal's CRPS and 1/(n √π) more, within
   * four standard errors.
   */
  @Test
  void crpsOfDraws_isLargerByTheirMeanDistance() {
    SplittableRandom random = new SplittableRandom(11);
    int draws = 10;
    int samples = 20_000;
    double sum = 0;
    double squares = 0;
    for (int s = 0; s < samples; s++) {
      double[] sample = random.doubles(draws, 1e-300, 1).map(Laws::normalQuantile).toArray();
      double crps = Predictive.ofDraws(sample).crps(0.7);
      sum += crps;
      squares += crps * crps;
    }
    double mean = sum / samples;
    double error = Math.sqrt((squares / samples - mean * mean) / samples);
    double expected = Laws.normalCrps(0, 1, 0.7) + 1 / (draws * Math.sqrt(Math.PI));
    assertEquals(expected, mean, 4 * error);
    assertTrue(error < 0.003, "error " + error);
  }

  /** E|y − X| − E|X − X′|/2 of a mean of 1, cut at a horizon: integrals of exponentials. */
  @Test
  void crpsOfACensoredExponential_isItsIntegral() {
    Predictive exponential = Laws.quantiles(5000, Laws::exponentialQuantile);
    double horizon = 1.5;
    Predictive censored = exponential.censoredAt(horizon);
    for (double y : new double[] {0, 0.2, 1.1, 1.5}) {
      double below = y - 2 * -Math.expm1(-y) - Math.expm1(-2 * y) / 2;
      double above = (Math.exp(-2 * y) - Math.exp(-2 * horizon)) / 2;
      assertEquals(below + above, censored.crps(y), 1e-6);
    }
    assertEquals(horizon, censored.quantile(0.9), 0);
    assertEquals(exponential.quantile(0.6), censored.quantile(0.6), 1e-15);
  }

  @Test
  void drawsThatNeverGetThere_areCensoredFirst() {
    Predictive forecast =
        Predictive.ofDraws(new double[] {100, Double.POSITIVE_INFINITY, 200, 150});
    assertEquals(Double.POSITIVE_INFINITY, forecast.quantile(0.95), 0);
    assertThrows(IllegalStateException.class, () -> forecast.crps(120));
    assertThrows(IllegalArgumentException.class, () -> forecast.interval(0.9));
    Predictive censored = forecast.censoredAt(180);
    Predictive same = Predictive.ofDraws(new double[] {100, 180, 180, 150});
    assertEquals(same.crps(120), censored.crps(120), 1e-13);
    assertEquals(new Interval(0.9, 100, 180), censored.interval(0.9));
    assertEquals(0.5 + 0.25 * 0.5, same.pit(180, 0.25), 1e-15);
    assertEquals(same.pit(180, 0.25), censored.pit(180, 0.25), 1e-15);
  }

  @Test
  void quantileOfDraws_isTheLeastThatReachesItsProbability() {
    double[] draws = IntStream.rangeClosed(1, 600).mapToDouble(i -> i).toArray();
    Predictive forecast = Predictive.ofDraws(draws);
    assertEquals(new Interval(0.9, 30, 570), forecast.interval(0.9));
    assertEquals(1, forecast.quantile(0), 0);
    assertEquals(600, forecast.quantile(1), 0);
    assertEquals(300, forecast.median(), 0);
  }

  @Test
  void quantilesThatAreNotKnown_areRefused() {
    Predictive forecast =
        Predictive.ofQuantiles(new double[] {0.05, 0.5, 0.95}, new double[] {10, 20, 60});
    assertEquals(new Interval(0.9, 10, 60), forecast.interval(0.9));
    assertEquals(40, forecast.quantile(0.725), 1e-13);
    assertThrows(IllegalArgumentException.class, () -> forecast.quantile(0.01));
    assertThrows(IllegalArgumentException.class, () -> forecast.interval(0.95));
    assertEquals(0.05 * 0.4, forecast.pit(3, 0.4), 1e-15);
    assertEquals(0.05, forecast.pit(10, 0.4), 1e-15);
    assertEquals(0.95, forecast.pit(60, 0.4), 1e-15);
    assertEquals(0.05 + 0.95 * 0.4, forecast.censoredAt(8).pit(8, 0.4), 1e-15);
    assertEquals(0.95 + 0.05 * 0.4, forecast.pit(70, 0.4), 1e-15);
    Predictive censored = forecast.censoredAt(50);
    assertEquals(50, censored.quantile(0.99), 0);
    assertEquals(0.8375 + 0.1625 * 0.4, censored.pit(50, 0.4), 1e-14);
  }

  /**
   * Halves of the pinball losses of median and interval ends, over the number of levels and a half.
   */
  @Test
  void weightedIntervalScore_isAMeanOfPinballLosses() {
    Predictive forecast = normal(999);
    List<Double> levels = List.of(0.5, 0.8, 0.9);
    for (double outcome : new double[] {-9, 0, 1, 2.2, 8}) {
      double sum = 0;
      for (double p : new double[] {0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95}) {
        double quantile = forecast.quantile(p);
        sum += outcome < quantile ? (1 - p) * (quantile - outcome) : p * (outcome - quantile);
      }
      assertEquals(sum / 3.5, forecast.weightedIntervalScore(levels, outcome), 1e-12);
    }
  }

  @Test
  void weightedIntervalScore_ofManyLevelsIsTheCrps() {
    Predictive forecast = normal(4000);
    List<Double> levels = IntStream.range(1, 500).mapToObj(i -> i / 500.0).toList();
    for (double outcome : new double[] {-2, 1, 4}) {
      double score = forecast.weightedIntervalScore(levels, outcome);
      assertEquals(Laws.normalCrps(1, 2, outcome), score, 0.002);
    }
  }

  /** Where forecasts are right, PIT is even, horizons and coarse quantiles or not. */
  @Test
  void pit_isEvenUnderCensoring() {
    Predictive fine = Laws.quantiles(2000, Laws::exponentialQuantile).censoredAt(1.2);
    SplittableRandom random = new SplittableRandom(3);
    double[] pits = new double[5000];
    for (int i = 0; i < pits.length; i++) {
      double outcome = Math.min(1.2, Laws.exponentialQuantile(random.nextDouble()));
      pits[i] = fine.pit(outcome, random.nextDouble());
    }
    assertTrue(Uniformity.chiSquared(pits, 20) > 0.01);
    assertTrue(Uniformity.kolmogorovSmirnov(pits) > 0.01);
  }

  @Test
  void wrongArguments_areNamed() {
    assertMessage("draws must be at least 1, was 0", () -> Predictive.ofDraws(new double[0]));
    assertMessage(
        "weights must be as many as draws, 1, were 2",
        () -> Predictive.ofDraws(new double[1], new double[2]));
    assertMessage(
        "weights must be finite and at least 0, was -1.0",
        () -> Predictive.ofDraws(new double[1], new double[] {-1}));
    assertMessage(
        "sum of weights must be in (0.0, Infinity), was 0.0",
        () -> Predictive.ofDraws(new double[1], new double[1]));
    assertMessage(
        "draws must be in [-1.7976931348623157E308, Infinity], was NaN",
        () -> Predictive.ofDraws(new double[] {Double.NaN}));
    assertMessage(
        "probabilities must be in (0.5, 1.0), was 0.5",
        () -> Predictive.ofQuantiles(new double[] {0.5, 0.5}, new double[] {1, 2}));
    assertMessage(
        "quantiles must be in [2.0, 1.7976931348623157E308], was 1.0",
        () -> Predictive.ofQuantiles(new double[] {0.5, 0.6}, new double[] {2, 1}));
    assertMessage("outcome must be finite, was NaN", () -> Predictive.ofPoint(1).crps(Double.NaN));
    assertMessage("tie must be in [0.0, 1.0], was 1.5", () -> Predictive.ofPoint(1).pit(1, 1.5));
  }

  private static void assertMessage(String message, Runnable wrong) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, wrong::run).getMessage());
  }
}
