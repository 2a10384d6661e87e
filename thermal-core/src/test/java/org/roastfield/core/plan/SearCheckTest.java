package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a reading at the end of the sear is worth beside time, on draws whose law is known. */
class SearCheckTest {

  private static final int DRAWS = 4000;

  /**
   * Cores that follow the duration by 1 K for its standard deviation, the reading by another, and
   * something of their own of 0.3 K: a deviation of 4000 draws is known to about 2 %.
   */
  private static SearCheck of(double byTime, double byReading) {
    SplittableRandom random = new SplittableRandom(3);
    double[] cores = new double[DRAWS];
    double[] durations = new double[DRAWS];
    double[] readings = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double slow = random.nextGaussian();
      double warm = random.nextGaussian();
      durations[i] = 9000 + 1200 * slow;
      readings[i] = 333 + 2 * warm;
      cores[i] = 335 + byTime * slow + byReading * warm + 0.3 * random.nextGaussian();
    }
    return SearCheck.of(cores, durations, readings);
  }

  @Test
  void spreadsAreThoseOfWhatIsLeft() {
    SearCheck check = of(1, 0.5);
    assertEquals(Math.sqrt(1 + 0.25 + 0.09), check.withoutLooking(), 0.03);
    assertEquals(Math.sqrt(0.25 + 0.09), check.byTime(), 0.015);
    assertEquals(Math.sqrt(1 + 0.09), check.byReading(), 0.025);
  }

  @Test
  void readingThatSaysLessThanTime_isAPlausibilityCheck() {
    assertFalse(of(1, 0.5).readingTellsMore());
    assertTrue(of(0.5, 1).readingTellsMore());
    assertFalse(of(0, 0).readingTellsMore());
  }
}
