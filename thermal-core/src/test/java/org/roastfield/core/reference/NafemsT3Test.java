package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class NafemsT3Test {
  private static final JsonNode FILE = ReferenceFiles.json("/reference/nafems_t3.json");

  @Test
  void constants_areThoseOfTheFile() {
    assertEquals(FILE.at("/geometry/length_m").doubleValue(), NafemsT3.LENGTH_METRES);
    assertEquals(FILE.at("/properties/k_W_mK").doubleValue(), NafemsT3.CONDUCTIVITY);
    assertEquals(FILE.at("/properties/cp_J_kgK").doubleValue(), NafemsT3.SPECIFIC_HEAT_CAPACITY);
    assertEquals(FILE.at("/properties/rho_kg_m3").doubleValue(), NafemsT3.DENSITY);
    assertEquals(FILE.at("/initial_C").doubleValue(), NafemsT3.START_CELSIUS);
    assertEquals("T = 0 C", FILE.at("/bc/x=0").textValue());
    assertEquals("T = 100*sin(pi*t/40) C, t in s", FILE.at("/bc/x=0.1 m").textValue());
    assertEquals(FILE.at("/target/x_m").doubleValue(), NafemsT3.TARGET_DISTANCE_METRES);
    assertEquals(FILE.at("/target/t_s").doubleValue(), NafemsT3.TARGET_TIME_SECONDS);
    assertEquals(FILE.at("/target/T_C").doubleValue(), NafemsT3.TARGET_CELSIUS);
  }

  @Test
  void exactSolution_roundsToTheTarget() {
    double exact = NafemsT3.celsius(NafemsT3.TARGET_DISTANCE_METRES, NafemsT3.TARGET_TIME_SECONDS);
    assertEquals(NafemsT3.TARGET_CELSIUS, exact, 0.005);
  }

  @Test
  void exactSolution_satisfiesTheHeatEquation() {
    double x = 0.06;
    double t = 25;
    double rate = Differences.first(time -> NafemsT3.celsius(x, time), t, 0.05);
    double curvature = Differences.second(place -> NafemsT3.celsius(place, t), x, 1e-3);
    assertEquals(rate, NafemsT3.diffusivity() * curvature, 1e-4 * Math.abs(rate));
  }

  @Test
  void exactSolution_startsAtZeroAndFollowsItsEnds() {
    assertEquals(NafemsT3.START_CELSIUS, NafemsT3.celsius(0.05, 0), 1e-9);
    assertEquals(NafemsT3.COLD_END_CELSIUS, NafemsT3.celsius(0, 17), 1e-9);
    double drivenEnd = NafemsT3.celsius(NafemsT3.LENGTH_METRES, 17);
    assertEquals(NafemsT3.drivenEndCelsius(17), drivenEnd, 1e-9);
  }
}
