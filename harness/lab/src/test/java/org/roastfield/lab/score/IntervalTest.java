package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class IntervalTest {

  private static final Interval INTERVAL = new Interval(0.8, 10, 14);

  @Test
  void score_isWidthAndTenTimesTheDistanceOutside() {
    assertEquals(4, INTERVAL.score(10), 0);
    assertEquals(4, INTERVAL.score(12), 0);
    assertEquals(4 + 10 * 2.5, INTERVAL.score(16.5), 1e-12);
    assertEquals(4 + 10 * 1.0, INTERVAL.score(9), 1e-12);
  }

  @Test
  void ends_areCovered() {
    assertTrue(INTERVAL.covers(10) && INTERVAL.covers(14));
    assertFalse(INTERVAL.covers(Math.nextDown(10.0)) || INTERVAL.covers(Math.nextUp(14.0)));
    assertFalse(INTERVAL.covers(Double.NaN));
  }

  /** Of outcomes even in [0, 1] the mean score is u − l + (l² + (1 − u)²)/α, least at l = α/2. */
  @Test
  void meanScore_isItsIntegralAndLeastForTheTrueQuantiles() {
    double least = mean(new Interval(0.8, 0.1, 0.9));
    for (double low : new double[] {0, 0.05, 0.15, 0.3}) {
      for (double high : new double[] {0.6, 0.85, 0.95, 1}) {
        double mean = mean(new Interval(0.8, low, high));
        double integral = high - low + (low * low + (1 - high) * (1 - high)) / 0.2;
        assertEquals(integral, mean, 1e-7);
        assertTrue(mean > least, low + " to " + high);
      }
    }
  }

  private static double mean(Interval interval) {
    int n = 10_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += interval.score((i + 0.5) / n);
    }
    return sum / n;
  }

  @Test
  void wrongEnds_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Interval(0.9, 2, 1));
    assertThrows(IllegalArgumentException.class, () -> new Interval(1, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> new Interval(0.9, Double.NaN, 2));
    assertEquals(
        "high must be finite, was Infinity",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Interval(0.9, 1, Double.POSITIVE_INFINITY))
            .getMessage());
  }
}
