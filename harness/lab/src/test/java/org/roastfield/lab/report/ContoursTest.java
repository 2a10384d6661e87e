package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class ContoursTest {

  @Test
  void plane_isCutExactlyWhereItHasTheLevel() {
    Field plane = field(9, 0, 4, 0, 2, (x, y) -> 3 * x + y);
    List<List<Point>> lines = Contours.lines(plane, 5);
    assertEquals(1, lines.size());
    for (Point point : lines.get(0)) {
      assertEquals(5, 3 * point.x() + point.y(), 1e-12);
    }
    double lowest = lines.get(0).stream().mapToDouble(Point::y).min().orElseThrow();
    double highest = lines.get(0).stream().mapToDouble(Point::y).max().orElseThrow();
    assertEquals(0, lowest, 1e-12);
    assertEquals(2, highest, 1e-12);
  }

  @Test
  void plane_outlineHoldsTheAreaAboveTheLevel() {
    Field plane = field(9, 0, 4, 0, 2, (x, y) -> x);
    assertEquals(2 * (4 - 1.3), area(Contours.outlines(plane, 1.3)), 1e-12);
  }

  @Test
  void plane_belowAllLevelsIsOutlinedByTheRim() {
    Field plane = field(5, 0, 4, 0, 2, (x, y) -> x);
    List<List<Contours.Vertex>> outlines = Contours.outlines(plane, -1);
    assertEquals(8, area(outlines), 1e-12);
    assertTrue(outlines.stream().flatMap(List::stream).allMatch(Contours.Vertex::onRim));
    assertEquals(List.of(), Contours.lines(plane, -1));
    assertEquals(List.of(), Contours.outlines(plane, 5));
  }

  @Test
  void cone_contourIsACircleToSecondOrder() {
    assertTrue(worstRadius(21) < 0.02);
    double coarse = worstRadius(21);
    double fine = worstRadius(41);
    assertTrue(fine < coarse / 3, () -> "coarse " + coarse + ", fine " + fine);
  }

  @Test
  void ring_isOutlinedInsideAndOutside() {
    Field ring = field(161, -2, 2, -2, 2, (x, y) -> -Math.abs(Math.hypot(x, y) - 1));
    List<List<Contours.Vertex>> outlines = Contours.outlines(ring, -0.25);
    assertEquals(2, outlines.size());
    assertEquals(Math.PI * (1.25 * 1.25 - 0.75 * 0.75), area(outlines), 0.01);
  }

  @Test
  void saddle_joinsWhatItsMeanJoins() {
    double[] two = {0, 1};
    Field low = Field.of(two, two, new double[][] {{1, 0}, {0, 1}});
    assertEquals(2, Contours.outlines(low, 0.6).size());
    assertEquals(1, Contours.outlines(low, 0.4).size());
  }

  @Test
  void unevenGrid_isFollowedInItsOwnCoordinates() {
    double[] xs = {0, 0.1, 0.5, 3};
    double[] ys = {0, 2, 2.5};
    double[][] values = new double[xs.length][ys.length];
    for (int i = 0; i < xs.length; i++) {
      for (int j = 0; j < ys.length; j++) {
        values[i][j] = ys[j];
      }
    }
    List<List<Point>> lines = Contours.lines(Field.of(xs, ys, values), 1);
    assertEquals(1, lines.size());
    lines.get(0).forEach(point -> assertEquals(1, point.y(), 1e-12));
  }

  @Test
  void missingValue_leavesAHoleToItsNeighboursAndNoLine() {
    Field holed = field(5, 0, 4, 0, 4, (x, y) -> x == 2 && y == 2 ? Double.NaN : 1);
    assertEquals(16 - 2, area(Contours.outlines(holed, 0)), 1e-12);
    assertEquals(List.of(), Contours.lines(holed, 0));
  }

  private static double worstRadius(int nodes) {
    Field cone = field(nodes, -1, 1, -1, 1, Math::hypot);
    List<List<Point>> lines = Contours.lines(cone, 0.7);
    assertEquals(1, lines.size());
    List<Point> circle = lines.get(0);
    assertEquals(circle.get(0), circle.get(circle.size() - 1));
    return circle.stream()
        .mapToDouble(point -> Math.abs(Math.hypot(point.x(), point.y()) - 0.7))
        .max()
        .orElseThrow();
  }

  /**
   * Area on the left of the outlines, by the shoelace formula: negative if they ran the wrong way
   * round.
   */
  private static double area(List<List<Contours.Vertex>> outlines) {
    double doubled = 0;
    for (List<Contours.Vertex> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        Point a = outline.get(i).place();
        Point b = outline.get((i + 1) % outline.size()).place();
        doubled += a.x() * b.y() - b.x() * a.y();
      }
    }
    return doubled / 2;
  }

  private static Field field(
      int nodes, double left, double right, double low, double high, DoubleBinaryOperator value) {
    double[] xs = new double[nodes];
    double[] ys = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      xs[i] = left + (right - left) * i / (nodes - 1);
      ys[i] = low + (high - low) * i / (nodes - 1);
    }
    double[][] values = new double[nodes][nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        values[i][j] = value.applyAsDouble(xs[i], ys[j]);
      }
    }
    return Field.of(xs, ys, values);
  }
}
