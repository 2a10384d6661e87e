package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nusselt numbers, computed off-line where no table is named. */
class CorrelationTest {

  /** Published outputs of other libraries for the correlation of Churchill and Chu, 6 digits. */
  @ParameterizedTest
  @CsvSource({
    "0.69, 2.63e9, 139.135",
    "0.70, 1e5, 7.07684",
    "1.2, 5e6, 25.9779",
    "0.9, 1e9, 115.819"
  })
  void horizontalCylinder_isChurchillAndChu(double prandtl, double grashof, double nusselt) {
    assertEquals(
        nusselt,
        NaturalCorrelation.HORIZONTAL_CYLINDER.nusselt(grashof * prandtl, prandtl),
        5e-6 * nusselt);
  }

  @ParameterizedTest
  @CsvSource({"1e9, 122.61506", "1e5, 9.198488"})
  void verticalPlate_isChurchillAndChu(double rayleigh, double nusselt) {
    assertEquals(nusselt, NaturalCorrelation.VERTICAL_PLATE.nusselt(rayleigh, 0.7), 1e-6 * nusselt);
  }

  @Test
  void sphere_startsAtConductionIntoStillAir() {
    assertEquals(2, NaturalCorrelation.SPHERE.nusselt(0, 0.7));
    assertEquals(16.349707, NaturalCorrelation.SPHERE.nusselt(1e6, 0.7), 1e-5);
  }

  @Test
  void horizontalPlate_isTheFourthRootButForItsFactor() {
    assertEquals(10, NaturalCorrelation.HORIZONTAL_PLATE.nusselt(1e4, 0.7), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"1e3, 15.929612", "6071, 40.637086", "1e5, 214.126043"})
  void cylinderAcrossTheWind_isChurchillAndBernstein(double reynolds, double nusselt) {
    assertEquals(nusselt, ForcedCorrelation.CYLINDER.nusselt(reynolds, 0.7), 1e-6 * nusselt);
  }

  @Test
  void sphereInWind_isWhitaker() {
    assertEquals(61.163002, ForcedCorrelation.SPHERE.nusselt(1e4, 0.71), 1e-5);
    assertEquals(2, ForcedCorrelation.SPHERE.nusselt(0, 0.71));
  }

  @Test
  void plateInWind_isLaminar() {
    assertEquals(186.437853, ForcedCorrelation.PLATE.nusselt(1e5, 0.7), 1e-5);
  }
}
