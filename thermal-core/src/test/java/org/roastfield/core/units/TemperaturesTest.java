package org.roastfield.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperaturesTest {

  @ParameterizedTest
  @CsvSource({"-273.15, 0", "0, 273.15", "57, 330.15", "100, 373.15"})
  void celsius_isKelvinShifted(double celsius, double kelvin) {
    assertEquals(kelvin, Temperatures.celsius(celsius), 1e-12);
    assertEquals(celsius, Temperatures.toCelsius(kelvin), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"-459.67, 0", "32, 273.15", "212, 373.15", "-40, 233.15", "145, 335.927777777778"})
  void fahrenheit_isKelvinScaledAndShifted(double fahrenheit, double kelvin) {
    assertEquals(kelvin, Temperatures.fahrenheit(fahrenheit), 1e-12);
    assertEquals(fahrenheit, Temperatures.toFahrenheit(kelvin), 1e-11);
  }

  @Test
  void fortyBelow_isTheSameOnBothScales() {
    assertEquals(Temperatures.celsius(-40), Temperatures.fahrenheit(-40), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-273.16, -1e9, Double.NaN, Double.POSITIVE_INFINITY})
  void belowAbsoluteZeroOrNoNumber_isRefusedInCelsius(double value) {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> Temperatures.celsius(value));
    assertEquals(
        "degreesCelsius must be in [-273.15, 1.7976931348623157E308], was " + value,
        refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-459.68, Double.NaN})
  void belowAbsoluteZeroOrNoNumber_isRefusedInFahrenheit(double value) {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> Temperatures.fahrenheit(value));
    assertEquals(
        "degreesFahrenheit must be in [-459.67, 1.7976931348623157E308], was " + value,
        refused.getMessage());
  }
}
