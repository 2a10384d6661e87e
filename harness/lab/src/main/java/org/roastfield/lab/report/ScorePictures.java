package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.roastfield.lab.score.Coverage;
import org.roastfield.lab.score.Interval;
import org.roastfield.lab.score.ScoreSummary;
import org.roastfield.lab.score.Uniformity;

/**
 * Scores of forecast times in pictures and tables: whether outcomes fell evenly over their
 * forecasts, and whether intervals held them as often as they said.
 */
final class ScorePictures {

  private static final int MOST_BINS = 10;
  private static final double BAND = 0.9;
  private static final double CONFIDENCE = 0.95;
  private static final double LOW = 0.8;
  private static final double HALF_BAR = 1.2;

  private final ScoreSummary summary;
  private final int bins;
  private final int[] counts;
  private final Interval expected;
  private final List<Coverage> coverages;

  /**
   * @param summary of times [s]
   */
  ScorePictures(ScoreSummary summary) {
    this.summary = summary;
    this.bins = Math.max(2, Math.min(MOST_BINS, summary.cooks() / Uniformity.LEAST_EXPECTED));
    this.counts = Uniformity.counts(summary.pits(), bins);
    this.expected = Uniformity.expectedCount(summary.cooks(), bins, BAND);
    this.coverages =
        summary.scores().get(0).intervals().stream()
            .map(interval -> summary.coverage(interval.level()))
            .toList();
  }

  /**
   * The figure.
   *
   * @param title which forecasts, such as "Forecasts at a quarter of the cook"
   */
  Figure figure(String title) {
    return new Figure(
        title,
        caption(),
        List.of(
            Panel.drawn(Layout.low(LOW), this::transforms),
            Panel.drawn(Layout.low(LOW), this::coverage)),
        List.of(transformTable(), coverageTable()));
  }

  /**
   * One row a forecaster, its scores side by side.
   *
   * @param forecasters summaries of times [s] by name, in the order of the rows; all with the same
   *     levels
   */
  static Table scores(Map<String, ScoreSummary> forecasters) {
    List<List<String>> rows = new ArrayList<>();
    forecasters.forEach((name, summary) -> rows.add(Table.row(name, scores(summary))));
    return Table.ofNumbers(
        "Scores of forecast times: less is better in all but coverage, which is to be as said",
        List.of(
            "forecast",
            "cooks",
            "90 % covered",
            "90 % width, min",
            "CRPS, min",
            "interval score, min",
            "mean error, min",
            "absolute error, min"),
        rows);
  }

  private static List<String> scores(ScoreSummary summary) {
    Coverage coverage = summary.coverage(0.9);
    return List.of(
        Integer.toString(summary.cooks()),
        percent(coverage.share()) + " %",
        minutes(coverage.width()),
        minutes(summary.crps()),
        minutes(summary.weightedIntervalScore()),
        Numbers.signed(summary.bias() / 60, 1),
        minutes(summary.meanAbsoluteError()));
  }

  private String caption() {
    return "Above, where in its forecast each outcome fell: 0 earlier than all that was held"
        + " possible, 1 later. Right forecasts give even counts, nine in ten of them in the band;"
        + " forecasts that are too sure heap them at both ends, too unsure ones in the middle, late"
        + " ones on the left. "
        + test()
        + " Below, how often intervals held the outcome, with exact 95 % bounds: right ones lie on"
        + " the line.";
  }

  private String test() {
    int needed = Uniformity.LEAST_EXPECTED * bins;
    if (summary.cooks() < needed) {
      return "Too few cooks for a test.";
    }
    double p = Uniformity.chiSquared(summary.pits(), bins);
    String chance = p < 0.001 ? "less than 0.001" : Numbers.decimal(p, 3);
    return "Even counts would differ as much with a chance of " + chance + " (χ²).";
  }

  private String transforms(Layout layout) {
    double most = expected.high();
    List<Point> steps = new ArrayList<>();
    for (int i = 0; i < bins; i++) {
      steps.add(new Point((double) i / bins, counts[i]));
      steps.add(new Point((i + 1.0) / bins, counts[i]));
      most = Math.max(most, counts[i]);
    }
    double even = (double) summary.cooks() / bins;
    Curve seen = new Curve("seen", Curve.Role.CORE, steps);
    Curve level = new Curve("even", Curve.Role.CHAMBER, across(even));
    Range up = new Range(0, 1.08 * most);
    Plot plot =
        Plot.start(
            layout, "Where outcomes fell in their forecasts", inWords(even), new Range(0, 1), up);
    return plot.band(across(expected.high()), across(expected.low()))
        .rules(
            Tick.decimal(0, 1, layout.mostTicksAcross()),
            Tick.decimal(0, up.high(), layout.mostTicksUp()))
        .curve(level)
        .curve(seen)
        .frame("place of the outcome in its forecast", "cooks")
        .names(List.of(seen, level))
        .finished();
  }

  private String inWords(double even) {
    StringBuilder words =
        new StringBuilder("Cooks by where in its forecast the outcome fell, from");
    words.append(" earliest to latest: ");
    for (int i = 0; i < bins; i++) {
      words.append(i == 0 ? "" : ", ").append(counts[i]);
    }
    return words.append("; even would be ").append(Numbers.decimal(even, 1)).append('.').toString();
  }

  private String coverage(Layout layout) {
    Range unit = new Range(0, 100);
    Plot plot =
        Plot.start(layout, "How often intervals held", coverageInWords(), unit, unit)
            .rules(
                Tick.decimal(0, 100, layout.mostTicksAcross()),
                Tick.decimal(0, 100, layout.mostTicksUp()));
    Curve said =
        new Curve("as said", Curve.Role.CHAMBER, List.of(new Point(0, 0), new Point(100, 100)));
    plot.curve(said);
    for (Coverage each : coverages) {
      Interval share = each.shareInterval(CONFIDENCE);
      double at = 100 * each.level();
      bar(plot, new Point(at, 100 * share.low()), new Point(at, 100 * share.high()));
      double seen = 100 * each.share();
      bar(plot, new Point(at - HALF_BAR, seen), new Point(at + HALF_BAR, seen));
    }
    return plot.frame("said, %", "seen, %").names(List.of(said)).finished();
  }

  private static void bar(Plot plot, Point from, Point to) {
    plot.curve(new Curve("", Curve.Role.CORE, List.of(from, to)));
  }

  private String coverageInWords() {
    List<String> words = new ArrayList<>();
    for (Coverage each : coverages) {
      words.add(percent(each.level()) + " % intervals held " + percent(each.share()) + " %");
    }
    return "How often intervals held the outcome: " + String.join(", ", words) + ".";
  }

  private Table transformTable() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < bins; i++) {
      rows.add(
          List.of(
              Numbers.decimal((double) i / bins, 2) + " to " + Numbers.decimal((i + 1.0) / bins, 2),
              Integer.toString(counts[i]),
              Numbers.decimal(expected.low(), 0) + " to " + Numbers.decimal(expected.high(), 0)));
    }
    return Table.ofNumbers(
        "Cooks by the place of the outcome in its forecast",
        List.of("place", "cooks", "nine in ten counts, if even"),
        rows);
  }

  private Table coverageTable() {
    List<List<String>> rows = new ArrayList<>();
    for (Coverage each : coverages) {
      Interval share = each.shareInterval(CONFIDENCE);
      rows.add(
          List.of(
              percent(each.level()) + " %",
              each.covered() + " of " + each.cooks(),
              percent(each.share()) + " %",
              percent(share.low()) + " to " + percent(share.high()) + " %",
              minutes(each.width())));
    }
    return Table.ofNumbers(
        "Intervals: what they said and what was seen",
        List.of("said", "held", "share", "95 % bounds", "mean width, min"),
        rows);
  }

  private static List<Point> across(double value) {
    return List.of(new Point(0, value), new Point(1, value));
  }

  private static String percent(double share) {
    return Numbers.decimal(100 * share, 0);
  }

  private static String minutes(double seconds) {
    return Numbers.decimal(seconds / 60, 1);
  }
}
