package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.roastfield.core.units.Temperatures.celsius;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.air.DryAir;
import org.roastfield.core.air.MoistAir;

class FilmCoefficientTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double FACE = celsius(60);

  /**
   * Round cuts in a still pit with a face of 60 °C, and in wind alone: computed once with air of
   * constant heat capacity, given to 0.1 W/(m²·K).
   */
  @ParameterizedTest
  @CsvSource({
    "0.05, 110, 6.1", "0.05, 150, 7.0", "0.05, 200, 7.7",
    "0.08, 110, 5.6", "0.08, 150, 6.5", "0.08, 200, 7.2",
    "0.12, 110, 5.3", "0.12, 150, 6.2", "0.12, 200, 6.8",
    "0.20, 110, 5.0", "0.20, 150, 5.8", "0.20, 200, 6.4"
  })
  void cylinderInStillAir_hasTheCoefficientsOfTheTable(
      double diameter, double pit, double coefficient) {
    assertEquals(coefficient, cylinder(diameter).at(FACE, celsius(pit)), 0.1);
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 0.5, 10.5", "0.05, 1, 15", "0.05, 2, 21.5",
    "0.08, 0.5, 8.4", "0.08, 1, 12", "0.08, 2, 17.3",
    "0.12, 0.5, 6.9", "0.12, 1, 9.9", "0.12, 2, 14.5",
    "0.20, 0.5, 5.4", "0.20, 1, 7.8", "0.20, 2, 11.6"
  })
  void wind_addsItsCubeToThatOfStillAir(double diameter, double speed, double forced) {
    double air = celsius(110);
    double still = cylinder(diameter).at(FACE, air);
    double both =
        FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, diameter, speed, PRESSURE)
            .at(FACE, air);
    assertEquals(forced, Math.cbrt(both * both * both - still * still * still), 0.1);
  }

  /** Each form against its formula, evaluated directly, at 20 K and more. */
  @ParameterizedTest
  @EnumSource
  void coefficient_isThatOfTheCorrelation(FaceForm form) {
    double length = 0.06;
    double pressure = 80_000;
    double speed = 0.4;
    FilmCoefficient film = FilmCoefficient.windyAir(form, length, speed, pressure).times(1.2);
    for (double air = 280; air <= 700; air += 7) {
      for (double face = 275; face <= 450; face += 11) {
        if (Math.abs(air - face) < 20 || air + face < 2 * DryAir.LOWEST) {
          continue;
        }
        double mean = 0.5 * (face + air);
        double viscosity = DryAir.viscosity(mean) / DryAir.density(mean, pressure);
        double prandtl = DryAir.prandtl(mean);
        double driving = Math.sqrt((air - face) * (air - face) + 9);
        double rayleigh =
            9.80665 * driving * Math.pow(length, 3) * prandtl / (mean * viscosity * viscosity);
        double side = factor(form, (air - face) / driving);
        double still = side * form.natural().nusselt(rayleigh, prandtl) / length;
        double run = length * form.windLengths();
        double windy = form.forced().nusselt(speed * run / viscosity, prandtl) / run;
        double expected =
            1.2 * DryAir.conductivity(mean) * Math.cbrt(Math.pow(still, 3) + Math.pow(windy, 3));
        assertEquals(expected, film.at(face, air), 1e-5 * expected);
      }
    }
  }

  private static double factor(FaceForm form, double side) {
    return switch (form) {
      case UPPER_FACE -> 0.405 - 0.135 * side;
      case LOWER_FACE -> 0.405 + 0.135 * side;
      case HORIZONTAL_CYLINDER, VERTICAL_PLATE, SPHERE -> 1;
    };
  }

  /**
   * Cold meat in hot air sheds air from its lower face; hot meat in cold air from its upper. The
   * smooth change of sides takes ¾ (3 K/ΔT)² off the ratio of 2: 7e-4 at 100 K, 3.3e-3 at 45 K.
   */
  @Test
  void horizontalFaces_stirTheAirOnTheSideItLeaves() {
    FilmCoefficient upper = FilmCoefficient.stillAir(FaceForm.UPPER_FACE, 0.04, PRESSURE);
    FilmCoefficient lower = FilmCoefficient.stillAir(FaceForm.LOWER_FACE, 0.04, PRESSURE);
    assertEquals(2, lower.at(300, 400) / upper.at(300, 400), 1e-3);
    assertEquals(2, upper.at(340, 295) / lower.at(340, 295), 4e-3);
    assertEquals(upper.at(340, 340), lower.at(340, 340), 1e-12);
  }

  @Test
  void thinAir_carriesLess() {
    double sea = cylinder(0.1).at(FACE, celsius(120));
    double mountain =
        FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.1, 70_000).at(FACE, celsius(120));
    assertTrue(mountain < 0.9 * sea && mountain > 0.75 * sea, () -> mountain + " against " + sea);
  }

  @Test
  void factors_multiply() {
    FilmCoefficient film = cylinder(0.1);
    double plain = film.at(FACE, 400);
    assertEquals(1.5 * plain, film.times(3).times(0.5).at(FACE, 400), 1e-12);
    assertEquals(0, film.times(0).at(FACE, 400));
  }

  @Test
  void filmsOutsideTheRangeOfAir_haveNoCoefficient() {
    FilmCoefficient film = cylinder(0.1);
    assertTrue(Double.isNaN(film.at(230, 245)));
    assertTrue(Double.isNaN(film.slope(230, 245)));
    assertTrue(Double.isNaN(film.at(700, 901)));
    assertTrue(Double.isNaN(film.slope(Double.NaN, 400)));
  }

  @Test
  void films_areEqualByTheirNumbers() {
    assertEquals(cylinder(0.1), cylinder(0.1));
    assertEquals(cylinder(0.1).hashCode(), cylinder(0.1).hashCode());
    assertNotEquals(cylinder(0.1), cylinder(0.11));
    assertNotEquals(cylinder(0.1), cylinder(0.1).times(1.1));
    assertNotEquals(cylinder(0.1), FilmCoefficient.stillAir(FaceForm.SPHERE, 0.1, PRESSURE));
    assertNotEquals(
        cylinder(0.1), FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, 0.1, 0.1, PRESSURE));
  }

  @Test
  void film_isDescribedByItsNumbers() {
    assertEquals(
        "FilmCoefficient[sphere, length 0.1 m, wind 0.5 m/s, 101325.0 Pa, times 1.2]",
        FilmCoefficient.windyAir(FaceForm.SPHERE, 0.1, 0.5, PRESSURE).times(1.2).toString());
  }

  @Test
  void sizesAndWindsBeyondTheCorrelations_areRefused() {
    assertRefused(
        "length of the lower face must be at most about 0.1 m",
        () -> FilmCoefficient.stillAir(FaceForm.LOWER_FACE, 0.12, PRESSURE));
    assertRefused(
        "windSpeed past the sphere must be 0 or keep Re in [3.5, 76000.0]",
        () -> FilmCoefficient.windyAir(FaceForm.SPHERE, 0.1, 0.001, PRESSURE));
    assertRefused(
        "windSpeed past the sphere must be 0 or keep Re in [3.5, 76000.0]",
        () -> FilmCoefficient.windyAir(FaceForm.SPHERE, 0.1, 30, PRESSURE));
    assertRefused(
        "length must be finite and greater than 0, was 0.0",
        () -> FilmCoefficient.stillAir(FaceForm.SPHERE, 0, PRESSURE));
    assertRefused(
        "windSpeed must be finite and at least 0, was -1.0",
        () -> FilmCoefficient.windyAir(FaceForm.SPHERE, 0.1, -1, PRESSURE));
    assertRefused(
        "pressure must be in [20000.0, 200000.0], was 1.0",
        () -> FilmCoefficient.stillAir(FaceForm.SPHERE, 0.1, 1));
    assertRefused(
        "multiplier must be finite and at least 0, was NaN", () -> cylinder(0.1).times(Double.NaN));
  }

  private static FilmCoefficient cylinder(double diameter) {
    return FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, diameter, PRESSURE);
  }

  private static void assertRefused(String start, Executable call) {
    String message =
        String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
    assertTrue(message.startsWith(start), message);
  }
}
