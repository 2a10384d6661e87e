package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.roastfield.core.surface.Signal;

/** Paths of the drift against its own moments: 4000 of them, bounds of four standard errors. */
class DriftTest {

  private static final int PATHS = 4000;
  private static final Drift DRIFT = new Drift(8, 2100);

  @Test
  void paths_haveTheMomentsOfTheProcess() {
    Random random = new Random(8);
    double square = 0;
    double product = 0;
    double meanSquare = 0;
    for (int p = 0; p < PATHS; p++) {
      Signal path = DRIFT.path(0, 8400, random);
      square += path.at(4200) * path.at(4200) / PATHS;
      product += path.at(2100) * path.at(4200) / PATHS;
      double mean = 0;
      for (int k = 0; k < 400; k++) {
        mean += path.at(21 * (k + 0.5)) / 400;
      }
      meanSquare += mean * mean / PATHS;
    }
    double error = 4 * Math.sqrt(2.0 / PATHS);
    assertEquals(64, square, 64 * error);
    assertEquals(64 * StrictMath.exp(-1), product, 64 * error);
    double expected = DRIFT.deviationOfMean(8400) * DRIFT.deviationOfMean(8400);
    assertEquals(expected, meanSquare, expected * error);
  }

  @Test
  void meanOverALongTime_driftsLittle() {
    assertEquals(8, DRIFT.deviationOfMean(1e-3), 1e-5);
    double long10 = DRIFT.deviationOfMean(2100 * 1e4);
    assertEquals(8 * Math.sqrt(2e-4), long10, 1e-4 * long10);
    assertEquals(DRIFT.deviationOfMean(0.2099), DRIFT.deviationOfMean(0.2101), 1e-6);
  }

  @Test
  void samples_areAnEighthOfTheMemoryApart() {
    assertEquals(4 * 2100 / 8.0, DRIFT.path(0, 100, new Random(1)).shortestPeriod());
  }
}
