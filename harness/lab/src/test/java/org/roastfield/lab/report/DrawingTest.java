package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class DrawingTest {

  private static final Layout LAYOUT = Layout.both().get(0);

  @Test
  void axis_putsLowAndHighAtItsEnds() {
    Axis down = new Axis(10, 30, 200, 100);
    assertEquals(200, down.at(10), 1e-12);
    assertEquals(100, down.at(30), 1e-12);
    assertEquals(150, down.at(20), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new Axis(1, 1, 0, 10));
    assertThrows(IllegalArgumentException.class, () -> new Axis(Double.NaN, 1, 0, 10));
  }

  @Test
  void curve_leavesAGapWhereANumberIsMissing() {
    Curve curve =
        new Curve(
            "probe",
            Curve.Role.PROBE_ONE,
            List.of(
                new Point(0, 1),
                new Point(1, 2),
                new Point(2, Double.NaN),
                new Point(3, 5),
                new Point(4, 3)));
    Element path = SvgReader.all(draw(List.of(curve)), "path").get(0);
    assertEquals(3, path.getAttribute("d").split("M", -1).length);
  }

  @Test
  void names_keepApartAndInside() {
    List<Curve> curves =
        IntStream.range(0, 5)
            .mapToObj(i -> new Curve("probe " + i, Curve.Role.PROBE_TWO, line(5 + 0.01 * i)))
            .toList();
    List<Element> names =
        SvgReader.all(draw(curves), "text").stream()
            .filter(text -> SvgReader.hasClass(text, "name"))
            .toList();
    assertEquals(5, names.size());
    for (int i = 1; i < names.size(); i++) {
      double gap = SvgReader.number(names.get(i), "y") - SvgReader.number(names.get(i - 1), "y");
      assertTrue(gap > 13.8, "gap " + gap);
    }
  }

  @Test
  void mark_standsClearOfLinesWhereItCan() {
    Plot plot = plot();
    List<Point> falling = List.of(new Point(0, 10), new Point(5, 5), new Point(10, 0));
    plot.curve(new Curve("falling", Curve.Role.CORE, falling));
    plot.mark(new Point(5, 5), "peak 61.3 °C");
    Element words =
        SvgReader.all(SvgReader.parse(plot.finished()), "text").stream()
            .filter(text -> SvgReader.hasClass(text, "words"))
            .findFirst()
            .orElseThrow();
    Room room = SvgReader.room(words);
    for (int i = 0; i <= 100; i++) {
      Point place = plot.place(new Point(i / 10.0, 10 - i / 10.0));
      assertFalse(Room.around(place, 0.1, 0.1).meets(room), "line under the words");
    }
  }

  @Test
  void band_runsForthAndBack() {
    Plot plot = plot();
    plot.band(line(6), line(4));
    Element band = SvgReader.all(SvgReader.parse(plot.finished()), "path").get(0);
    assertTrue(band.getAttribute("d").endsWith("Z"));
    assertEquals(4, band.getAttribute("d").split("[ML]").length - 1);
  }

  @Test
  void thinnedLine_staysWithinItsTolerance() {
    List<Point> wave = new ArrayList<>();
    for (int i = 0; i <= 2000; i++) {
      wave.add(new Point(i * 0.3, 100 * StrictMath.sin(i / 100.0)));
    }
    List<Point> thinned = PathData.thinned(wave);
    assertTrue(thinned.size() < 200, "kept " + thinned.size());
    for (Point point : wave) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 1; i < thinned.size(); i++) {
        nearest = Math.min(nearest, distance(point, thinned.get(i - 1), thinned.get(i)));
      }
      assertTrue(nearest <= 0.12, "distance " + nearest);
    }
  }

  @Test
  void curve_isCutByStraightLines() {
    Curve part = new Curve("", Curve.Role.CORE, line(3)).between(2, 4);
    assertEquals(List.of(new Point(2, 3), new Point(4, 3)), part.points());
    assertTrue(Double.isNaN(new Curve("", Curve.Role.CORE, line(3)).at(11)));
  }

  @Test
  void stageStrip_namesWhatHasRoomAndNumbersTheRest() {
    Plot plot = plot();
    StageStrip.draw(
        plot,
        List.of(new Span("gentle", 0, 9), new Span("sear", 9, 9.2), new Span("rest", 9.2, 10)));
    List<String> words =
        SvgReader.all(SvgReader.parse(plot.finished()), "text").stream()
            .filter(text -> SvgReader.hasClass(text, "stage"))
            .map(Element::getTextContent)
            .toList();
    assertEquals(List.of("1 gentle", "2", "3"), words);
  }

  @Test
  void shortened_countsLettersNotUnits() {
    assertEquals("🍖🍖🍖", Letters.shortened("🍖🍖🍖", 3));
    assertEquals("🍖…", Letters.shortened("🍖🍖🍖", 2));
  }

  @Test
  void isotherms_areFineInMeatAndCoarseInCrust() {
    List<Double> levels = Isotherms.between(5.2, 231);
    assertEquals(10.0, levels.get(0));
    assertEquals(List.of(95.0, 100.0, 150.0, 200.0), levels.subList(17, 21));
    assertEquals(List.of(), Isotherms.between(20, 20));
    assertEquals("20.2", Isotherms.text(Isotherms.between(20, 22), 0));
  }

  @Test
  void heatMap_linesLieWhereTheFieldHasTheirLevel() {
    double[] times = {0, 1000, 2000};
    double[] depths = {0, 10, 20};
    double[][] values = {{20, 20, 20}, {40, 40, 40}, {60, 60, 60}};
    List<Span> stages = List.of(new Span("gentle", 0, 2000));
    HeatMap map =
        new HeatMap(
            Field.of(times, depths, values), List.of(30.0, 50.0), stages, TimeBase.elapsed());
    Document svg = SvgReader.parse(map.panel("map").drawings().get(0));
    List<String> lines =
        SvgReader.all(svg, "path").stream()
            .filter(path -> SvgReader.hasClass(path, "isotherm"))
            .map(path -> path.getAttribute("d"))
            .toList();
    double quarter = 0.75 * LAYOUT.plotLeft() + 0.25 * LAYOUT.plotRight();
    double rest = 0.25 * LAYOUT.plotLeft() + 0.75 * LAYOUT.plotRight();
    assertEquals(List.of(upright(quarter), upright(rest)), lines);
  }

  private static double distance(Point point, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double share =
        ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / (dx * dx + dy * dy);
    double inside = Math.max(0, Math.min(1, share));
    return Math.hypot(point.x() - from.x() - inside * dx, point.y() - from.y() - inside * dy);
  }

  private static String upright(double x) {
    String place = Numbers.coordinate(x);
    return "M"
        + place
        + " "
        + Numbers.coordinate(LAYOUT.plotBottom())
        + "L"
        + place
        + " "
        + Numbers.coordinate(LAYOUT.plotTop());
  }

  private static List<Point> line(double y) {
    return List.of(new Point(0, y), new Point(10, y));
  }

  private static Plot plot() {
    return Plot.start(LAYOUT, "title", "description", new Range(0, 10), new Range(0, 10));
  }

  private static Document draw(List<Curve> curves) {
    Plot plot = plot();
    curves.forEach(plot::curve);
    return SvgReader.parse(plot.names(curves).finished());
  }
}
