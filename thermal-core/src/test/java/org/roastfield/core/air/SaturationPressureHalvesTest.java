package org.roastfield.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.junit.jupiter.api.Test;
import org.roastfield.core.support.UniformDraws;

/** The two halves of the kernel, which rows call one after the other, each against StrictMath. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class SaturationPressureHalvesTest {

  private static final double LOG_CENTRE = 10.5;
  private static final double MOST = 0.3;
  private static final int POINTS = 200_000;

  /**
   * First term that the polynomial of degree 8 leaves out, 0.3⁹/9!, as a share of the smallest e^y,
   * e^−0.3, and sixteen times that in the sixteenth power; round-off on top.
   */
  private static final double EXPONENTIAL_BOUND = 16 * 5.43e-11 / 0.7408 + 1e-14;

  @Test
  void scaledLogarithm_isThatOfTheReferenceEquationOverTheWholeRange() {
    for (int i = 0; i <= POINTS; i++) {
      assertLogarithm(at(i));
    }
  }

  @Test
  void scaledLogarithm_staysWhereTheSecondHalfIsMeant() {
    for (int i = 0; i <= POINTS; i++) {
      assertTrue(Math.abs(SaturationPressure.scaledLogarithm(at(i))) < MOST);
    }
  }

  @Test
  void fromScaledLogarithm_isTheExponentialOverTheWholeRange() {
    for (int i = 0; i <= POINTS; i++) {
      assertExponential(MOST * (2.0 * i / POINTS - 1));
    }
  }

  @Test
  void pressure_risesAndIsMadeOfTheHalves() {
    double last = 0;
    for (int i = 0; i <= POINTS; i++) {
      double pressure = SaturationPressure.at(at(i));
      double y = SaturationPressure.scaledLogarithm(at(i));
      assertEquals(SaturationPressure.fromScaledLogarithm(y), pressure);
      assertTrue(pressure > last);
      last = pressure;
    }
  }

  @Property
  void scaledLogarithm_isThatOfTheReferenceEquation(
      @ForAll
          @DoubleRange(min = SaturationPressure.LOWEST, max = SaturationPressure.HIGHEST)
          @Scale(9)
          double temperature) {
    assertLogarithm(temperature);
  }

  @Property
  void fromScaledLogarithm_isTheExponential(
      @ForAll @DoubleRange(min = -MOST, max = MOST) @Scale(12) double y) {
    assertExponential(y);
  }

  private static double at(int i) {
    double range = SaturationPressure.HIGHEST - SaturationPressure.LOWEST;
    return Math.min(SaturationPressure.LOWEST + range * i / POINTS, SaturationPressure.HIGHEST);
  }

  private static void assertLogarithm(double temperature) {
    double exact = StrictMath.log(WagnerPruss.pressure(temperature));
    double fitted = LOG_CENTRE + 16 * SaturationPressure.scaledLogarithm(temperature);
    assertEquals(exact, fitted, 3e-7, () -> "at " + temperature + " K");
  }

  private static void assertExponential(double y) {
    double exact = StrictMath.exp(LOG_CENTRE + 16 * y);
    double error = Math.abs(SaturationPressure.fromScaledLogarithm(y) / exact - 1);
    assertTrue(error < EXPONENTIAL_BOUND, () -> "off by " + error + " at y = " + y);
  }
}
