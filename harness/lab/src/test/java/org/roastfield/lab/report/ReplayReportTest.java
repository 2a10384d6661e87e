package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.replay.Compared;
import org.roastfield.lab.replay.ReplayResult;
import org.w3c.dom.Element;

class ReplayReportTest {

  private static final CookFile FILE = ReportFixtures.roast("Boathouse loin");
  private static final ReplayResult REPLAY = ReportFixtures.replay(FILE, true);

  @Test
  void report_isTheSameEveryTime() {
    assertEquals(html("synthetic", REPLAY), html("synthetic", ReportFixtures.replay(FILE, true)));
  }

  @Test
  void report_standsAloneAndSpeaks() {
    String html = html("synthetic", REPLAY);
    PageChecks.assertStandsAlone(html);
    PageChecks.assertFiguresSpeak(html, 1);
    PageChecks.assertTextInside(html);
  }

  @Test
  void panels_showCoreErrorAndSurroundings() {
    assertEquals(
        List.of(
            "Core temperature, measured and computed",
            "Error of the computed core",
            "Surroundings"),
        wideTitles(html("synthetic", REPLAY)));
  }

  @Test
  void surroundingsThatWereNotLogged_areNotDrawn() {
    String html = html("synthetic", ReportFixtures.replay(FILE, false));
    assertEquals(2, wideTitles(html).size());
    assertTrue(html.contains("The log has no readings of the surroundings."));
    assertTrue(html.contains("Surroundings as the cook file states them"));
  }

  @Test
  void table_holdsMeasuredComputedAndTheirDifference() {
    Element figure = SvgReader.all(SvgReader.parse(html("synthetic", REPLAY)), "figure").get(0);
    List<Element> rows = SvgReader.all(figure, "tr");
    assertTrue(rows.size() > 20, "rows: " + rows.size());
    for (Element row : rows.subList(1, rows.size())) {
      List<Element> cells = SvgReader.all(row, "td");
      double difference = number(cells.get(2)) - number(cells.get(1));
      assertEquals(difference, number(cells.get(3)), 0.11);
    }
  }

  @Test
  void syntheticLog_isMarked() {
    assertTrue(html("synthetic, generated from seed 1", REPLAY).contains("Synthetic log"));
    assertFalse(html("measured in a shed", REPLAY).contains("Synthetic log"));
  }

  @Test
  void temperatureNeverReached_isSaidSo() {
    assertTrue(html("x", REPLAY).contains("<td>not reached</td><td>not reached</td><td>–</td>"));
  }

  @Test
  void tableOfErrors_saysWhatWasComparedAndWhatEvaporated() {
    String html = html("x", REPLAY);
    assertTrue(html.contains("<td>the true core</td>"), html);
    assertTrue(html.contains("<td>1.00 kg/m²</td>"), html);
  }

  @Test
  void hostileComment_isShownAsText() {
    String html = html("</p><script>alert(1)</script>", REPLAY);
    PageChecks.assertStandsAlone(html);
    assertTrue(html.contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
  }

  @Test
  void replayWithoutReadings_isRefused() {
    ReplayResult empty =
        new ReplayResult(
            new Compared(
                "the true core",
                false,
                List.of(),
                REPLAY.errors(),
                List.of(),
                List.of(),
                REPLAY.compared().water()),
            REPLAY.chamber(),
            true,
            281,
            false,
            List.of(),
            REPLAY.simulation(),
            Optional.empty());
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> html("x", empty));
    assertEquals("replay must hold a reading of the core, held none", thrown.getMessage());
  }

  private static String html(String comment, ReplayResult replay) {
    return ReplayReport.html(FILE, ReportFixtures.log(comment), replay, ReportFixtures.manifest());
  }

  private static List<String> wideTitles(String html) {
    return SvgReader.all(SvgReader.parse(html), "svg").stream()
        .filter(svg -> ((Element) svg.getParentNode()).getAttribute("class").equals("wide"))
        .map(svg -> SvgReader.all(svg, "title").get(0).getTextContent())
        .toList();
  }

  private static double number(Element cell) {
    return Double.parseDouble(cell.getTextContent().replace('−', '-'));
  }
}
