package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.Series;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.diagnosis.Calibrated;
import org.roastfield.lab.diagnosis.Finding;
import org.roastfield.lab.diagnosis.ProfileWords;
import org.roastfield.lab.diagnosis.Verdict;
import org.roastfield.lab.result.RunManifest;

/** What logs say of a cooker, as one HTML file. */
public final class CalibrationReport {

  private static final double LOW = 0.6;
  private static final double RING_EVERY = 4.5;
  private static final int MOST_ROWS = 40;

  private CalibrationReport() {}

  /** The report; the same arguments give the same text. */
  public static String html(Calibrated calibrated, RunManifest manifest) {
    CookerProfile profile = calibrated.profile();
    Page page =
        Page.start(
            "Cooker " + profile.id(),
            "Cooker profile",
            profile.madeUp() ? List.of("Numbers made up, not measured") : List.of(),
            List.of("Learned " + ProfileWords.source(profile) + ".", ProfileWords.status(profile)));
    page.section("What is known of the cooker", part -> part.table(numbers(profile)));
    page.section("Findings", part -> findings(part, calibrated));
    calibrated.verdict().ifPresent(verdict -> page.section("What is left", left(verdict)));
    page.section("Logs", part -> traces(part, calibrated));
    page.section("What was assumed of each log", part -> assumptions(part, calibrated));
    page.section("What it was made from", part -> ReportParts.manifest(part, manifest));
    return page.finished();
  }

  private static void findings(Page page, Calibrated calibrated) {
    if (calibrated.findings().isEmpty()) {
      page.paragraph("None were looked for: the search was stopped.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : calibrated.findings()) {
      rows.add(
          List.of(
              finding.weight().name().toLowerCase(Locale.ROOT),
              finding.kind().word(),
              finding.log().orElse("all"),
              finding.words()));
    }
    page.table(
        Table.ofWords("What matters most first", List.of("weight", "about", "log", "words"), rows));
  }

  /** Residuals of each trace, whether anything is said of them or not. */
  private static Consumer<Page> left(Verdict verdict) {
    List<List<String>> rows = new ArrayList<>();
    for (Diagnosis.SeriesCheck check : verdict.diagnosis().series()) {
      rows.add(
          List.of(
              check.name(),
              Integer.toString(check.whiteness().count()),
              String.format(Locale.ROOT, "%.3f", check.whiteness().chanceOfCorrelation()),
              String.format(Locale.ROOT, "%.3f", check.whiteness().chanceOfSquares()),
              String.format(Locale.ROOT, "%.1f", check.strain().drift()),
              String.format(Locale.ROOT, "%.1f", check.strain().time()),
              String.format(Locale.ROOT, "%.0f %%", 100 * check.outlying())));
    }
    Table table =
        Table.ofWords(
            "Readings less what is computed, without the drift that is allowed for. Chances that"
                + " right numbers leave as much: near 0 something is missed",
            List.of(
                "trace",
                "readings",
                "chance of its correlation",
                "chance of its size",
                "drift over the usual",
                "its time over the usual",
                "counted less"),
            rows);
    return part -> part.table(table);
  }

  private static Table numbers(CookerProfile profile) {
    return Table.ofWords(
        "Median with the range from 10 to 90 %; learned: the share of the variance before that the"
            + " logs took away, claimed from 30 % on",
        List.of("number", "before its logs", "now", "learned"), ProfileWords.rows(profile));
  }

  private static void traces(Page page, Calibrated calibrated) {
    for (Calibrated.Pair pair : calibrated.traces()) {
      page.figure(figure(pair));
    }
  }

  private static Figure figure(Calibrated.Pair pair) {
    Series readings = pair.readings();
    List<Point> logged = new ArrayList<>();
    List<Point> computed = new ArrayList<>();
    List<Point> errors = new ArrayList<>();
    for (int k = 0; k < readings.size(); k++) {
      double time = readings.time(k);
      logged.add(new Point(time, Temperatures.toCelsius(readings.value(k))));
      computed.add(new Point(time, Temperatures.toCelsius(pair.computed().get(k))));
      errors.add(new Point(time, pair.computed().get(k) - readings.value(k)));
    }
    Curve line = new Curve("computed", Curve.Role.CORE, computed);
    Curve rings = new Curve("logged", Curve.Role.UPPER, logged);
    Curve error = new Curve("error", Curve.Role.ERROR, errors);
    Range across = new Range(readings.time(0), readings.time(readings.size() - 1));
    return new Figure(
        readings.name(),
        "Rings are readings, as many as there is room for; the line is the probe's as computed with"
            + " the most probable numbers. Below, computed less logged.",
        List.of(
            Panel.drawn(Layout.withoutStages(), layout -> core(layout, across, line, rings)),
            Panel.drawn(Layout.low(LOW), layout -> error(layout, across, error))),
        List.of(table(logged, computed)));
  }

  private static String core(Layout layout, Range across, Curve line, Curve rings) {
    TimeBase base = TimeBase.elapsed();
    Range up = Curves.range(List.of(line, rings));
    String words = Curves.inWords(rings, base) + " " + Curves.inWords(line, base);
    int room = (int) ((layout.plotRight() - layout.plotLeft()) / RING_EVERY);
    return start(layout, "Readings, logged and computed", words, across, up)
        .points(thinned(rings.points(), room))
        .curve(line)
        .frame(base.axisTitle(), "°C")
        .names(List.of(line, rings))
        .finished();
  }

  private static String error(Layout layout, Range across, Curve error) {
    TimeBase base = TimeBase.elapsed();
    Range up =
        Curves.range(List.of(error, new Curve("", Curve.Role.CORE, List.of(new Point(0, 0)))));
    String words = Curves.inWords(error, base);
    return start(layout, "Computed less logged", words, across, up)
        .level("zero", 0)
        .curve(error)
        .frame(base.axisTitle(), "computed less logged, K")
        .finished();
  }

  private static Plot start(Layout layout, String title, String words, Range across, Range up) {
    TimeBase base = TimeBase.elapsed();
    return Plot.start(layout, title, words, across, up)
        .rules(
            base.ticks(across.low(), across.high(), layout.mostTicksAcross()),
            Tick.decimal(up.low(), up.high(), layout.mostTicksUp()));
  }

  private static List<Point> thinned(List<Point> points, int most) {
    int every = Math.max(1, (points.size() + most - 1) / most);
    List<Point> thinned = new ArrayList<>();
    for (int i = 0; i < points.size(); i += every) {
      thinned.add(points.get(i));
    }
    return thinned;
  }

  private static Table table(List<Point> logged, List<Point> computed) {
    int every = Math.max(1, logged.size() / MOST_ROWS);
    List<List<String>> rows = new ArrayList<>();
    for (int k = 0; k < logged.size(); k += every) {
      rows.add(
          List.of(
              Numbers.decimal(logged.get(k).x() / 60, 1),
              Numbers.decimal(logged.get(k).y(), 1),
              Numbers.decimal(computed.get(k).y(), 1)));
    }
    return Table.ofNumbers(
        "Readings at some times", List.of("minutes", "logged, °C", "computed, °C"), rows);
  }

  private static void assumptions(Page page, Calibrated calibrated) {
    List<List<String>> rows = new ArrayList<>();
    calibrated
        .found()
        .logs()
        .cases()
        .forEach(one -> one.assumptions().forEach(words -> rows.add(List.of(one.name(), words))));
    page.table(Table.ofFileText("Taken from where, and left out", List.of("log", "what"), rows));
  }
}
