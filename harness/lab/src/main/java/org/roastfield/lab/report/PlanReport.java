package org.roastfield.lab.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.WhatIf;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.plan.PlanChange;
import org.roastfield.lab.plan.PlanClock;
import org.roastfield.lab.plan.PlanLine;
import org.roastfield.lab.plan.PlanSentences;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.PlanStep;
import org.roastfield.lab.plan.SharedFire;
import org.roastfield.lab.plan.Unmet;
import org.roastfield.lab.plan.Words;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Inside;

/** A plan as one HTML file: a timetable to pin up, pictures, cautions, what it was made from. */
public final class PlanReport {

  private static final String MADE_UP =
      "Made-up numbers: a demonstration, not a cook that will take place";

  private PlanReport() {}

  /**
   * The page.
   *
   * @return a file that needs no script, no network and no other file; the same arguments give the
   *     same text
   */
  public static String html(PlanSheet sheet, RunManifest manifest) {
    return html(sheet, Optional.empty(), manifest);
  }

  /**
   * The page of one cut among several on one fire.
   *
   * @param shared all of them, where the page is to show how they go together
   */
  public static String html(PlanSheet sheet, Optional<SharedFire> shared, RunManifest manifest) {
    Page page =
        Page.start(
            sheet.file().name(),
            "Plan of a cook",
            sheet.file().madeUp() ? List.of(MADE_UP) : List.of(),
            lead(sheet));
    shared.ifPresent(all -> page.section("On one fire", part -> together(part, all)));
    page.section("Timetable", part -> timetable(part, sheet));
    page.section("What to expect", part -> expectations(part, sheet));
    page.section("The core over time", part -> core(part, sheet));
    sheet
        .sears()
        .ifPresent(
            sears -> page.section("The sear", part -> part.figure(new SearFigure(sheet).figure())));
    sheet
        .central()
        .ifPresent(result -> page.section("The slice", part -> slice(part, sheet, result)));
    if (!sheet.changes().isEmpty()) {
      page.section("What if", part -> part.table(changes(sheet)));
    }
    page.section("What was assumed", part -> assumptions(part, sheet));
    page.section("What it was made from", part -> ReportParts.manifest(part, manifest));
    return page.finished();
  }

  private static List<String> lead(PlanSheet sheet) {
    List<String> lines = new ArrayList<>();
    lines.add("On the table at " + PlanSentences.service(sheet) + ".");
    sheet
        .late()
        .ifPresent(
            late -> lines.add("Too late: " + PlanSentences.late(late, sheet.plan().members())));
    for (Unmet unmet : sheet.problems()) {
      lines.add("Not met. " + unmet.line().subject() + ": " + unmet.line().text());
    }
    return lines;
  }

  private static void timetable(Page page, PlanSheet sheet) {
    page.table(timetable(sheet));
    PlanSentences.behind(sheet).ifPresent(page::paragraph);
    PlanSentences.change(sheet).ifPresent(page::paragraph);
    page.paragraph(PlanSentences.ALWAYS);
    page.beside(
        List.of(part -> slips(part, sheet), part -> ReportParts.cautions(part, sheet.cautions())));
  }

  private static void together(Page page, SharedFire shared) {
    PlanSheet first = shared.sheets().get(0);
    LocalDate day = PlanSentences.day(first);
    List<List<String>> rows = new ArrayList<>();
    for (SharedFire.Step one : shared.steps()) {
      PlanClock clock = one.sheet().clock();
      PlanStep step = one.step();
      rows.add(
          List.of(
              PlanSentences.clock(clock, step.time().median(), day),
              step.isByClock() ? Numbers.NONE : PlanSentences.range(clock, step.time()),
              one.sheet().file().name(),
              step.what()));
    }
    page.table(
        Table.ofWords(
            "All cuts in order of time; the fire is lit once",
            List.of("clock", "10 to 90 %", "cut", "what"),
            rows));
    page.table(
        Table.ofWords(
            "How they go together",
            List.of("what", "how"),
            shared.lines().stream().map(line -> List.of(line.subject(), line.text())).toList()));
  }

  /** What to do when steps slip: one row for each advice. */
  private static void slips(Page page, PlanSheet sheet) {
    Map<String, List<String>> steps = new LinkedHashMap<>();
    for (PlanStep step : sheet.steps()) {
      steps.computeIfAbsent(step.advice(), advice -> new ArrayList<>()).add(step.what());
    }
    List<List<String>> rows = new ArrayList<>();
    steps.forEach((advice, whats) -> rows.add(List.of(advice, String.join("; ", whats))));
    page.table(Table.ofWords("When it slips", List.of("do this", "for these"), rows));
  }

  private static Table timetable(PlanSheet sheet) {
    PlanClock clock = sheet.clock();
    LocalDate day = PlanSentences.day(sheet);
    List<List<String>> rows = new ArrayList<>();
    for (PlanStep step : sheet.steps()) {
      boolean spread = !step.isByClock();
      rows.add(
          List.of(
              PlanSentences.clock(clock, step.time().median(), day),
              spread ? PlanSentences.clock(clock, step.time().low(), day) : Numbers.NONE,
              spread ? PlanSentences.clock(clock, step.time().high(), day) : Numbers.NONE,
              Double.isFinite(step.slack()) ? Words.duration(step.slack()) : Numbers.NONE,
              step.what(),
              step.slips()));
    }
    return Table.ofWords(
        "One in ten is earlier than 10 %, one in ten later than 90 %; slack: how much later it may"
            + " come for the promise still to hold",
        List.of("clock", "10 %", "90 %", "slack", "what", "when it slips"), rows);
  }

  private static void expectations(Page page, PlanSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (PlanLine line : sheet.lines()) {
      String status = line.status().isEmpty() ? "" : " (" + line.status() + ")";
      rows.add(List.of(line.subject(), line.text() + status));
    }
    page.table(Table.ofWords("By the draws", List.of("what", "how much"), rows));
    page.figure(new PullFigure(sheet).figure());
  }

  private static String minutes(WhatIf.Effect effect, Milestone.Kind kind) {
    @Nullable Double later = effect.later().get(kind);
    return later == null ? Numbers.NONE : Numbers.signed(later / 60, 0);
  }

  private static Table changes(PlanSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (PlanChange change : sheet.changes()) {
      WhatIf.Effect effect = change.effect();
      rows.add(
          List.of(
              change.what(),
              minutes(effect, Milestone.Kind.NEAR),
              minutes(effect, Milestone.Kind.PULL),
              minutes(effect, Milestone.Kind.SEAR),
              minutes(effect, Milestone.Kind.CARVE),
              Numbers.signed(sheet.scale().difference(effect.finalCore()), 1),
              effect.draws() > 0
                  ? Words.chance(effect.chanceReady(), effect.draws())
                  : Numbers.NONE,
              change.method()));
    }
    return Table.ofWords(
        "What changes do to a cook that follows this plan by its display; ready: in time for the"
            + " table, where draws tell",
        List.of(
            "if",
            "get ready, min",
            "off, min",
            "sear, min",
            "carve, min",
            "final core, " + sheet.scale().differenceUnit(),
            "ready",
            "by"),
        rows);
  }

  private static void core(Page page, PlanSheet sheet) {
    page.figure(new CoreBandFigure(sheet).figure());
  }

  private static void slice(Page page, PlanSheet sheet, SimulationResult result) {
    PlanSentences.pictured(sheet).ifPresent(page::paragraph);
    Inside inside = Inside.of(sheet.file(), result);
    SliceFigure.of(new ComputedCook(sheet.file(), result, List.of(), inside), sheet.scale())
        .forEach(page::figure);
  }

  private static void assumptions(Page page, PlanSheet sheet) {
    page.paragraph(
        "The plan holds as far as these do, within the spreads that it draws from. Stage ends are the"
            + " plan's, not the file's.");
    List<List<String>> rows = new ArrayList<>();
    sheet.assumed().forEach(line -> rows.add(List.of(line.subject(), line.text())));
    page.table(
        Table.ofWords(
            "Assumed, since the cook file does not say it",
            List.of("assumed", "what for, and where it is said otherwise"),
            rows));
    page.table(ReportParts.facts(sheet.file()))
        .table(ReportParts.surroundings(sheet.file(), sheet.scale()));
  }
}
