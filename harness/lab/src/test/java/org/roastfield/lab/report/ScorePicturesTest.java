package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.score.ForecastCase;
import org.roastfield.lab.score.Predictive;
import org.roastfield.lab.score.ScoreSummary;
import org.w3c.dom.Element;

class ScorePicturesTest {

  /** Times even between two and four hours, forecast as even between two other times. */
  private static ScoreSummary even(int cooks, double low, double high) {
    double[] draws = new double[2000];
    for (int i = 0; i < draws.length; i++) {
      draws[i] = 3600 * (low + (high - low) * (i + 0.5) / draws.length);
    }
    Predictive forecast = Predictive.ofDraws(draws);
    List<ForecastCase> cases = new ArrayList<>();
    for (int i = 0; i < cooks; i++) {
      double outcome = 3600 * (2 + 2 * (i + 0.5) / cooks);
      cases.add(new ForecastCase("cook-" + i, forecast, outcome));
    }
    return ScoreSummary.of(cases, new SplittableRandom(1));
  }

  @Test
  void figure_standsAloneAndSpeaks() {
    for (int cooks : new int[] {1, 7, 40, 400}) {
      String html = page(even(cooks, 2, 4));
      PageChecks.assertStandsAlone(html);
      PageChecks.assertFiguresSpeak(html, 1);
      PageChecks.assertTextInside(html);
      assertEquals(html, page(even(cooks, 2, 4)));
    }
  }

  @Test
  void rightForecasts_areEvenAndHoldAsSaid() {
    Element figure = figure(even(400, 2, 4));
    List<List<String>> rows = cells(figure);
    for (int i = 0; i < 10; i++) {
      assertEquals("40", rows.get(i).get(0));
      assertEquals("30 to 50", rows.get(i).get(1));
    }
    assertEquals(List.of("200 of 400", "50 %", "45 to 55 %", "60.0"), rows.get(10));
    assertEquals("360 of 400", rows.get(12).get(0));
    assertTrue(figure.getTextContent().contains("a chance of 1.000"));
  }

  @Test
  void tooSureForecasts_heapAtBothEnds() {
    Element figure = figure(even(400, 2.5, 3.5));
    List<List<String>> rows = cells(figure);
    assertEquals("120", rows.get(0).get(0));
    assertEquals("20", rows.get(5).get(0));
    assertEquals("120", rows.get(9).get(0));
    assertTrue(figure.getTextContent().contains("less than 0.001"));
  }

  @Test
  void fewCooks_areNotTested() {
    assertTrue(figure(even(7, 2, 4)).getTextContent().contains("Too few cooks for a test."));
    assertFalse(figure(even(10, 2, 4)).getTextContent().contains("Too few cooks for a test."));
  }

  @Test
  void stepsAndBounds_areDrawnToScale() {
    Element wide = SvgReader.all(figure(even(400, 2.5, 3.5)), "svg").get(0);
    String steps =
        SvgReader.all(wide, "path").stream()
            .filter(path -> SvgReader.hasClass(path, "line-core"))
            .map(path -> path.getAttribute("d"))
            .findFirst()
            .orElseThrow();
    Layout layout = Layout.low(0.8).get(0);
    Axis up = new Axis(0, 1.08 * 120, layout.plotBottom(), layout.plotTop());
    assertTrue(steps.startsWith("M" + place(layout.plotLeft(), up.at(120))), steps);
    assertTrue(steps.contains(place(layout.plotRight(), up.at(120))), steps);
    double middle = (layout.plotLeft() + layout.plotRight()) / 2;
    double tenth = (layout.plotRight() - layout.plotLeft()) / 10;
    assertTrue(steps.contains("L" + place(middle + 4 * tenth, up.at(20))), steps);
  }

  private static String place(double x, double y) {
    return Numbers.coordinate(x) + " " + Numbers.coordinate(y);
  }

  /**
   * Of even times over two hours: CRPS a sixth of them; interval score 0.9/7, with 0.9 the sum of p
   * (1 − p) over its seven quantiles; absolute error a quarter.
   */
  @Test
  void scores_standSideBySide() {
    Map<String, ScoreSummary> forecasters = new LinkedHashMap<>();
    forecasters.put("with profile", even(400, 2, 4));
    forecasters.put("straight line", even(400, 3, 3));
    Table table = ScorePictures.scores(forecasters);
    assertEquals(
        List.of("with profile", "400", "90 %", "108.0", "20.0", "15.4", "0.0", "30.0"),
        table.rows().get(0));
    assertEquals(
        List.of("straight line", "400", "0 %", "0.0", "30.0"), table.rows().get(1).subList(0, 5));
  }

  private static String page(ScoreSummary summary) {
    return Page.start("Scores", "Test", List.of(), List.of())
        .figure(new ScorePictures(summary).figure("Forecasts at half time"))
        .finished();
  }

  private static Element figure(ScoreSummary summary) {
    return SvgReader.all(SvgReader.parse(page(summary)), "figure").get(0);
  }

  private static List<List<String>> cells(Element figure) {
    return SvgReader.all(figure, "tr").stream()
        .map(row -> SvgReader.all(row, "td").stream().map(Element::getTextContent).toList())
        .filter(row -> !row.isEmpty())
        .toList();
  }
}
