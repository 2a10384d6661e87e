package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;

class AirExchangeTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final FilmCoefficient FILM =
      FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, PRESSURE);
  private static final Signal AIR = Signal.constant(390);
  private static final Signal VAPOUR = Signal.constant(4000);

  @Test
  void water_isThatOfEvaporationWithTheSameCoefficient() {
    double face = 325;
    double h = FILM.at(face, 390);
    SurfaceFlux expected = flux(Evaporation.of(0.4, h, 0.98, VAPOUR, PRESSURE), face);
    SurfaceFlux flux = flux(AirExchange.of(FILM, AIR, 0.4, 0.98, VAPOUR), face);
    assertEquals(expected.evaporation(), flux.evaporation(), 1e-15);
    double convection = flux.heatFlux() - expected.heatFlux();
    double thickness = 1880 * flux.evaporation() / h;
    assertEquals(h * (390 - face) * thickness / Math.expm1(thickness), convection, 1e-9);
  }

  @Test
  void dryFace_isConvectionAlone() {
    SurfaceFlux flux = flux(AirExchange.dry(FILM, AIR), 330);
    assertEquals(FILM.at(330, 390) * 60, flux.heatFlux(), 1e-12);
    assertEquals(0, flux.evaporation());
  }

  /** ζ/(e^ζ − 1): 1 at 0, 0.951 at 0.1, 0.582 at 1, 1.051 where vapour arrives at −0.1. */
  @Test
  void blocking_isOneWithoutVapourAndFallsWithIt() {
    assertEquals(1, AirExchange.blocking(0));
    assertEquals(0.95083, AirExchange.blocking(0.1), 1e-5);
    assertEquals(0.58198, AirExchange.blocking(1), 1e-5);
    assertEquals(1.05083, AirExchange.blocking(-0.1), 1e-5);
    assertEquals(AirExchange.blocking(0.999e-3), AirExchange.blocking(1.001e-3), 2e-6);
    assertEquals(-0.5, AirExchange.blockingSlope(0, 1));
    assertEquals(
        AirExchange.blockingSlope(0.999e-3, AirExchange.blocking(0.999e-3)),
        AirExchange.blockingSlope(1.001e-3, AirExchange.blocking(1.001e-3)),
        1e-6);
  }

  @Test
  void humidSmoke_condensesOnAColdFaceAndWarmsIt() {
    SurfaceLaw wet = AirExchange.of(FILM, AIR, 1, 0.98, VAPOUR);
    SurfaceFlux flux = flux(wet, 278);
    assertTrue(flux.evaporation() < 0);
    assertTrue(flux.heatFlux() > flux(AirExchange.dry(FILM, AIR), 278).heatFlux());
    double dewPoint = MoistAir.dewPoint(4000 / 0.98);
    assertEquals(0, flux(wet, dewPoint).evaporation(), 1e-12);
  }

  @Test
  void wetFace_hasNoValueAtBoilingNorAFilmBeyondAir() {
    SurfaceLaw law = AirExchange.of(FILM, AIR, 0.3, 1, VAPOUR);
    double boiling = SaturationPressure.boilingPoint(PRESSURE);
    assertTrue(flux(law, boiling - 1e-3).heatFlux() < 0);
    assertTrue(Double.isNaN(flux(law, boiling + 1e-3).heatFlux()));
    SurfaceLaw furnace = AirExchange.dry(FILM, Signal.constant(1300));
    assertTrue(Double.isNaN(flux(furnace, 350).heatFlux()));
  }

  @Test
  void chamber_addsRadiation() {
    Chamber chamber = Chamber.steady(390, 0.03, PRESSURE);
    double sum =
        flux(AirExchange.of(FILM, AIR, 0.3, 0.98, chamber.vapourPressure()), 330).heatFlux()
            + flux(new Radiation(0.9, AIR), 330).heatFlux();
    assertEquals(sum, flux(chamber.around(FILM, 0.9, 0.3, 0.98), 330).heatFlux(), 1e-10);
    Exception refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> Chamber.steady(390, 0.03, 8e4).around(FILM, 0.9, 0.3, 0.98));
    assertEquals(
        "film must be at the chamber's pressure 80000.0, was 101325.0", refused.getMessage());
  }

  @Test
  void shortestPeriod_isThatOfTheQuickestSignal() {
    Signal quick = SampledSignal.of(new double[] {0, 60}, new double[] {300, 310}, 240);
    assertEquals(240, AirExchange.dry(FILM, quick).shortestPeriod());
    assertEquals(240, AirExchange.of(FILM, AIR, 1, 1, quick).shortestPeriod());
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "wetness must be in [0.0, 1.0], was -0.1",
        () -> AirExchange.of(FILM, AIR, -0.1, 1, VAPOUR));
    assertRefused(
        "waterActivity must be in [" + Double.MIN_NORMAL + ", 1.0], was NaN",
        () -> AirExchange.of(FILM, AIR, 1, Double.NaN, VAPOUR));
    assertRefused(
        "lewisNumber must be in [0.5, 2.0], was 0.1",
        () -> new AirExchange(FILM, AIR, 1, 1, VAPOUR, 0.1));
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, 0, flux);
    return flux;
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  /** A dry face's exchange and what vapour adds are together that of a wet face. */
  @Test
  void vapourBesideADryFace_isTheExchangeOfAWetOne() {
    FilmCoefficient film =
        FilmCoefficient.windyAir(
            FaceForm.HORIZONTAL_CYLINDER, 0.09, 0.2, MoistAir.STANDARD_PRESSURE);
    Signal air = Signal.constant(400);
    AirExchange wet = AirExchange.of(film, air, 1, 0.98, Signal.constant(3000));
    SurfaceLaw parts = SurfaceLaw.sum(AirExchange.dry(film, air), new AirVapour(wet));
    for (Wrap wrap : new Wrap[] {new Wrap("none", 1, 1, 1), Wrap.FOIL, Wrap.TENT}) {
      for (double face : new double[] {280, 330, 372}) {
        SurfaceFlux whole = new SurfaceFlux();
        wet.under(wrap).evaluate(face, 0, whole);
        SurfaceFlux sum = new SurfaceFlux();
        parts.under(wrap).evaluate(face, 0, sum);
        assertEquals(whole.heatFlux(), sum.heatFlux(), 1e-9 * Math.abs(whole.heatFlux()));
        assertEquals(whole.slope(), sum.slope(), 1e-9 * Math.abs(whole.slope()));
        assertEquals(whole.evaporation(), sum.evaporation(), 0);
      }
    }
    assertEquals(wet.highestTemperature(), parts.highestTemperature(), 0);
  }
}
