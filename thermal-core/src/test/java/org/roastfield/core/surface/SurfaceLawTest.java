package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;

class SurfaceLawTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Signal WARM = Signal.constant(400);

  @Test
  void evaporation_growsWithoutBoundTowardsBoilingAndHasNoValueBeyond() {
    double activity = 0.98;
    double boiling = SaturationPressure.boilingPoint(PRESSURE / activity);
    SurfaceLaw law = Evaporation.of(1, 20, activity, Signal.constant(1000), PRESSURE);
    double near = flux(law, boiling - 1e-3, 0).evaporation();
    double nearer = flux(law, boiling - 1e-6, 0).evaporation();
    assertTrue(nearer > near && near > 0);
    assertTrue(Double.isNaN(flux(law, boiling + 1e-6, 0).heatFlux()));
  }

  /** Small differences of pressure: ṁ = h 0.622/(c_p Le^⅔ p) (a_w p_sat − p_v). */
  @Test
  void evaporation_isTheChiltonColburnAnalogyWhereVapourIsThin() {
    double face = 283.15;
    SurfaceLaw law = Evaporation.of(1, 20, 1, Signal.constant(1200), PRESSURE);
    double driving = SaturationPressure.at(face) - 1200;
    double expected = 20 * 0.62198 / (1006 * Math.pow(0.87, 2.0 / 3) * PRESSURE) * driving;
    assertEquals(expected, flux(law, face, 0).evaporation(), 0.013 * expected);
  }

  @Test
  void humidAir_condensesOnAColdFaceAndWarmsIt() {
    SurfaceLaw law = Evaporation.of(1, 20, 1, Signal.constant(20_000), PRESSURE);
    SurfaceFlux flux = flux(law, 278, 0);
    assertTrue(flux.evaporation() < 0);
    assertTrue(flux.heatFlux() > 0);
  }

  @Test
  void dryFace_evaporatesNothingAtAnyTemperature() {
    SurfaceLaw law = Evaporation.of(0, 20, 1, Signal.constant(1000), PRESSURE);
    assertEquals(0, flux(law, 500, 0).heatFlux());
    assertEquals(0, flux(law, 500, 0).evaporation());
  }

  @Test
  void insulatedFace_letsNothingThrough() {
    assertEquals(0, flux(SurfaceLaw.insulated(), 350, 0).heatFlux());
    assertEquals(0, flux(SurfaceLaw.insulated(), 350, 0).slope());
  }

  @Test
  void laws_followTheirSignals() {
    SurfaceLaw law = new Convection(10, time -> 300 + time);
    assertEquals(0, flux(law, 300, 0).heatFlux());
    assertEquals(50, flux(law, 300, 5).heatFlux());
  }

  @Test
  void shortestPeriod_isThatOfTheQuickestSignal() {
    Signal slow = SampledSignal.of(new double[] {0, 60}, new double[] {300, 310}, 900);
    Signal quick = SampledSignal.of(new double[] {0, 60}, new double[] {300, 310}, 240);
    SurfaceLaw law =
        SurfaceLaw.sum(
            new Convection(10, slow), new Radiation(0.9, quick.plus(5)), new Contact(5, WARM));
    assertEquals(240, law.shortestPeriod());
    assertEquals(Double.POSITIVE_INFINITY, SurfaceLaw.insulated().shortestPeriod());
    assertEquals(240, Evaporation.of(1, 5, 1, quick, PRESSURE).shortestPeriod());
  }

  @Test
  void flux_isASumThatCanBeEmptied() {
    SurfaceFlux flux = new SurfaceFlux();
    flux.addHeat(10, -1);
    flux.addHeat(5, -2);
    flux.addEvaporation(3, 0.5);
    assertEquals(15, flux.heatFlux());
    assertEquals(-3, flux.slope());
    assertEquals(3, flux.evaporation());
    assertEquals(0.5, flux.evaporationSlope());
    flux.clear();
    assertEquals(0, flux.heatFlux());
    assertEquals(0, flux.slope());
    assertEquals(0, flux.evaporation());
    assertEquals(0, flux.evaporationSlope());
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "heatTransferCoefficient must be finite and at least 0, was -1.0",
        () -> new Convection(-1, WARM));
    assertRefused("emissivity must be in [0.0, 1.0], was 1.1", () -> new Radiation(1.1, WARM));
    assertRefused(
        "contactConductance must be finite and at least 0, was NaN",
        () -> new Contact(Double.NaN, WARM));
    assertRefused(
        "wetness must be in [0.0, 1.0], was 1.5", () -> Evaporation.of(1.5, 10, 1, WARM, PRESSURE));
    assertRefused(
        "waterActivity must be in [" + Double.MIN_NORMAL + ", 1.0], was 0.0",
        () -> Evaporation.of(1, 10, 0, WARM, PRESSURE));
    assertRefused(
        "pressure must be finite and greater than 0, was 0.0",
        () -> Evaporation.of(1, 10, 1, WARM, 0));
    assertRefused(
        "lewisNumber must be in [0.5, 2.0], was 3.0",
        () -> new Evaporation(1, 10, 1, WARM, PRESSURE, 3));
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face, double time) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, time, flux);
    return flux;
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
