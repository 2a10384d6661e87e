package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TemperatureHistoryTest {

  private static final TemperatureHistory HILL =
      TemperatureHistory.through(
          new double[] {0, 100, 200, 300, 500}, new double[] {300, 340, 330, 345, 305});

  @Test
  void readings_areThoseOfTheStraightPieces() {
    assertEquals(345, HILL.highest());
    assertEquals(75, HILL.firstRise(330).orElseThrow(), 1e-9);
    assertTrue(HILL.firstRise(346).isEmpty());
    assertEquals(400, HILL.fromWarmest().firstFall(325).orElseThrow(), 1e-9);
    assertEquals(50 + 75, HILL.timeBetween(300, 320), 1e-9);
    assertEquals(500, HILL.timeBetween(0, 400), 1e-9);
    assertEquals(400 - 62.5, HILL.longestAbove(325), 1e-9);
  }

  @Test
  void heldFor_isTheHighestThatLastsSoLong() {
    for (double duration : new double[] {0, 10, 30, 120, 400, 500}) {
      double held = HILL.heldFor(duration);
      assertTrue(HILL.longestAbove(held - 1e-6) >= duration);
      assertTrue(HILL.longestAbove(held + 1e-6) < duration || duration == 0);
    }
    assertEquals(300, HILL.heldFor(500), 1e-6);
    assertEquals(345, HILL.heldFor(0));
  }

  @Test
  void wrongKnots_areRefused() {
    double[] three = {0, 1, 1};
    assertThrows(
        IllegalArgumentException.class,
        () -> TemperatureHistory.through(three, new double[] {300, 300, 300}));
    assertThrows(
        IllegalArgumentException.class,
        () -> TemperatureHistory.through(new double[] {0, 1}, new double[] {300}));
    assertThrows(
        IllegalArgumentException.class,
        () -> TemperatureHistory.through(new double[] {0, 1}, new double[] {300, Double.NaN}));
  }
}
