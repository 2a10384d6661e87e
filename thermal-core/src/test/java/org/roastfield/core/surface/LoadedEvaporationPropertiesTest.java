package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.roastfield.core.air.MoistAir;

/** Evaporation into a draught that it makes more humid. */
class LoadedEvaporationPropertiesTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Property(tries = 300)
  void vapour_isWhatTheDraughtCarriesAway(
      @ForAll @DoubleRange(min = 275, max = 371) double surface,
      @ForAll @DoubleRange(min = 0, max = 0.3) double humidity,
      @ForAll @DoubleRange(min = 0, max = 2000) double load,
      @ForAll @DoubleRange(min = 0.01, max = 1) double wetness) {
    LoadedEvaporation law = law(humidity, load, wetness);
    double loaded = law.humidityRatio(surface, 0);
    SurfaceFlux flux = flux(law, surface);
    assertEquals(
        humidity + load * flux.evaporation(), loaded, 1e-12 * Math.max(1, Math.abs(loaded)));
    Evaporation there =
        Evaporation.of(
            wetness,
            10,
            0.98,
            Signal.constant(MoistAir.vapourPressure(Math.max(0, loaded), PRESSURE)),
            PRESSURE);
    double strength = there.massTransferStrength();
    assertEquals(flux(there, surface).evaporation(), flux.evaporation(), 1e-12 * strength);
  }

  @Property(tries = 300)
  void slopes_areThoseOfDifferences(
      @ForAll @DoubleRange(min = 275, max = 370) double surface,
      @ForAll @DoubleRange(min = 0, max = 0.3) double humidity,
      @ForAll @DoubleRange(min = 0, max = 2000) double load) {
    LoadedEvaporation law = law(humidity, load, 0.6);
    double step = 1e-3;
    SurfaceFlux above = flux(law, surface + step);
    SurfaceFlux below = flux(law, surface - step);
    SurfaceFlux at = flux(law, surface);
    double slope = (above.heatFlux() - below.heatFlux()) / (2 * step);
    assertEquals(slope, at.slope(), 1e-4 * Math.max(1, Math.abs(slope)));
    double evaporationSlope = (above.evaporation() - below.evaporation()) / (2 * step);
    assertEquals(evaporationSlope, at.evaporationSlope(), 1e-4 * Math.max(1e-7, evaporationSlope));
    assertTrue(at.slope() < 0 || at.evaporation() < 0);
  }

  @Property(tries = 200)
  void load_slowsEvaporationAndCondensationAlike(
      @ForAll @DoubleRange(min = 275, max = 370) double surface,
      @ForAll @DoubleRange(min = 0, max = 0.3) double humidity,
      @ForAll @DoubleRange(min = 1, max = 1000) double load) {
    double free = flux(law(humidity, 0, 0.6), surface).evaporation();
    double loaded = flux(law(humidity, load, 0.6), surface).evaporation();
    double heavier = flux(law(humidity, 2 * load, 0.6), surface).evaporation();
    assertTrue(Math.abs(loaded) <= Math.abs(free) && Math.abs(heavier) <= Math.abs(loaded));
    assertTrue(free * loaded >= 0 && free * heavier >= 0);
  }

  @Example
  void withoutLoad_itIsPlainEvaporation() {
    VapourLaw plain = law(0.03, 0, 0.6).unloaded();
    assertEquals(flux(plain, 340).evaporation(), flux(law(0.03, 0, 0.6), 340).evaporation(), 1e-16);
    assertEquals(flux(plain, 340).slope(), flux(law(0.03, 0, 0.6), 340).slope(), 1e-9);
  }

  @Example
  void wetFaceAboveBoiling_hasNoValue() {
    assertTrue(Double.isNaN(flux(law(0.03, 100, 0.6), 375).heatFlux()));
    assertEquals(0, flux(law(0.03, 100, 0), 375).heatFlux(), 0);
  }

  private static LoadedEvaporation law(double humidity, double load, double wetness) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidity, PRESSURE));
    return new LoadedEvaporation(Evaporation.of(wetness, 10, 0.98, vapour, PRESSURE), load);
  }

  private static SurfaceFlux flux(SurfaceLaw law, double surfaceTemperature) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(surfaceTemperature, 0, flux);
    return flux;
  }
}
