package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class UniformityTest {

  @Test
  void counts_takeOneIntoTheLastBin() {
    double[] numbers = {0, 0.1, 0.25, 0.5, 0.99, 1};
    assertArrayEquals(new int[] {2, 1, 1, 2}, Uniformity.counts(numbers, 4));
  }

  /** Its tails hold no more than said, by a sum of binomial terms. */
  @Test
  void expectedCount_holdsAtLeastItsLevel() {
    assertEquals(new Interval(0.9, 1, 7), Uniformity.expectedCount(40, 10, 0.9));
    for (int numbers : new int[] {1, 7, 40, 400}) {
      Interval range = Uniformity.expectedCount(numbers, 10, 0.9);
      double inside = 0;
      double term = Math.pow(0.9, numbers);
      for (int k = 0; k <= numbers; k++) {
        inside += range.covers(k) ? term : 0;
        term *= (numbers - k) / (k + 1.0) / 9;
      }
      assertTrue(inside >= 0.9, numbers + ": " + inside);
    }
  }

  /** With two degrees of freedom the tail of χ² is an exponential. */
  @Test
  void chiSquaredOfThreeBins_isInClosedForm() {
    double[] numbers =
        DoubleStream.concat(
                DoubleStream.generate(() -> 0.1).limit(10),
                DoubleStream.concat(
                    DoubleStream.generate(() -> 0.5).limit(7),
                    DoubleStream.generate(() -> 0.9).limit(4)))
            .toArray();
    double statistic = (9.0 + 0 + 9.0) / 7;
    assertEquals(Math.exp(-statistic / 2), Uniformity.chiSquared(numbers, 3), 1e-13);
  }

  /** Of two numbers P(D ≥ d) is 2 (1 − d)² from one half on, and 1 − 2 (2d − 1/2)² below. */
  @Test
  void kolmogorovOfTwoNumbers_isInClosedForm() {
    assertEquals(2 * 0.3 * 0.3, Uniformity.kolmogorovSmirnov(new double[] {0.7, 0.8}), 1e-12);
    double d = 0.4;
    double expected = 1 - 2 * (2 * d - 0.5) * (2 * d - 0.5);
    assertEquals(expected, Uniformity.kolmogorovSmirnov(new double[] {0.4, 0.6}), 1e-12);
  }

  /**
   * Faults are seen as often as an independent computation found (ranks among 99 draws, 500 cooks,
   * 20 bins, p < 0.01), within four standard errors of 400 repetitions.
   */
  @Test
  void faults_areSeenAsOftenAsExpected() {
    assertPower(0.2, 1, 0.53, 0.92);
    assertPower(0, 0.8, 0.96, 0.55);
    assertPower(0, 1.25, 0.92, 0.52);
  }

  @Test
  void evenNumbers_raiseFewAlarms() {
    assertPower(0, 1, 0.01, 0.01);
  }

  private static void assertPower(
      double bias, double spread, double chiSquared, double kolmogorovSmirnov) {
    SplittableRandom random = new SplittableRandom(20);
    int repetitions = 400;
    int seenByOne = 0;
    int seenByOther = 0;
    for (int r = 0; r < repetitions; r++) {
      double[] ranks = random.doubles(500).map(p -> rank(p, bias, spread, random)).toArray();
      seenByOne += Uniformity.chiSquared(ranks, 20) < 0.01 ? 1 : 0;
      seenByOther += Uniformity.kolmogorovSmirnov(ranks) < 0.01 ? 1 : 0;
    }
    assertShare(chiSquared, seenByOne, repetitions);
    assertShare(kolmogorovSmirnov, seenByOther, repetitions);
  }

  /** Rank of a normal truth among 99 draws of a posterior with a fault, with random ties. */
  private static double rank(double p, double bias, double spread, SplittableRandom random) {
    double share = Laws.normalShare((Laws.normalQuantile(p) - bias) / spread);
    int below = 0;
    for (int i = 0; i < 99; i++) {
      below += random.nextDouble() < share ? 1 : 0;
    }
    return (below + random.nextDouble()) / 100;
  }

  /** Both shares are estimates, the expected one of at least as many repetitions. */
  private static void assertShare(double expected, int seen, int repetitions) {
    double error = Math.sqrt(2 * expected * (1 - expected) / repetitions);
    assertEquals(expected, (double) seen / repetitions, 4 * error);
  }

  @Test
  void tooFewNumbers_areRefused() {
    assertEquals(
        "numbers must be at least 50, was 49",
        assertThrows(
                IllegalArgumentException.class, () -> Uniformity.chiSquared(new double[49], 10))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Uniformity.counts(new double[] {Double.NaN}, 2));
    assertThrows(
        IllegalArgumentException.class, () -> Uniformity.kolmogorovSmirnov(new double[] {0, 1.1}));
  }

  @Test
  void holm_multipliesTheLeastByAllAndNeverFalls() {
    assertArrayEquals(
        new double[] {0.06, 0.03, 0.06, 0.02},
        Holm.adjusted(new double[] {0.03, 0.01, 0.04, 0.005}),
        1e-15);
    assertArrayEquals(new double[] {1, 1}, Holm.adjusted(new double[] {0.9, 0.7}), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> Holm.adjusted(new double[] {Double.NaN}));
  }
}
