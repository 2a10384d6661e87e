package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PropertyCurveTest {

  @Test
  void polynomial_isInDegreesCelsius() {
    PropertyCurve curve = PropertyCurve.polynomial(270, 420, 2, 3, 5);
    assertEquals(2, curve.at(273.15), 1e-12);
    assertEquals(2 + 3 * 10 + 5 * 100, curve.at(283.15), 1e-9);
    assertEquals(270, curve.lowest());
    assertEquals(420, curve.highest());
    assertFalse(curve.isConstant());
  }

  @Test
  void integral_startsAtZeroCelsius() {
    PropertyCurve curve = PropertyCurve.polynomial(270, 420, 20, 3);
    assertEquals(0, curve.integral(273.15), 1e-12);
    assertEquals(20 * 10 + 1.5 * 100, curve.integral(283.15), 1e-9);
  }

  @Test
  void constantCurve_isConstant() {
    assertTrue(PropertyCurve.constant(0.5).isConstant());
    assertTrue(PropertyCurve.polynomial(270, 420, 0.5).isConstant());
  }

  @Test
  void coefficients_areCopied() {
    double[] coefficients = {20, 3};
    PropertyCurve curve = PropertyCurve.polynomial(270, 420, coefficients);
    coefficients[0] = 100;
    assertEquals(20, curve.at(273.15), 1e-12);
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "value must be finite and greater than 0, was 0.0", () -> PropertyCurve.constant(0));
    assertRefused(
        "highest must be in [300.00000000000006, 1.7976931348623157E308], was 300.0",
        () -> PropertyCurve.polynomial(300, 300, 1));
    assertRefused(
        "coefficients.length must be in [1, 16], was 0", () -> PropertyCurve.polynomial(270, 300));
    assertRefused(
        "value at the lowest temperature must be finite and greater than 0, was -1.0",
        () -> PropertyCurve.polynomial(273.15, 300, -1, 1));
    assertRefused(
        "value at the lowest temperature must be finite and greater than 0, was NaN",
        () -> PropertyCurve.polynomial(273.15, 300, 1, Double.NaN));
    assertRefused(
        "value at the highest temperature must be finite and greater than 0, was -9.0",
        () -> PropertyCurve.polynomial(273.15, 283.15, 1, -1));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
