package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

class ChamberTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Test
  void around_isConvectionRadiationAndEvaporation() {
    Chamber chamber = Chamber.steady(390, 0.03, PRESSURE).withWallOffset(15);
    Signal vapour = Signal.constant(MoistAir.vapourPressure(0.03, PRESSURE));
    SurfaceLaw parts =
        SurfaceLaw.sum(
            new Convection(12, Signal.constant(390)),
            new Radiation(0.9, Signal.constant(405)),
            Evaporation.of(0.4, 12, 0.98, vapour, PRESSURE));
    SurfaceFlux expected = new SurfaceFlux();
    parts.evaluate(330, 0, expected);
    SurfaceFlux flux = new SurfaceFlux();
    chamber.around(12, 0.9, 0.4, 0.98).evaluate(330, 0, flux);
    assertEquals(expected.heatFlux(), flux.heatFlux(), 1e-9);
    assertEquals(expected.slope(), flux.slope(), 1e-12);
    assertEquals(expected.evaporation(), flux.evaporation(), 1e-18);
  }

  @Test
  void walls_areAsWarmAsTheAirUnlessOffset() {
    Chamber chamber = Chamber.of(time -> 380 + time, 0.02, PRESSURE);
    assertEquals(385, chamber.wallTemperature().at(5));
    assertEquals(365, chamber.withWallOffset(-20).wallTemperature().at(5));
    assertEquals(385, chamber.withWallOffset(-20).airTemperature().at(5));
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "temperature must be finite and greater than 0, was -1.0",
        () -> Chamber.steady(-1, 0.02, PRESSURE));
    assertRefused(
        "humidityRatio must be finite and at least 0, was -0.02",
        () -> Chamber.steady(380, -0.02, PRESSURE));
    assertRefused(
        "pressure must be finite and greater than 0, was NaN",
        () -> Chamber.steady(380, 0.02, Double.NaN));
    assertRefused(
        "offset must be finite, was NaN",
        () -> Chamber.steady(380, 0.02, PRESSURE).withWallOffset(Double.NaN));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
