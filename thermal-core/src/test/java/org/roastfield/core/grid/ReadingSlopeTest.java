package org.roastfield.core.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The derivative of a reading by its place, against differences of readings. */
class ReadingSlopeTest {

  private static final double STEP = 1e-6;

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.33, 0.515, 0.77, 0.951, 0.992, 0.999})
  void symmetricBody_agreesWithDifferences(double place) {
    for (int exponent = 0; exponent <= 2; exponent++) {
      check(Grid.symmetric(exponent, 30, 0.02, 0.1), place);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.008, 0.06, 0.31, 0.62, 0.94, 0.995})
  void slabWithTwoFaces_agreesWithDifferences(double place) {
    check(Grid.twoSided(30, 0.02, 0.1), place);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void middleOfASymmetricBody_isLevel(int exponent) {
    Grid grid = Grid.symmetric(exponent, 30, 0.02, 0.1);
    assertEquals(0, value(Reading.slopeAt(grid, 0), grid), 1e-9);
  }

  private static void check(Grid grid, double place) {
    double quotient =
        (value(Reading.at(grid, place + STEP), grid) - value(Reading.at(grid, place - STEP), grid))
            / (2 * STEP);
    assertEquals(quotient, value(Reading.slopeAt(grid, place), grid), 1e-6, "at " + place);
  }

  private static double value(Reading reading, Grid grid) {
    double[] averages = new double[grid.cells()];
    for (int i = 0; i < averages.length; i++) {
      double xi = 0.5 * (grid.face(i) + grid.face(i + 1));
      averages[i] = Math.cos(3 * xi) + xi * xi * xi;
    }
    return reading.of(averages, Math.cos(3) + 1, 1);
  }
}
