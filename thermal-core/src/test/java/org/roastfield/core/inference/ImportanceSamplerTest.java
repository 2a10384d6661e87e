package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ImportanceSamplerTest {

  private static final double[][] UNIT = {{1, 0}, {0, 1}};

  /** A normal with mean (1, −2), variances 4 and 0.25, correlation 0.8. */
  private static double normal(double[] z) {
    double a = (z[0] - 1) / 2;
    double b = (z[1] + 2) / 0.5;
    return -0.5 * (a * a - 1.6 * a * b + b * b) / 0.36;
  }

  /** A bent one: the first is standard normal, the second normal around half its square. */
  private static double bent(double[] z) {
    double b = z[1] - 0.5 * z[0] * z[0];
    return -0.5 * (z[0] * z[0] + b * b);
  }

  @Test
  void momentsOfANormal_areFoundFromAFarStart() {
    WeightedDraws draws =
        ImportanceSampler.of(5, 2000)
            .sample(
                new double[] {0, 0}, UNIT, ImportanceSamplerTest::normal, new SplittableRandom(1));
    assertTrue(draws.isReliable());
    assertArrayEquals(new double[] {1, -2}, draws.mean(), 0.08);
    assertEquals(4, draws.covariance()[0][0], 0.35);
    assertEquals(0.25, draws.covariance()[1][1], 0.02);
    assertEquals(0.8, draws.covariance()[0][1], 0.08);
  }

  @Test
  void momentsOfABentDensity_areFound() {
    WeightedDraws draws =
        ImportanceSampler.of(5, 4000)
            .sample(
                new double[] {0, 0}, UNIT, ImportanceSamplerTest::bent, new SplittableRandom(2));
    assertArrayEquals(new double[] {0, 0.5}, draws.mean(), 0.06);
    assertEquals(1, draws.covariance()[0][0], 0.08);
    assertEquals(1.5, draws.covariance()[1][1], 0.15);
  }

  @Test
  void draws_areTheSameForASeed() {
    WeightedDraws first = draws(5);
    WeightedDraws second = draws(5);
    for (int i = 0; i < first.size(); i++) {
      assertArrayEquals(first.draw(i), second.draw(i), 0.0);
      assertEquals(first.weight(i), second.weight(i), 0.0);
    }
  }

  private static WeightedDraws draws(long seed) {
    return ImportanceSampler.standard()
        .sample(new double[] {0, 0}, UNIT, ImportanceSamplerTest::bent, new SplittableRandom(seed));
  }

  @Test
  void resampling_keepsTheMean() {
    WeightedDraws draws = draws(7);
    double[][] equal = draws.resampled(20_000, new SplittableRandom(8));
    double sum = 0;
    for (double[] each : equal) {
      sum += each[1];
    }
    assertEquals(draws.mean()[1], sum / equal.length, 2e-3);
  }

  @Test
  void densityFarFromTheDraws_isNotCalledReliable() {
    WeightedDraws draws =
        ImportanceSampler.of(1, 200)
            .sample(
                new double[] {0, 0},
                new double[][] {{1e-2, 0}, {0, 1e-2}},
                ImportanceSamplerTest::normal,
                new SplittableRandom(4));
    assertTrue(!draws.isReliable(), () -> "tail shape " + draws.tailShape());
  }

  @Test
  void tailShape_isFoundFromExactExcesses() {
    SplittableRandom random = new SplittableRandom(9);
    for (double shape : new double[] {0.2, 0.5, 0.9}) {
      double[] excess = new double[20_000];
      for (int i = 0; i < excess.length; i++) {
        excess[i] = (Math.pow(1 - random.nextDouble(), -shape) - 1) / shape;
      }
      java.util.Arrays.sort(excess);
      assertEquals(shape, ParetoTail.fitted(excess), 0.03);
    }
  }
}
