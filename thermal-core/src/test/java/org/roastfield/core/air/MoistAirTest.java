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
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
