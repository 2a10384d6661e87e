package org.roastfield.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.units.Temperatures;

class MoistAirTest {

  /** Table of the international standard atmosphere. */
  @ParameterizedTest
  @CsvSource({"0, 101325", "1000, 89875", "2500, 74683", "5000, 54020"})
  void pressure_fallsWithAltitudeAsInTheStandardAtmosphere(double altitude, double pascals) {
    assertEquals(pascals, MoistAir.pressureAtAltitude(altitude), 20);
  }

  @Test
  void vapourPressure_isTheShareOfTheMoles() {
    assertEquals(0, MoistAir.vapourPressure(0, 101_325));
    double vapour = MoistAir.vapourPressure(0.01, 101_325);
    assertEquals(0.01, 0.62198 * vapour / (101_325 - vapour), 1e-12);
  }

  /** Steam tables; the straight line departs from them above 80 °C. */
  @ParameterizedTest
  @CsvSource({
    "0, 2500900, 0.003",
    "40, 2406000, 0.003",
    "80, 2308000, 0.003",
    "100, 2256500, 0.004",
    "110, 2229700, 0.006"
  })
  void latentHeat_isThatOfTheSteamTables(double celsius, double joules, double relative) {
    assertEquals(joules, MoistAir.latentHeat(Temperatures.celsius(celsius)), relative * joules);
  }

  @Test
  void humidityRatio_undoesTheVapourPressure() {
    double vapour = MoistAir.vapourPressure(0.035, 84_556);
    assertEquals(0.035, MoistAir.humidityRatio(vapour, 84_556), 1e-15);
  }

  @Test
  void relativeHumidity_isTheShareOfTheSaturationPressure() {
    double room = Temperatures.celsius(20);
    double vapour = MoistAir.vapourPressureAtHumidity(0.5, room);
    assertEquals(2339 / 2.0, vapour, 0.5);
    assertEquals(0.5, MoistAir.relativeHumidity(vapour, room), 1e-15);
  }

  /** Steam table: 1228 Pa at 10 °C, 12 351 Pa at 50 °C. */
  @ParameterizedTest
  @CsvSource({"1228, 10", "12351, 50"})
  void dewPoint_isWhereTheVapourIsSaturated(double vapour, double celsius) {
    assertEquals(celsius, Temperatures.toCelsius(MoistAir.dewPoint(vapour)), 0.01);
  }

  /** Psychrometric chart at sea level: 30 °C, 50 %: 22.0 °C; 40 °C, 20 %: 22.0 °C. */
  @ParameterizedTest
  @CsvSource({"30, 0.5, 22.0", "40, 0.2, 22.0", "20, 0.5, 13.8", "15, 0.9, 14.0"})
  void wetBulb_isThatOfTheChart(double celsius, double humidity, double expected) {
    double air = Temperatures.celsius(celsius);
    double vapour = MoistAir.vapourPressureAtHumidity(humidity, air);
    double ratio = MoistAir.humidityRatio(vapour, MoistAir.STANDARD_PRESSURE);
    double wetBulb = MoistAir.wetBulb(air, ratio, MoistAir.STANDARD_PRESSURE);
    assertEquals(expected, Temperatures.toCelsius(wetBulb), 0.05);
  }

  /** Heat capacity of the table of air integrated from wet bulb to air, off-line. */
  @ParameterizedTest
  @CsvSource({"110, 0.015, 38.810, 0.04", "110, 0.06, 50.360, 0.03", "300, 0.015, 56.279, 0.25"})
  void wetBulb_inHotAirIsALittleLowForItsConstantHeatCapacity(
      double celsius, double ratio, double exact, double allowed) {
    double air = Temperatures.celsius(celsius);
    double wetBulb = MoistAir.wetBulb(air, ratio, MoistAir.STANDARD_PRESSURE);
    assertEquals(exact, Temperatures.toCelsius(wetBulb), allowed);
  }

  /** 95.0 °C at 1500 m, 90.0 °C at 3000 m: tables of boiling points over altitude. */
  @ParameterizedTest
  @CsvSource({"0, 99.97", "1500, 95.0", "3000, 90.0"})
  void water_boilsColderInTheMountains(double altitude, double celsius) {
    double pressure = MoistAir.pressureAtAltitude(altitude);
    double boiling = Temperatures.toCelsius(SaturationPressure.boilingPoint(pressure));
    assertEquals(celsius, boiling, 0.1);
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "altitude must be in [-500.0, 9000.0], was 9001.0",
        () -> MoistAir.pressureAtAltitude(9001));
    assertRefused(
        "humidityRatio must be finite and at least 0, was -0.01",
        () -> MoistAir.vapourPressure(-0.01, 101_325));
    assertRefused(
        "pressure must be finite and greater than 0, was 0.0",
        () -> MoistAir.vapourPressure(0.01, 0));
    assertRefused(
        "vapourPressure must be below the pressure 101325.0, was 101325.0",
        () -> MoistAir.humidityRatio(101_325, 101_325));
    assertRefused(
        "vapourPressure must be in [425.0, 3000000.0], was 400.0", () -> MoistAir.dewPoint(400));
    assertRefused(
        "relativeHumidity must be in [0.0, 1.0], was 1.2",
        () -> MoistAir.vapourPressureAtHumidity(1.2, 300));
    assertRefused(
        "temperature must be in [268.15, 573.15], was 600.0",
        () -> MoistAir.wetBulb(600, 0.01, 101_325));
    assertRefused(
        "humidityRatio must be at most that of saturated air, was 0.05",
        () -> MoistAir.wetBulb(293.15, 0.05, 101_325));
    assertRefused(
        "humidityRatio must be one with a wet bulb of at least −5 °C, was 0.0",
        () -> MoistAir.wetBulb(273.15, 0, 101_325));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
