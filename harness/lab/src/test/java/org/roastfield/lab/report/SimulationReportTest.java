package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SimulationReportTest {

  private static final String NAME = "Boathouse loin";
  private static final String ROAST = ReportFixtures.roastReport(NAME);
  private static final String STEAK = ReportFixtures.steakReport();

  @Test
  void report_isTheSameEveryTimeAndInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertEquals(ROAST, ReportFixtures.roastReport(NAME));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void report_standsAlone() {
    PageChecks.assertStandsAlone(ROAST);
    PageChecks.assertStandsAlone(STEAK);
  }

  @Test
  void figures_haveTitleDescriptionAndTable() {
    PageChecks.assertFiguresSpeak(ROAST, 8);
    PageChecks.assertFiguresSpeak(STEAK, 8);
  }

  @Test
  void drawings_clipNoText() {
    PageChecks.assertTextInside(ROAST);
    PageChecks.assertTextInside(STEAK);
  }

  @Test
  void hostileName_isShownAsText() {
    String name = "<script>alert(1)</script><img src=x onerror=\"a\">&amp; \u202E'";
    String html = ReportFixtures.roastReport(name);
    PageChecks.assertStandsAlone(html);
    assertFalse(html.contains("<script"));
    Element heading = SvgReader.all(SvgReader.parse(html), "h1").get(0);
    assertEquals(name.replace('\u202E', '\uFFFD'), heading.getTextContent());
  }

  @Test
  void madeUpNumbers_areMarkedBeforeAnythingElse() {
    Document page = SvgReader.parse(ROAST);
    Element header = SvgReader.all(page, "header").get(0);
    assertTrue(header.getTextContent().contains("Made-up numbers"));
  }

  @Test
  void cautions_standInTheSectionOfTheTimetable() {
    Element first = SvgReader.all(SvgReader.parse(ROAST), "section").get(0);
    assertEquals(1, SvgReader.all(first, "table").size());
    String text = first.getTextContent();
    assertTrue(text.contains("check with a thermometer you trust"), text);
    assertTrue(text.contains("published minimum"), text);
    assertTrue(text.contains("carbon monoxide"), text);
  }

  @Test
  void wording_permitsNothing() {
    for (String html : List.of(ROAST, STEAK)) {
      String words =
          SvgReader.parse(html).getDocumentElement().getTextContent().toLowerCase(Locale.ROOT);
      for (String claim :
          List.of("is safe", "safe to", "ready to eat", "ready to serve", "is done")) {
        assertFalse(words.contains(claim), claim);
      }
    }
  }

  @Test
  void timetable_showsMilestonesWithClockTimesAndBothScales() {
    Element table = SvgReader.all(SvgReader.parse(ROAST), "table").get(0);
    List<Element> rows = SvgReader.all(table, "tr");
    Element pull = rows.get(2);
    String text = pull.getTextContent();
    assertTrue(text.contains("gentle ends"), text);
    assertTrue(text.contains("52.0\u00a0°C (126\u00a0°F)"), text);
    assertTrue(SvgReader.all(pull, "th").get(0).getTextContent().matches("16:0\\d"), text);
  }

  @Test
  void carryoverPeak_isMarkedWhereThereIsOne() {
    assertTrue(ROAST.contains(">carryover peak "));
    assertFalse(ROAST.contains("still rising at the end</text>"));
  }

  @Test
  void risingCore_isNotCalledAPeak() {
    assertFalse(STEAK.contains(">carryover peak "));
    assertTrue(STEAK.contains("still rising at the end</text>"));
  }

  @Test
  void numbersOfTheTraces_areThoseOfTheComputation() {
    CookFile file = ReportFixtures.roast(NAME);
    SimulationResult result = ReportFixtures.result(file);
    Element figure = SvgReader.all(SvgReader.parse(ROAST), "figure").get(0);
    List<Element> rows = SvgReader.all(figure, "tr");
    int compared = 0;
    for (Element row : rows.subList(1, rows.size())) {
      double minutes = Double.parseDouble(SvgReader.all(row, "td").get(0).getTextContent());
      double core = Double.parseDouble(SvgReader.all(row, "td").get(1).getTextContent());
      double wanted = result.core().at(Math.min(60 * minutes, result.endTime())) - 273.15;
      assertEquals(wanted, core, 0.11);
      compared++;
    }
    assertTrue(compared >= 10, "rows: " + compared);
  }

  @Test
  void turns_countAsOneStage() {
    assertTrue(STEAK.contains("2 sear 15:"));
    assertFalse(STEAK.contains("sear, turn"));
  }

  @Test
  void faces_areApartWhereTheyDiffer() {
    assertTrue(STEAK.contains(">lower face</text>"));
    assertFalse(ROAST.contains(">lower face</text>"));
    assertTrue(STEAK.contains("heat through the lower face"));
  }

  @Test
  void pictures_standAloneAsFiles() {
    CookFile file = ReportFixtures.roast(NAME);
    SimulationResult result = ReportFixtures.result(file);
    for (String svg :
        List.of(SimulationReport.traces(file, result), SimulationReport.map(file, result))) {
      Document document = SvgReader.parse(svg);
      assertEquals("svg", document.getDocumentElement().getTagName());
      assertTrue(SvgReader.all(document, "style").get(0).getTextContent().contains("--core"));
    }
  }

  @Test
  void crowdedCook_clipsNoText() {
    String html = ReportFixtures.report(ReportFixtures.crowded());
    PageChecks.assertStandsAlone(html);
    PageChecks.assertFiguresSpeak(html, 8);
    PageChecks.assertTextInside(html);
  }

  @Test
  void idleCook_isDrawnWithoutLines() {
    String html = ReportFixtures.report(ReportFixtures.idle());
    PageChecks.assertFiguresSpeak(html, 3);
    PageChecks.assertTextInside(html);
    assertFalse(html.contains("isotherm-label middle"));
  }

  @Test
  void report_isNotHeavy() {
    int bytes = STEAK.getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes < 250_000, "bytes: " + bytes);
  }
}
