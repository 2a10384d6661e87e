package org.roastfield.core.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GridTest {

  private static final double EXACT = 1e-10;

  static Stream<Grid> grids() {
    return Stream.of(
        Grid.symmetric(0, 40, 0.01, 0.1),
        Grid.symmetric(1, 40, 0.01, 0.1),
        Grid.symmetric(2, 40, 0.01, 0.1),
        Grid.symmetric(2, 6, 0.001, 0.1),
        Grid.symmetric(1, 20, 1.0 / 20, 1),
        Grid.twoSided(40, 0.005, 0.05),
        Grid.twoSided(7, 0.005, 0.05),
        Grid.twoSided(20, 1.0 / 20, 0.5));
  }

  @ParameterizedTest
  @MethodSource("grids")
  void cells_fillTheBody(Grid grid) {
    assertEquals(0, grid.face(0));
    assertEquals(1, grid.face(grid.cells()));
    double volume = 0;
    for (int i = 0; i < grid.cells(); i++) {
      assertTrue(grid.width(i) > 0);
      volume += grid.volume(i);
    }
    assertEquals(grid.totalVolume(), volume, 1e-14);
  }

  @ParameterizedTest
  @MethodSource("grids")
  void faceClosures_areExactForParabolas(Grid grid) {
    for (int power = 0; power <= 2; power++) {
      int p = power;
      DoubleUnaryOperator field = xi -> power(xi, p);
      assertEquals(p, flow(grid, grid.upper(), 1, field), 1e-8);
      if (grid.isTwoSided()) {
        assertEquals(p == 1 ? -1 : 0, flow(grid, grid.lower(), 0, field), 1e-8);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("grids")
  void readings_areExactForParabolas(Grid grid) {
    double[] averages = averages(grid, xi -> 3 + 2 * xi * xi);
    for (double xi = 0; xi <= 1; xi += 0.0625) {
      assertEquals(3 + 2 * xi * xi, Reading.at(grid, xi).of(averages, 5, 3), EXACT);
    }
  }

  /** At every boundary between cells too, where a reading changes its cells. */
  @ParameterizedTest
  @MethodSource("grids")
  void readingsBetweenCells_areExactForParabolas(Grid grid) {
    double[] averages = averages(grid, xi -> 3 + 2 * xi * xi);
    for (int f = 1; f < grid.cells(); f++) {
      for (double xi : new double[] {grid.face(f), Math.nextDown(grid.face(f))}) {
        assertEquals(3 + 2 * xi * xi, Reading.at(grid, xi).of(averages, 5, 3), EXACT);
      }
    }
  }

  /**
   * A place and its mirror image may fall on either side of a boundary between cells by rounding.
   */
  @ParameterizedTest
  @ValueSource(ints = {20, 40, 80})
  void readingsBetweenCells_areMirrored(int cells) {
    Grid grid = Grid.twoSided(cells, 0.005, 0.1);
    double[] averages = averages(grid, xi -> Math.pow(xi - 0.5, 4));
    for (int f = 1; f < grid.cells(); f++) {
      double[] near = {grid.face(f), Math.nextDown(grid.face(f)), Math.nextUp(grid.face(f))};
      for (double xi : near) {
        double value = Reading.at(grid, xi).of(averages, 0.0625, 0.0625);
        assertEquals(value, Reading.at(grid, 1 - xi).of(averages, 0.0625, 0.0625), 1e-12);
      }
    }
  }

  /** A face that jumps lifts the readings next to it and lowers none. */
  @ParameterizedTest
  @MethodSource("grids")
  void readingsNextToAFaceThatJumps_stayBetweenItAndTheCells(Grid grid) {
    double[] averages = averages(grid, xi -> 300);
    for (double xi = 0; xi <= 1; xi += 0.0005) {
      double value = Reading.at(grid, xi).of(averages, 400, 400);
      assertTrue(value >= 300 - EXACT && value <= 400 + EXACT, "at " + xi + ": " + value);
    }
  }

  @ParameterizedTest
  @MethodSource("grids")
  void readings_keepAConstant(Grid grid) {
    double[] averages = averages(grid, xi -> 7);
    for (double xi = 0; xi <= 1; xi += 0.03125) {
      assertEquals(7, Reading.at(grid, xi).of(averages, 7, 7), EXACT);
    }
  }

  @Test
  void readingsAtTheFaces_areTheFaceValues() {
    Grid grid = Grid.twoSided(20, 0.01, 0.1);
    double[] averages = averages(grid, xi -> 300);
    assertEquals(400, Reading.at(grid, 1).of(averages, 400, 280), EXACT);
    assertEquals(280, Reading.at(grid, 0).of(averages, 400, 280), EXACT);
  }

  @Test
  void symmetricReadings_areExactForFourthPowersInTheCore() {
    for (int m = 0; m <= 2; m++) {
      Grid grid = Grid.symmetric(m, 40, 0.01, 0.1);
      double[] averages = averages(grid, xi -> 1 + xi * xi - 2 * power(xi, 4));
      for (double xi : new double[] {0, 0.1, 0.5, 0.8}) {
        double exact = 1 + xi * xi - 2 * power(xi, 4);
        assertEquals(exact, Reading.at(grid, xi).of(averages, 0, 0), EXACT);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 40, 200})
  void widths_growFromTheFaceAndAreEvenInTheCore(int cells) {
    double[] widths = Widths.capped(cells, 1, 0.002);
    double sum = 0;
    for (int i = 0; i < cells; i++) {
      sum += widths[i];
      assertTrue(i == 0 || widths[i] >= widths[i - 1] * (1 - 1e-12));
    }
    assertEquals(1, sum, 1e-12);
    assertTrue(cells < 40 || Math.abs(widths[0] - 0.002) < 1e-6);
  }

  @Test
  void coarseSurfaceCell_givesAnEvenGrid() {
    double[] widths = Widths.capped(10, 1, 0.5);
    for (double width : widths) {
      assertEquals(0.1, width, 1e-15);
    }
  }

  @Test
  void oddNumberOfCells_isMadeEvenForTwoFaces() {
    assertEquals(8, Grid.twoSided(7, 0.01, 0.1).cells());
    assertEquals(7, Grid.symmetric(0, 7, 0.01, 0.1).cells());
  }

  @Test
  void twoSidedGrid_isItsOwnMirror() {
    Grid grid = Grid.twoSided(40, 0.005, 0.05);
    int n = grid.cells();
    for (int f = 1; f < n; f++) {
      assertEquals(1 - grid.face(f), grid.face(n - f), 1e-14);
      assertEquals(grid.conductance(f), grid.conductance(n - f), 1e-9 * grid.conductance(f));
      assertEquals(grid.correctionAbove(f), -grid.correctionBelow(n - f), 1e-11);
    }
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused("exponent must be in [0, 2], was 3", () -> Grid.symmetric(3, 40, 0.01, 0.1));
    assertRefused("cells must be in [6, 100000], was 5", () -> Grid.symmetric(1, 5, 0.01, 0.1));
    assertRefused(
        "surfaceCell must be finite and greater than 0, was 0.0", () -> Grid.twoSided(40, 0, 0.1));
  }

  /** Inward flow by a closure, for exact averages and face value of a field. */
  private static double flow(
      Grid grid, FaceClosure closure, double place, DoubleUnaryOperator field) {
    double[] averages = averages(grid, field);
    return closure.face() * field.applyAsDouble(place)
        + closure.near() * averages[closure.cell()]
        + closure.next() * averages[closure.nextCell()];
  }

  /** Averages by Simpson's rule on many pieces, weighted with ξ^m. */
  private static double[] averages(Grid grid, DoubleUnaryOperator field) {
    int pieces = 200;
    double[] averages = new double[grid.cells()];
    for (int i = 0; i < grid.cells(); i++) {
      double h = grid.width(i) / (2 * pieces);
      double sum = 0;
      double volume = 0;
      for (int j = 0; j <= 2 * pieces; j++) {
        double xi = grid.face(i) + j * h;
        double weight = j == 0 || j == 2 * pieces ? 1 : j % 2 == 1 ? 4 : 2;
        weight *= power(xi, grid.exponent());
        sum += weight * field.applyAsDouble(xi);
        volume += weight;
      }
      averages[i] = sum / volume;
    }
    return averages;
  }

  private static double power(double base, int exponent) {
    return Math.pow(base, exponent);
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
