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
        Grid.symmetric(0.3, 40, 0.01, 0.1),
        Grid.symmetric(1.46, 40, 0.01, 0.1),
        Grid.symmetric(4, 20, 1.0 / 20, 1),
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
      DoubleUnaryOperator field = xi -> Math.pow(xi, p);
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
    for (double m : new double[] {0, 0.1, 0.5, 1, 1.3, 2, 2.9, 4}) {
      Grid grid = Grid.symmetric(m, 40, 0.01, 0.1);
      double[] averages = averages(grid, xi -> 1 + xi * xi - 2 * Math.pow(xi, 4));
      for (double xi : new double[] {0, 0.1, 0.5, 0.8}) {
        double exact = 1 + xi * xi - 2 * Math.pow(xi, 4);
        assertEquals(exact, Reading.at(grid, xi).of(averages, 0, 0), EXACT);
      }
    }
  }

  /**
   * Near the middle of a symmetric body, for whole exponents and others. At m = 2.5 and more the
   * correction at the innermost boundary would exceed its bound, so squares alone are exact there.
   */
  @Test
  void fluxesInTheCore_areExactForSquaresAndFourthPowers() {
    for (double m : new double[] {0, 0.1, 0.5, 1, 1.3, 2, 2.9, 4}) {
      Grid grid = Grid.symmetric(m, 40, 0.01, 0.1);
      double[] square = averages(grid, xi -> xi * xi);
      double[] fourth = averages(grid, xi -> Math.pow(xi, 4));
      for (int f = 1; grid.face(f) < 0.4; f++) {
        double area = Math.pow(grid.face(f), m);
        double flow = grid.conductance(f) * (square[f] - square[f - 1]);
        flow += 2 * (m + 1) * (grid.correctionBelow(f) + grid.correctionAbove(f));
        assertEquals(2 * grid.face(f) * area, flow, 1e-10);
        if (f == 1 && m >= 2.5) {
          assertEquals(0, grid.correctionAbove(f));
          continue;
        }
        flow = grid.conductance(f) * (fourth[f] - fourth[f - 1]);
        flow += 4 * (m + 3) * grid.correctionBelow(f) * square[f - 1];
        flow += 4 * (m + 3) * grid.correctionAbove(f) * square[f];
        assertEquals(4 * Math.pow(grid.face(f), 3) * area, flow, 1e-10);
      }
    }
  }

  /** Nothing happens at a whole exponent: shapes near a slab or a cylinder are near them. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 2})
  void gridsNextToAWholeExponent_areNextToItsGrid(double m) {
    Grid whole = Grid.symmetric(m, 40, 0.01, 0.1);
    Grid next = Grid.symmetric(m + 1e-9, 40, 0.01, 0.1);
    for (int f = 1; f < whole.cells(); f++) {
      assertEquals(whole.volume(f), next.volume(f), 1e-8 * whole.volume(f));
      assertEquals(whole.conductance(f), next.conductance(f), 1e-6 * whole.conductance(f));
      assertEquals(whole.correctionAbove(f), next.correctionAbove(f), 1e-6 * whole.volume(f));
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
      assertEquals(grid.conductance(f), grid.conductance(n - f));
      assertEquals(grid.correctionAbove(f), -grid.correctionBelow(n - f), f == n / 2 ? 1e-11 : 0);
      assertEquals(grid.volume(f), grid.volume(n - 1 - f));
    }
    assertEquals(grid.lower().near(), grid.upper().near());
    assertEquals(grid.lower().next(), grid.upper().next());
    assertEquals(grid.lower().face(), grid.upper().face());
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "exponent must be in [0.0, 4.0], was 5.0", () -> Grid.symmetric(5, 40, 0.01, 0.1));
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

  /**
   * Averages weighted with ξ^m, by Gauss's rule on many pieces of u = ξ^¼, in which powers of ξ
   * that are not whole are smooth enough.
   */
  private static double[] averages(Grid grid, DoubleUnaryOperator field) {
    double[] nodes = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
    double[] weights = {5, 8, 5};
    int pieces = 200;
    double[] averages = new double[grid.cells()];
    for (int i = 0; i < grid.cells(); i++) {
      double from = Math.pow(grid.face(i), 0.25);
      double h = (Math.pow(grid.face(i + 1), 0.25) - from) / (2 * pieces);
      double sum = 0;
      double volume = 0;
      for (int j = 0; j < 3 * pieces; j++) {
        double u = from + (2 * (j / 3) + 1 + nodes[j % 3]) * h;
        double xi = u * u * u * u;
        double weight = weights[j % 3] * u * u * u * Math.pow(xi, grid.exponent());
        sum += weight * field.applyAsDouble(xi);
        volume += weight;
      }
      averages[i] = sum / volume;
    }
    return averages;
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
