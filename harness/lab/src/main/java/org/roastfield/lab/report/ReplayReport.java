package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.Compared;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.HeatingRate;
import org.roastfield.lab.replay.RateSpan;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.replay.WaterLoss;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A log beside its computation as one HTML file: errors, pictures, and what had to be assumed. */
public final class ReplayReport {

  private static final String MADE_UP = "Made-up cook: its numbers are invented";
  private static final String SYNTHETIC = "Synthetic log: generated, not measured";

  private ReplayReport() {}

  /**
   * The report.
   *
   * @param cookFile the cook that the log was computed with
   * @param log what was measured
   * @param replay both side by side, with at least one reading of the core
   * @param manifest what the result was made from
   * @return a file that needs no script, no network and no other file; the same arguments give the
   *     same text
   * @throws IllegalArgumentException if no reading was compared
   */
  public static String html(
      CookFile cookFile, CookLog log, ReplayResult replay, RunManifest manifest) {
    if (replay.core().isEmpty()) {
      throw new IllegalArgumentException("replay must hold a reading of the core, held none");
    }
    Page page =
        Page.start(
            cookFile.name(), "Log replayed", badges(cookFile, log), List.of(lead(log, replay)));
    page.section("How far off", part -> errors(part, cookFile, replay));
    page.section("Pictures", part -> part.figure(new ReplayPictures(replay).figure()));
    page.section("What was assumed", part -> assumptions(part, cookFile, replay));
    if (!log.comments().isEmpty()) {
      page.section("What the log says of itself", part -> log.comments().forEach(part::paragraph));
    }
    page.section("What it was made from", part -> ReportParts.manifest(part, manifest));
    return page.finished();
  }

  private static List<String> badges(CookFile file, CookLog log) {
    List<String> badges = new ArrayList<>();
    if (isSynthetic(log)) {
      badges.add(SYNTHETIC);
    }
    if (file.madeUp()) {
      badges.add(MADE_UP);
    }
    return badges;
  }

  private static boolean isSynthetic(CookLog log) {
    return log.fileName().startsWith("syn-")
        || log.comments().stream()
            .anyMatch(comment -> comment.toLowerCase(Locale.ROOT).contains("synthetic"));
  }

  private static String lead(CookLog log, ReplayResult replay) {
    return log.fileName()
        + ": "
        + log.rows()
        + " rows over "
        + Numbers.duration(log.end() - log.start())
        + ". Surroundings "
        + (replay.chamberFromLog() ? "as logged" : "as the cook file states them")
        + "; the cut started at "
        + Numbers.celsiusText(replay.startTemperature())
        + (replay.startFromLog()
            ? ", the first reading of its core."
            : ", as the cook file states.");
  }

  private static void errors(Page page, CookFile file, ReplayResult replay) {
    page.beside(
        List.of(
            part -> {
              part.table(errors(replay.compared(), replay.profile()));
              if (!replay.targets().isEmpty()) {
                part.table(targets(replay.targets()));
              }
            },
            part ->
                ReportParts.cautions(
                    part, Cautions.of(file, replay.simulation(), TemperatureScale.CELSIUS))));
  }

  private static void addProfile(List<List<String>> rows, ByProfile by, Compared compared) {
    String without = Numbers.decimal(by.without().rms(), 2) + " K, computed alike";
    rows.add(List.of("root mean square without profile " + by.id(), without));
    String inside = Numbers.decimal(100 * by.inside(compared.core()), 0);
    rows.add(List.of("readings in the band from 10 to 90 %", inside + " %"));
    if (by.madeFromThisLog()) {
      rows.add(List.of("the profile was made from", "this very log"));
    }
  }

  private static Table errors(Compared compared, Optional<ByProfile> profile) {
    ErrorSummary errors = compared.errors();
    WaterLoss water = compared.water();
    String worst =
        Numbers.signed(errors.worst(), 2) + " K at " + TimeBase.elapsed().text(errors.worstTime());
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("compared with", compared.readout()));
    rows.add(List.of("readings compared", Integer.toString(errors.readings())));
    rows.add(List.of("rows without a reading", Integer.toString(errors.missing())));
    rows.add(List.of("root mean square", Numbers.decimal(errors.rms(), 2) + " K"));
    rows.add(List.of("mean (bias)", Numbers.signed(errors.bias(), 2) + " K"));
    rows.add(List.of("worst", worst));
    profile.ifPresent(by -> addProfile(rows, by, compared));
    for (HeatingRate rate : compared.rates()) {
      rows.add(List.of("heating rate " + span(rate.span()), rates(rate)));
    }
    rows.add(List.of("evaporated", perArea(water.evaporatedPerArea())));
    rows.add(List.of("dripped", perArea(water.drippedPerArea())));
    if (water.evaporated().isPresent()) {
      rows.add(List.of("evaporated from the whole cut", grams(water.evaporated())));
      rows.add(List.of("dripped from the whole cut", grams(water.dripped())));
    }
    if (water.weighed().isPresent()) {
      rows.add(List.of("weighed loss", grams(water.weighed())));
    }
    return Table.ofWords("Computed less measured core", List.of("what", "how much"), rows);
  }

  private static String perArea(double mass) {
    return Numbers.decimal(mass, 2) + " kg/m²";
  }

  private static String span(RateSpan span) {
    return Numbers.celsiusText(span.low()) + " to " + Numbers.celsiusText(span.high());
  }

  private static String rates(HeatingRate rate) {
    return perMinute(rate.computed()) + ", measured " + perMinute(rate.measured());
  }

  private static String perMinute(OptionalDouble rate) {
    return rate.isPresent()
        ? Numbers.decimal(60 * rate.getAsDouble(), 2) + " K/min"
        : "not crossed";
  }

  private static String grams(OptionalDouble mass) {
    return Numbers.decimal(1000 * mass.orElseThrow(), 1) + " g";
  }

  private static Table targets(List<TargetTime> targets) {
    List<List<String>> rows = new ArrayList<>();
    for (TargetTime target : targets) {
      rows.add(
          List.of(
              Numbers.celsiusText(target.temperature()),
              time(target.measured()),
              time(target.computed()),
              target.error().isPresent()
                  ? Numbers.signed(target.error().getAsDouble() / 60, 1)
                  : Numbers.NONE));
    }
    return Table.ofNumbers(
        "When the core first reached a temperature, h:min since the start",
        List.of("core", "measured", "computed", "error, min"),
        rows);
  }

  private static String time(OptionalDouble seconds) {
    return seconds.isPresent() ? TimeBase.elapsed().text(seconds.getAsDouble()) : "not reached";
  }

  private static void assumptions(Page page, CookFile file, ReplayResult replay) {
    page.html().open("ul").newLine();
    replay.assumptions().forEach(line -> page.html().element("li", line).newLine());
    page.html().close().newLine();
    page.table(ReportParts.facts(file))
        .table(ReportParts.surroundings(file, TemperatureScale.CELSIUS));
  }
}
