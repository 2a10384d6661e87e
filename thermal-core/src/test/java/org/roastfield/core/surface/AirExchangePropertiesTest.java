package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.support.UniformDraws;

/** Slopes of coefficient, heat and water against central differences, and signs. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class AirExchangePropertiesTest {

  private static final int TRIES = 500;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Property(tries = TRIES)
  void coefficient_hasItsSlope(
      @ForAll FaceForm form,
      @ForAll @DoubleRange(min = 0.02, max = 0.09) @Scale(4) double length,
      @ForAll @DoubleRange(min = 0.15, max = 3) double wind,
      @ForAll boolean still,
      @ForAll @DoubleRange(min = 250, max = 650) double air,
      @ForAll @DoubleRange(min = 265, max = 500) double face) {
    FilmCoefficient film =
        FilmCoefficient.windyAir(form, length, still ? 0 : wind, PRESSURE).times(1.3);
    double h = 1e-3;
    double difference = (film.at(face + h, air) - film.at(face - h, air)) / (2 * h);
    assertEquals(difference, film.slope(face, air), 1e-7 * film.at(face, air));
    assertTrue(film.at(face, air) > 0);
  }

  @Property(tries = TRIES)
  void coefficient_hasItsSlopeWhereFaceAndAirAreAlike(
      @ForAll FaceForm form,
      @ForAll @DoubleRange(min = -3, max = 3) double apart,
      @ForAll @DoubleRange(min = 270, max = 400) double air) {
    FilmCoefficient film = FilmCoefficient.stillAir(form, 0.05, PRESSURE);
    double h = 1e-3;
    double face = air + apart;
    double difference = (film.at(face + h, air) - film.at(face - h, air)) / (2 * h);
    assertEquals(difference, film.slope(face, air), 1e-7 * film.at(face, air));
  }

  @Property(tries = TRIES)
  void heatAndWater_haveTheirSlopes(
      @ForAll FaceForm form,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double wetness,
      @ForAll @DoubleRange(min = 0.7, max = 1) @Scale(3) double activity,
      @ForAll @DoubleRange(min = 0, max = 50_000) double vapour,
      @ForAll @DoubleRange(min = 0.1, max = 2) double wind,
      @ForAll @DoubleRange(min = 270, max = 600) double air,
      @ForAll @DoubleRange(min = 270, max = 362) double face) {
    FilmCoefficient film = FilmCoefficient.windyAir(form, 0.05, wind, PRESSURE);
    SurfaceLaw law =
        AirExchange.of(film, Signal.constant(air), wetness, activity, Signal.constant(vapour));
    double h = 1e-3;
    SurfaceFlux above = flux(law, face + h);
    SurfaceFlux below = flux(law, face - h);
    SurfaceFlux flux = flux(law, face);
    double heat = (above.heatFlux() - below.heatFlux()) / (2 * h);
    double water = (above.evaporation() - below.evaporation()) / (2 * h);
    assertEquals(heat, flux.slope(), 1e-6 * (1 + Math.abs(heat)));
    assertEquals(water, flux.evaporationSlope(), 1e-6 * (1e-6 + Math.abs(water)));
  }

  /** So that a dry face has one balance only. */
  @Property(tries = TRIES)
  void heatOfADryFace_fallsWithItsTemperature(
      @ForAll FaceForm form,
      @ForAll @DoubleRange(min = 0.02, max = 0.09) @Scale(4) double length,
      @ForAll @DoubleRange(min = 250, max = 650) double air,
      @ForAll @DoubleRange(min = 265, max = 500) double face) {
    FilmCoefficient film = FilmCoefficient.stillAir(form, length, PRESSURE);
    SurfaceFlux flux = flux(AirExchange.dry(film, Signal.constant(air)), face);
    assertTrue(flux.slope() < 0);
    assertTrue((air - face) * flux.heatFlux() >= 0);
    assertEquals(0, flux.evaporation());
  }

  @Property(tries = TRIES)
  void humidity_warmsTheSteadyWetFace(
      @ForAll FaceForm form,
      @ForAll @DoubleRange(min = 340, max = 500) double air,
      @ForAll @DoubleRange(min = 0, max = 0.1) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(3) double wetness) {
    double dry = steady(form, air, humidity, wetness, PRESSURE);
    double moist = steady(form, air, humidity + 0.01, wetness, PRESSURE);
    assertTrue(moist > dry, () -> moist + " K, not above " + dry + " K");
    assertTrue(dry < air);
  }

  @Property(tries = TRIES)
  void altitude_coolsTheSteadyWetFace(
      @ForAll @DoubleRange(min = 370, max = 500) double air,
      @ForAll @DoubleRange(min = 0, max = 0.1) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(3) double wetness) {
    FaceForm form = FaceForm.HORIZONTAL_CYLINDER;
    double high = MoistAir.pressureAtAltitude(2000);
    assertTrue(
        steady(form, air, humidity, wetness, high)
            < steady(form, air, humidity, wetness, PRESSURE));
  }

  private static double steady(
      FaceForm form, double air, double humidity, double wetness, double pressure) {
    FilmCoefficient film = FilmCoefficient.stillAir(form, 0.08, pressure);
    Chamber chamber = Chamber.steady(air, humidity, pressure);
    return SteadyFace.of(chamber.around(film, 0.9, wetness, 0.98));
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, 0, flux);
    return flux;
  }
}
