package org.roastfield.lab.synthetic;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Bounds are four standard errors of what is estimated, so that a right generator passes whatever
 * the seed.
 */
class NoiseTest {

  private static final int COUNT = 200_000;

  @Test
  void normal_hasMeanZeroAndDeviationOne() {
    Noise noise = Noise.ofSeed(7);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < COUNT; i++) {
      double value = noise.normal();
      sum += value;
      squares += value * value;
    }
    assertEquals(0, sum / COUNT, 4 / Math.sqrt(COUNT));
    assertEquals(1, squares / COUNT, 4 * Math.sqrt(2.0 / COUNT));
  }

  @Test
  void exponential_hasItsMean() {
    Noise noise = Noise.ofSeed(7);
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += noise.exponential(5);
    }
    assertEquals(5, sum / COUNT, 4 * 5 / Math.sqrt(COUNT));
  }

  /**
   * Lag of one correlation time: correlation 1/e; the errors of one value in ten are nearly
   * independent.
   */
  @Test
  void correlated_hasItsDeviationAndCorrelation() {
    double[] values = Noise.ofSeed(7).correlated(COUNT, 60, 3, 600);
    double squares = 0;
    double products = 0;
    for (int i = 0; i + 10 < COUNT; i++) {
      squares += values[i] * values[i];
      products += values[i] * values[i + 10];
    }
    double independent = COUNT / 10.0;
    assertEquals(9, squares / COUNT, 4 * 9 * Math.sqrt(2 / independent));
    assertEquals(Math.exp(-1), products / squares, 4 / Math.sqrt(independent));
  }

  @Test
  void sameSeed_givesTheSameNumbers() {
    assertArrayEquals(
        Noise.ofSeed(3).correlated(50, 1, 1, 10), Noise.ofSeed(3).correlated(50, 1, 1, 10));
  }

  /** Two bounds at equal distances leave the mean where it is, and nothing beyond them. */
  @Test
  void boundedNormal_isTruncated() {
    Noise noise = Noise.ofSeed(7);
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      double value = noise.normal(2, 1, 1, 3);
      assertEquals(2, value, 1);
      sum += value;
    }
    assertEquals(2, sum / COUNT, 4 / Math.sqrt(COUNT));
  }

  @Test
  void logNormal_hasItsMedianAndSpread() {
    Noise noise = Noise.ofSeed(7);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < COUNT; i++) {
      double logarithm = Math.log(noise.logNormal(5, 0.3, 5e-9, 5e9));
      sum += logarithm;
      squares += (logarithm - Math.log(5)) * (logarithm - Math.log(5));
    }
    assertEquals(Math.log(5), sum / COUNT, 4 * 0.3 / Math.sqrt(COUNT));
    assertEquals(0.09, squares / COUNT, 4 * 0.09 * Math.sqrt(2.0 / COUNT));
  }

  /** What one stream used does not show in another; streams and neighbouring seeds do not meet. */
  @Test
  void streams_areApart() {
    double[] firsts = new double[400];
    for (int i = 0; i < firsts.length; i++) {
      firsts[i] = Noise.ofSeed(i / 4, i % 4).uniform();
    }
    assertEquals(firsts.length, java.util.Arrays.stream(firsts).distinct().count());
    assertEquals(Noise.ofSeed(3, 2).uniform(), Noise.ofSeed(3, 2).uniform());
  }
}
