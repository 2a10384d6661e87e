package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class PropertyCurvePropertiesTest {

  private static final double LOWEST = 270;
  private static final double HIGHEST = 420;

  @Property
  void curve_isTheSlopeOfItsIntegral(
      @ForAll @DoubleRange(min = 200, max = 500) double temperature,
      @ForAll @DoubleRange(min = -1, max = 1) double bend) {
    PropertyCurve curve = PropertyCurve.polynomial(LOWEST, HIGHEST, 3, 0.01, 1e-4 * bend, 1e-7);
    double h = 1e-3;
    double slope = (curve.integral(temperature + h) - curve.integral(temperature - h)) / (2 * h);
    assertEquals(curve.at(temperature), slope, 1e-4);
  }

  @Property
  void outsideItsRange_theCurveIsHeld(@ForAll @DoubleRange(min = 0, max = 200) double beyond) {
    PropertyCurve curve = PropertyCurve.polynomial(LOWEST, HIGHEST, 3, 0.01, 1e-4);
    assertEquals(curve.at(HIGHEST), curve.at(HIGHEST + beyond));
    assertEquals(curve.at(LOWEST), curve.at(LOWEST - beyond));
    assertEquals(
        curve.integral(HIGHEST) + beyond * curve.at(HIGHEST),
        curve.integral(HIGHEST + beyond),
        1e-9);
    assertEquals(
        curve.integral(LOWEST) - beyond * curve.at(LOWEST), curve.integral(LOWEST - beyond), 1e-9);
  }

  @Property
  void constantCurve_integratesToARectangle(
      @ForAll @DoubleRange(min = 0.1, max = 5000) double value,
      @ForAll @DoubleRange(min = 0, max = 600) double temperature) {
    PropertyCurve curve = PropertyCurve.constant(value);
    assertEquals(value, curve.at(temperature));
    assertEquals(value * (temperature - 273.15), curve.integral(temperature), 1e-9 * value * 600);
  }
}
