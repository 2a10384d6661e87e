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
}
