package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.Published;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.plan.CookerBelief;
import org.roastfield.lab.plan.PlanAsk;
import org.roastfield.lab.plan.PlanMaker;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.SearTable;
import org.roastfield.lab.timeline.TemperatureScale;
import org.w3c.dom.Element;

/** The page of a plan. */
class PlanReportTest {

  private static final String NAME = "Boathouse pork loin";
  private static final String HOSTILE = "<script>alert(1)</script> & \\\"co\\\"";

  private static PlanSheet sheet(String name) {
    String text =
        new String(Published.porkLoinBytes(), StandardCharsets.UTF_8)
            .replace("name: " + NAME, "name: \"" + name + "\"");
    CookFile file = CookFileReader.parse("cook.yaml", text.getBytes(StandardCharsets.UTF_8));
    VariedCook cook = VariedCook.planned(file, Probe.CORE);
    PlanAsk ask =
        new PlanAsk(
            Optional.empty(),
            Optional.empty(),
            zero -> OptionalDouble.empty(),
            Probe.CORE,
            40,
            1,
            true,
            false,
            TemperatureScale.CELSIUS);
    return PlanMaker.sheet(cook, CookerBelief.population(cook), ask, Runnable::run, 1);
  }

  private static String page(String name) {
    return PlanReport.html(sheet(name), ReportFixtures.manifest());
  }

  /** The cook in the pictures, and of the cautions, goes by the plan: it ends among its draws. */
  @Test
  void picturedCook_isOneOfThePlan() {
    PlanSheet sheet = sheet(NAME);
    double highest =
        sheet.central().orElseThrow().stages().stream()
            .mapToDouble(one -> sheet.central().orElseThrow().corePeak(one).temperature())
            .max()
            .orElseThrow();
    assertTrue(highest > sheet.plan().finalCore().low(), highest + " K");
    assertTrue(highest < sheet.plan().finalCore().high(), highest + " K");
  }

  /** The sears are weighed after the wait that the pictured cook has, so that rings are alike. */
  @Test
  void ringOfTheSearTable_isThatOfTheSlice() {
    PlanSheet sheet = sheet(NAME);
    SimulationResult result = sheet.central().orElseThrow();
    StageResult wait = result.stage("wait");
    SearTable sears = sheet.sears().orElseThrow();
    assertEquals(wait.end() - wait.start(), sears.held(), 1e-6);
    double drawn = CookedCut.of(result).highest().upperDepthAbove(sheet.wish().high());
    assertEquals(drawn, sears.own().grey(), 0.002);
    String html = PlanReport.html(sheet, ReportFixtures.manifest());
    String minutes = Math.round(sears.held() / 60) + " min";
    assertTrue(html.contains("it waits for its sear for " + minutes), "the slice");
    assertTrue(html.contains("the wait for it is " + minutes), "the sears");
  }

  @Test
  void page_standsAlone_andItsFiguresSpeak() {
    String html = page(NAME);
    PageChecks.assertStandsAlone(html);
    PageChecks.assertFiguresSpeak(html, 6);
    PageChecks.assertTextInside(html);
  }

  @Test
  void hostileName_staysText() {
    String html = page(HOSTILE);
    PageChecks.assertStandsAlone(html);
    assertFalse(html.contains("<script"), "a script of the cook's name");
    assertEquals("<script>alert(1)</script> & \"co\"", heading(html));
  }

  private static String heading(String html) {
    return SvgReader.all(SvgReader.parse(html), "h1").get(0).getTextContent();
  }

  @Test
  void timetable_hasAllSteps_withCautionsBeside() {
    PlanSheet sheet = sheet(NAME);
    String html = PlanReport.html(sheet, ReportFixtures.manifest());
    Element table = SvgReader.all(SvgReader.parse(html), "table").get(0);
    List<Element> rows = SvgReader.all(table, "tr");
    assertEquals(sheet.steps().size() + 1, rows.size());
    assertTrue(rows.get(1).getTextContent().contains(sheet.steps().get(0).what()));
    assertTrue(html.contains("check with a thermometer you trust"));
    assertTrue(html.contains("carbon monoxide"));
  }
}
