package org.roastfield.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.units.Temperatures;

class SaturationPressureTest {

  @Test
  void pressure_isThatOfTheReferenceEquationOverTheWholeRange() {
    for (double t = SaturationPressure.LOWEST; t <= SaturationPressure.HIGHEST; t += 0.25) {
      double exact = WagnerPruss.pressure(t);
      double temperature = t;
      assertEquals(exact, SaturationPressure.at(t), 3e-7 * exact, () -> "at " + temperature + " K");
    }
  }

  /** Steam tables: 2.339, 19.947 and 101.418 kPa. */
  @ParameterizedTest
  @CsvSource({"20, 2339", "60, 19947", "100, 101418"})
  void pressure_isThatOfTheSteamTables(double celsius, double pascals) {
    assertEquals(pascals, SaturationPressure.at(Temperatures.celsius(celsius)), 0.5);
  }

  @Test
  void slope_isThatOfTheLogarithm() {
    double h = 1e-3;
    for (double t = 270; t < 505; t += 5) {
      double ratio = SaturationPressure.at(t + h) / SaturationPressure.at(t - h);
      assertEquals(Math.log(ratio) / (2 * h), SaturationPressure.logSlope(t), 1e-8);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {430, 5000, 70_000, 101_325, 2.9e6})
  void boilingPoint_isWhereThePressureIsThatOfTheAir(double pressure) {
    double boiling = SaturationPressure.boilingPoint(pressure);
    assertEquals(pressure, SaturationPressure.at(boiling), 1e-9 * pressure);
  }

  @Test
  void water_boilsNearAHundredDegreesAtSeaLevel() {
    double boiling = SaturationPressure.boilingPoint(MoistAir.STANDARD_PRESSURE);
    assertEquals(99.974, Temperatures.toCelsius(boiling), 0.001);
  }

  @Test
  void temperaturesOutsideTheRange_areRefusedOrNoNumber() {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> SaturationPressure.at(600));
    assertEquals("temperature must be in [268.15, 508.15], was 600.0", refused.getMessage());
    assertTrue(Double.isNaN(SaturationPressure.orNaN(600)));
    assertTrue(Double.isNaN(SaturationPressure.orNaN(260)));
    assertTrue(Double.isNaN(SaturationPressure.orNaN(Double.NaN)));
    assertEquals(SaturationPressure.at(300), SaturationPressure.orNaN(300));
  }

  @Test
  void pressuresOutsideTheRange_areRefused() {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> SaturationPressure.boilingPoint(100));
    assertEquals("pressure must be in [425.0, 3000000.0], was 100.0", refused.getMessage());
  }
}
