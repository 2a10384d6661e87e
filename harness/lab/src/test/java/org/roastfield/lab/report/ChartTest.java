package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ChartTest {

  private static final List<Double> X = List.of(0.0, 5.0, 10.0);

  private static Chart chart() {
    return Chart.of("Cores <made up>", "time, min", "°C")
        .band(X, List.of(1.0, 2.0, 3.0), List.of(3.0, 4.0, 6.0))
        .curve("core", X, List.of(2.0, 3.0, 4.0))
        .rings(List.of(1.0, 2.0), List.of(2.5, Double.NaN));
  }

  @Test
  void everyPart_isDrawn_andTheCurveIsNamed() {
    Document svg = SvgReader.parse(chart().svg());
    List<Element> paths = SvgReader.all(svg, "path");
    assertEquals(List.of("band", "line line-first"), classes(paths));
    assertEquals(1, SvgReader.all(svg, "circle").size());
    List<String> words = SvgReader.all(svg, "text").stream().map(Element::getTextContent).toList();
    assertTrue(words.containsAll(List.of("core", "time, min", "°C")), words.toString());
  }

  private static List<String> classes(List<Element> elements) {
    return elements.stream().map(element -> element.getAttribute("class")).toList();
  }

  /** All of the band has room, also where it goes beyond the curves. */
  @Test
  void axes_spanAllParts() {
    Document svg = SvgReader.parse(chart().svg());
    String band = SvgReader.all(svg, "path").get(0).getAttribute("d");
    Layout layout = Layout.withoutStages().get(0);
    assertTrue(band.startsWith("M" + Numbers.coordinate(layout.plotLeft()) + " "), band);
    double highest = layout.plotBottom();
    for (String place : band.replaceAll("[MLZ]", " ").trim().split(" {2,}", -1)) {
      highest = Math.min(highest, Double.parseDouble(place.split(" ", -1)[1]));
    }
    assertTrue(highest > layout.plotTop(), "highest " + highest);
  }

  @Test
  void html_isAnImageOfTheSvg_withItsDescription() {
    Element image = SvgReader.all(SvgReader.parse(chart().html()), "img").get(0);
    String data = image.getAttribute("src").replaceFirst("^data:image/svg\\+xml;base64,", "");
    assertEquals(
        chart().svg(), new String(Base64.getDecoder().decode(data), StandardCharsets.UTF_8));
    assertEquals(
        "Cores <made up>. °C over time, min. core: from 2.0 at 0.0 to 4.0 at 10.0.",
        image.getAttribute("alt"));
  }

  @Test
  void chart_staysAsItWas_whenAnotherIsMadeOfIt() {
    Chart chart = chart();
    String before = chart.svg();
    assertFalse(chart.curve("other", X, X).svg().equals(before));
    assertEquals(before, chart.svg());
  }

  @Test
  void wrongParts_areNamed() {
    Chart four = chart().curve("b", X, X).curve("c", X, X).curve("d", X, X);
    assertEquals(
        "curves must be at most 4, e was the fifth",
        assertThrows(IllegalArgumentException.class, () -> four.curve("e", X, X)).getMessage());
    assertEquals(
        "y must be as many as x, which are 3, were 1",
        assertThrows(IllegalArgumentException.class, () -> four.rings(X, List.of(1.0)))
            .getMessage());
    Chart empty = Chart.of("nothing", "", "");
    assertEquals(
        "chart must have a point, had none: nothing",
        assertThrows(IllegalArgumentException.class, empty::svg).getMessage());
  }
}
