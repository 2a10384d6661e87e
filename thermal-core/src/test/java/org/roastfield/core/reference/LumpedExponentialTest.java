package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LumpedExponentialTest {
  @ParameterizedTest
  @EnumSource
  void isTheLimitOfTheSeries_withErrorProportionalToBiotNumber(RadialMode mode) {
    double coarse = error(mode, 0.04);
    double middle = error(mode, 0.02);
    double fine = error(mode, 0.01);
    assertEquals(2, coarse / middle, 0.05);
    assertEquals(2, middle / fine, 0.03);
  }

  @Test
  void falls_atTheRateOfItsHeatBalance() {
    LumpedExponential cylinder = new LumpedExponential(1, 0.05);
    double rate = Differences.first(cylinder::temperature, 3, 0.01);
    assertEquals(-2 * 0.05 * cylinder.temperature(3), rate, 1e-10);
    assertEquals(1, cylinder.temperature(0));
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LumpedExponential(-1, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new LumpedExponential(0, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> new LumpedExponential(0, 0.1).temperature(-1));
  }

  // Compared where the lumped body has fallen to exp(−1).
  private static double error(RadialMode mode, double biotNumber) {
    double fourierNumber = 1 / ((mode.exponent() + 1) * biotNumber);
    double lumped = new LumpedExponential(mode.exponent(), biotNumber).temperature(fourierNumber);
    return RobinSeries.of(mode, biotNumber).mean(fourierNumber) - lumped;
  }
}
