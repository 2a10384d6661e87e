package org.roastfield.lab.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;

/**
 * Reference draws against closed forms. Bounds are four standard errors as the draws themselves
 * tell them, and those are bounded in turn; that they are right is tested over many runs.
 */
class TemperedSamplerTest {

  private static double first(double[] z) {
    return z[0];
  }

  private static double second(double[] z) {
    return z[1];
  }

  private static void assertMean(
      double expected, ReferenceDraws draws, ToDoubleFunction<double[]> quantity, double error) {
    double own = draws.standardError(quantity);
    assertTrue(own < error, () -> "standard error " + own);
    assertEquals(expected, draws.mean(quantity), 4 * own);
  }

  @Test
  void correlatedNormal_hasItsMomentsAndIntegral() {
    ReferenceDraws draws =
        TemperedSampler.standard()
            .sample(Densities.wide(5), Densities::normal, new SplittableRandom(1));
    assertMean(1, draws, TemperedSamplerTest::first, 0.06);
    assertMean(-2, draws, TemperedSamplerTest::second, 0.015);
    assertMean(4, draws, z -> (z[0] - 1) * (z[0] - 1), 0.16);
    assertMean(0.25, draws, z -> (z[1] + 2) * (z[1] + 2), 0.01);
    assertMean(0.8, draws, z -> (z[0] - 1) * (z[1] + 2), 0.04);
    assertEquals(Math.log(2 * Math.PI * 0.6), draws.logEvidence(), 0.25);
    assertEquals(1, draws.temperatures().get(draws.temperatures().size() - 1));
  }

  @Test
  void bentDensity_hasItsMomentsAndIntegral() {
    ReferenceDraws draws =
        TemperedSampler.standard()
            .sample(Densities.wide(5), Densities::bent, new SplittableRandom(2));
    assertMean(0, draws, TemperedSamplerTest::first, 0.04);
    assertMean(1, draws, z -> z[0] * z[0], 0.06);
    assertMean(0.5, draws, TemperedSamplerTest::second, 0.04);
    assertMean(1, draws, z -> Math.pow(z[1] - 0.5 * z[0] * z[0], 2), 0.06);
    assertEquals(Math.log(2 * Math.PI), draws.logEvidence(), 0.25);
  }

  /** Errors before the last temperature are seen between runs only. */
  @Test
  void twoPeaks_haveTheirSharesOverRuns() {
    int runs = 30;
    double[] left = new double[runs];
    double[] evidence = new double[runs];
    for (int r = 0; r < runs; r++) {
      ReferenceDraws draws =
          TemperedSampler.of(32, 32)
              .sample(Densities.wide(5), Densities::twoPeaks, new SplittableRandom(100 + r));
      left[r] = draws.mean(z -> z[0] < 0 ? 1 : 0);
      evidence[r] = Math.exp(draws.logEvidence());
    }
    assertMean(0.3, left, 0.03);
    assertMean(1, evidence, 0.06);
  }

  private static void assertMean(double expected, double[] values, double error) {
    double mean = mean(values);
    double own = deviation(values) / Math.sqrt(values.length);
    assertTrue(own < error, () -> "standard error " + own);
    assertEquals(expected, mean, 4 * own);
  }

  @Test
  void standardErrors_areAsLargeAsRunsDiffer() {
    int runs = 150;
    double[] means = new double[runs];
    double[] errors = new double[runs];
    for (int r = 0; r < runs; r++) {
      ReferenceDraws draws =
          TemperedSampler.of(32, 32)
              .sample(Densities.wide(3), Densities::bent, new SplittableRandom(1000 + r));
      means[r] = draws.mean(TemperedSamplerTest::first);
      errors[r] = draws.standardError(TemperedSamplerTest::first);
    }
    // A deviation of 150 values is known to 6 %.
    assertEquals(1, mean(errors) / deviation(means), 0.24);
    assertEquals(0, mean(means), 4 * deviation(means) / Math.sqrt(runs));
  }

  @Test
  void bounds_cutThePriorAndAreNeverCrossed() {
    Prior prior = Densities.within(2, 1.5);
    LogDensity guarded =
        z -> {
          assertTrue(Math.abs(z[0]) <= 1.5 && Math.abs(z[1]) <= 1.5);
          return Densities.logPrior(2, z);
        };
    ReferenceDraws draws =
        TemperedSampler.standard().sample(prior, guarded, new SplittableRandom(3));
    // A normal of spread 2 cut off at 0.75 spreads: 4 (1 − 2 · 0.75 φ(0.75)/(2 Φ(0.75) − 1)).
    double variance = 4 * (1 - 1.5 * 0.30113743215480443 / 0.5467452952462635);
    assertMean(variance, draws, z -> z[0] * z[0], 0.02);
    assertMean(0, draws, TemperedSamplerTest::first, 0.03);
    // The density is the normal one, of which the bounds leave that share in both directions.
    assertEquals(2 * Math.log(0.5467452952462635), draws.logEvidence(), 1e-12);
  }

  @Test
  void regionWithoutDensity_isLeftOutAndCountsInTheEvidence() {
    LogDensity half = z -> z[0] < 0 ? Double.NEGATIVE_INFINITY : Densities.logPrior(2, z);
    ReferenceDraws draws =
        TemperedSampler.standard().sample(Densities.wide(2), half, new SplittableRandom(4));
    assertMean(2 * Math.sqrt(2 / Math.PI), draws, TemperedSamplerTest::first, 0.04);
    assertEquals(0, draws.mean(z -> z[0] < 0 ? 1 : 0));
    // Share of about 2048 draws: known to 1.1 %.
    assertEquals(0.5, Math.exp(draws.logEvidence()), 0.045);
  }

  @Test
  void narrowPosterior_isReachedThroughManyTemperatures() {
    double spread = 1e-4;
    LogDensity narrow = z -> -0.5 * (Math.pow(z[0] - 3, 2) + z[1] * z[1]) / (spread * spread);
    ReferenceDraws draws =
        TemperedSampler.standard().sample(Densities.wide(2), narrow, new SplittableRandom(5));
    assertMean(3, draws, TemperedSamplerTest::first, 0.05 * spread);
    assertEquals(spread, draws.spread(TemperedSamplerTest::first), 0.1 * spread);
    List<Double> temperatures = draws.temperatures();
    for (int t = 1; t < temperatures.size(); t++) {
      assertTrue(temperatures.get(t) > temperatures.get(t - 1));
    }
    // Each halving of the effective size takes a factor of four or so off the volume.
    assertTrue(temperatures.size() > 8, temperatures::toString);
  }

  @Test
  void evenDraws_haveTheMeanAndAreNearlyIndependent() {
    ReferenceDraws draws =
        TemperedSampler.standard()
            .sample(Densities.wide(3), Densities::bent, new SplittableRandom(6));
    double[][] even = draws.evenly(512);
    double[] first = new double[even.length];
    double product = 0;
    for (int i = 0; i < even.length; i++) {
      first[i] = even[i][0];
      product += i == 0 ? 0 : even[i][0] * even[i - 1][0];
    }
    assertEquals(0, mean(first), 4 / Math.sqrt(even.length));
    assertEquals(0, product / even.length, 4 / Math.sqrt(even.length));
  }

  @Test
  void draws_areTheSameForASeed() {
    ReferenceDraws first = small(7);
    ReferenceDraws second = small(7);
    assertEquals(first.size(), second.size());
    for (int i = 0; i < first.size(); i++) {
      assertArrayEquals(first.draw(i), second.draw(i), 0.0);
    }
    assertEquals(first.logEvidence(), second.logEvidence());
    assertTrue(small(8).logEvidence() != first.logEvidence());
  }

  private static ReferenceDraws small(long seed) {
    return TemperedSampler.of(10, 10)
        .sample(Densities.wide(3), Densities::bent, new SplittableRandom(seed));
  }

  @Test
  void densityThatIsNotANumber_isRefused() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                TemperedSampler.standard()
                    .sample(Densities.wide(3), z -> Double.NaN, new SplittableRandom(9)));
    assertTrue(
        String.valueOf(thrown.getMessage()).startsWith("density must be a number"),
        thrown::toString);
  }

  @Test
  void densityNowhere_isToldApart() {
    assertThrows(
        IllegalStateException.class,
        () ->
            TemperedSampler.of(10, 2)
                .sample(
                    Densities.wide(3), z -> Double.NEGATIVE_INFINITY, new SplittableRandom(10)));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double deviation(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length - 1));
  }
}
