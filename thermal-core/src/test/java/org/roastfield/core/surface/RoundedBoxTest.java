package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.air.DryAir;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.units.Temperatures;

/**
 * A box in still air as a lying cylinder. Faces one by one shed more than a body, since the air
 * that one has cooled reaches the next.
 */
class RoundedBoxTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double FACE = Temperatures.celsius(60);

  @Test
  void girth_isTheShorterWayAround() {
    assertEquals(2 * (0.06 + 0.12), Compact.ofBox(0.06, 0.12, 0.3).girth(), 1e-15);
    assertEquals(2 * (0.06 + 0.12), Compact.ofBox(0.3, 0.06, 0.12).girth(), 1e-15);
    assertEquals(0.1, Compact.ofCylinder(0.1, 0.15).roundedDiameter(), 1e-15);
    assertEquals(2 * 0.04 + 0.05 * Math.PI, Compact.ofCylinder(0.1, 0.04).girth(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 0.05, 0.05",
    "0.06, 0.06, 0.25",
    "0.05, 0.10, 0.20",
    "0.06, 0.12, 0.30",
    "0.04, 0.16, 0.30",
    "0.10, 0.10, 0.30",
    "0.10, 0.20, 0.30"
  })
  void roundedBox_isBetweenItsFacesOneByOneAndAWholeBody(
      double thickness, double width, double length) {
    for (double celsius : new double[] {20, 110, 200}) {
      double air = Temperatures.celsius(celsius);
      double rounded =
          FilmCoefficient.stillAir(
                  FaceForm.HORIZONTAL_CYLINDER,
                  Compact.ofBox(thickness, width, length).roundedDiameter(),
                  PRESSURE)
              .at(FACE, air);
      double faces = faces(thickness, width, length, air);
      double whole = wholeBody(Compact.ofBox(thickness, width, length).area(), air);
      assertTrue(rounded <= faces && rounded >= 0.78 * faces, () -> rounded + " of " + faces);
      assertEquals(1, rounded / whole, 0.25, () -> rounded + " against " + whole);
    }
  }

  /** Nu = 3.47 + 0.51 Ra^¼ with the root of the area for length [Yovanovich1987]. */
  private static double wholeBody(double area, double air) {
    double film = 0.5 * (FACE + air);
    double length = Math.sqrt(area);
    double rayleigh =
        NaturalCorrelation.rayleighPerVolume(film)
            * length
            * length
            * length
            * Math.abs(air - FACE);
    double nusselt = 3.47 + 0.51 * StrictMath.pow(rayleigh, 0.25);
    return nusselt * DryAir.conductivity(film) / length;
  }

  private static double faces(double thickness, double width, double length, double air) {
    double flat = width * length;
    double sides = 2 * thickness * (width + length);
    double perPerimeter = 0.5 * flat / (width + length);
    double upper =
        FilmCoefficient.stillAir(FaceForm.UPPER_FACE, perPerimeter, PRESSURE).at(FACE, air);
    double lower =
        FilmCoefficient.stillAir(FaceForm.LOWER_FACE, perPerimeter, PRESSURE).at(FACE, air);
    double side =
        FilmCoefficient.stillAir(FaceForm.VERTICAL_PLATE, thickness, PRESSURE).at(FACE, air);
    return (flat * (upper + lower) + sides * side) / (2 * flat + sides);
  }
}
