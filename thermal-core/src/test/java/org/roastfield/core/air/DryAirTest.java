package org.roastfield.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DryAirTest {

  /**
   * [Incropera2007], table A.4: K, kg/m³, J/(kg·K), 1e-7 Pa·s, W/(m·K), –. Its densities are those
   * of an ideal gas at 100 kPa.
   */
  @ParameterizedTest
  @CsvSource({
    "250, 1.3947, 1006, 159.6, 0.0223, 0.720",
    "300, 1.1614, 1007, 184.6, 0.0263, 0.707",
    "350, 0.9950, 1009, 208.2, 0.0300, 0.700",
    "400, 0.8711, 1014, 230.1, 0.0338, 0.690",
    "500, 0.6964, 1030, 270.1, 0.0407, 0.684",
    "600, 0.5804, 1051, 305.8, 0.0469, 0.685",
    "800, 0.4354, 1099, 369.8, 0.0573, 0.709"
  })
  void properties_areThoseOfTheTable(
      double kelvin,
      double density,
      double heatCapacity,
      double viscosity,
      double conductivity,
      double prandtl) {
    assertRelative(density, DryAir.density(kelvin, 1e5), 0.001);
    assertRelative(heatCapacity, DryAir.heatCapacity(kelvin), 0.001);
    assertRelative(viscosity * 1e-7, DryAir.viscosity(kelvin), 0.021);
    assertRelative(conductivity, DryAir.conductivity(kelvin), 0.008);
    assertRelative(prandtl, DryAir.prandtl(kelvin), 0.029);
  }

  @Test
  void temperaturesOutsideTheRange_areRefused() {
    Exception refused = assertThrows(IllegalArgumentException.class, () -> DryAir.viscosity(900));
    assertEquals("temperature must be in [240.0, 800.0], was 900.0", refused.getMessage());
    assertThrows(IllegalArgumentException.class, () -> DryAir.density(Double.NaN, 1e5));
    assertThrows(IllegalArgumentException.class, () -> DryAir.density(300, 0));
    assertThrows(IllegalArgumentException.class, () -> DryAir.conductivity(200));
    assertThrows(IllegalArgumentException.class, () -> DryAir.heatCapacity(239));
  }

  private static void assertRelative(double expected, double actual, double share) {
    assertEquals(expected, actual, share * expected);
  }
}
