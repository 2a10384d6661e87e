package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.units.Temperatures;

/**
 * Where a fully wet face stands still that sends no heat inward: a table computed once and apart
 * from this library. Its inputs: wetness 1, a_w 0.98, Le 0.85, c_a 1006 J/(kg·K), 101 325 Pa, walls
 * as warm as the pit, emissivity 0.9 (none for the last two columns), a stated coefficient of 6 or
 * 25 W/(m²·K) without blocking by vapour.
 */
class PlateauTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double ALLOWED = 0.5;

  @ParameterizedTest
  @CsvSource({
    "95, 43.0, 44.8, 48.2, 53.6, 61.2, 38.7, 50.2, 36.0, 48.9",
    "107, 46.2, 47.8, 50.8, 55.7, 62.7, 40.8, 51.6, 37.8, 50.0",
    "121, 49.7, 51.1, 53.7, 58.1, 64.5, 43.2, 53.1, 39.7, 51.1",
    "135, 53.0, 54.2, 56.5, 60.4, 66.2, 45.5, 54.6, 41.5, 52.2",
    "150, 56.2, 57.3, 59.3, 62.8, 68.1, 47.7, 56.1, 43.3, 53.3"
  })
  void plateau_isThatOfTheTable(
      double pit,
      double still008,
      double still015,
      double still03,
      double still06,
      double still12,
      double fan015,
      double fan06,
      double unlit015,
      double unlit06) {
    assertEquals(still008, plateau(pit, 0.008, 6, 0.9), ALLOWED);
    assertEquals(still015, plateau(pit, 0.015, 6, 0.9), ALLOWED);
    assertEquals(still03, plateau(pit, 0.03, 6, 0.9), ALLOWED);
    assertEquals(still06, plateau(pit, 0.06, 6, 0.9), ALLOWED);
    assertEquals(still12, plateau(pit, 0.12, 6, 0.9), ALLOWED);
    assertEquals(fan015, plateau(pit, 0.015, 25, 0.9), ALLOWED);
    assertEquals(fan06, plateau(pit, 0.06, 25, 0.9), ALLOWED);
    assertEquals(unlit015, plateau(pit, 0.015, 25, 0), ALLOWED);
    assertEquals(unlit06, plateau(pit, 0.06, 25, 0), ALLOWED);
  }

  /** kg/(m²·h), at w = 0.008 in still air and w = 0.015 with a fan. */
  @ParameterizedTest
  @CsvSource({
    "95, 1.11, 2.8",
    "107, 1.35, 3.3",
    "121, 1.67, 4.0",
    "135, 2.02, 4.7",
    "150, 2.43, 5.5"
  })
  void evaporationThere_isThatOfTheTable(double pit, double still, double fan) {
    assertEquals(still, rate(law(pit, 0.008, 6, 0.9)), 0.01);
    assertEquals(fan, rate(law(pit, 0.015, 25, 0.9)), 0.05);
  }

  /**
   * The same with a coefficient by correlation that happens to be 6 W/(m²·K) there: what blocking
   * by vapour, which the table leaves out, takes off.
   */
  @ParameterizedTest
  @CsvSource({"95, 0.008", "121, 0.03", "150, 0.12"})
  void blocking_lowersThePlateauByAFewTenths(double pit, double ratio) {
    double stated = SteadyFace.of(law(pit, ratio, 6, 0.9));
    double air = Temperatures.celsius(pit);
    FilmCoefficient film = FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.08, PRESSURE);
    double blocked = stated;
    for (int i = 0; i < 30; i++) {
      FilmCoefficient six = film.times(6 / film.at(blocked, air));
      blocked = SteadyFace.of(blocking(six, air, ratio));
    }
    double lowered = stated - blocked;
    assertEquals(0.2, lowered, 0.15);
  }

  private static SurfaceLaw blocking(FilmCoefficient film, double air, double ratio) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(ratio, PRESSURE));
    return SurfaceLaw.sum(
        new AirExchange(film, Signal.constant(air), 1, 0.98, vapour, 0.85),
        new Radiation(0.9, Signal.constant(air)));
  }

  private static double plateau(double pit, double ratio, double coefficient, double emissivity) {
    return Temperatures.toCelsius(SteadyFace.of(law(pit, ratio, coefficient, emissivity)));
  }

  private static double rate(SurfaceLaw law) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(SteadyFace.of(law), 0, flux);
    return 3600 * flux.evaporation();
  }

  private static SurfaceLaw law(double pit, double ratio, double coefficient, double emissivity) {
    Signal air = Signal.constant(Temperatures.celsius(pit));
    Signal vapour = Signal.constant(MoistAir.vapourPressure(ratio, PRESSURE));
    return SurfaceLaw.sum(
        new Convection(coefficient, air),
        new Radiation(emissivity, air),
        new Evaporation(1, coefficient, 0.98, vapour, PRESSURE, 0.85));
  }
}
