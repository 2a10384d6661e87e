package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.outcome.HoldTable;
import org.roastfield.core.outcome.TemperatureHistory;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.ComputedCook;

/** Lethality over time, where it is least and at the face, against the published columns. */
final class LethalityFigure {

  /** Highest lethality drawn [powers of ten]; the line ends there. */
  private static final double MOST = 9;

  private static final int TIMES = 240;
  private static final int ROWS = 24;

  private LethalityFigure() {}

  /** The figure, if the table of hold times bears on the cut. */
  static Optional<Figure> of(ComputedCook cook) {
    boolean bears =
        cook.inside().safety().stream().anyMatch(safety -> safety.kind().hasHoldTables());
    if (!bears) {
      return Optional.empty();
    }
    TemperatureHistory least = cook.inside().cut().leastLethal(HoldTable.LOG_6_5);
    List<Curve> curves =
        List.of(
            new Curve("least", Curve.Role.CORE, points(least)),
            new Curve("face", Curve.Role.UPPER, points(cook.inside().cut().surface())));
    String title = "Lethality over time";
    TimeBase base = TimeBase.clock(cook.file().starts());
    Panel panel =
        Panel.drawn(Layout.withoutStages(), layout -> drawing(layout, title, curves, cook, base));
    return Optional.of(
        new Figure(
            title,
            "In powers of ten by which a published fit and table, the smaller of both, say that"
                + " bacteria fall: in the place where it is least, and at the "
                + (cook.result().cook().isSymmetric() ? "surface" : "upper face")
                + ". Level lines: the published columns for 6.5 and 7 powers of ten. Lines end at "
                + Numbers.decimal(MOST, 0)
                + ".",
            List.of(panel),
            List.of(table(curves, cook.file(), least.duration(), base))));
  }

  private static List<Point> points(TemperatureHistory history) {
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    double before = 0;
    for (int i = 1; i <= TIMES && before < MOST; i++) {
      double time = history.duration() * i / TIMES;
      before = HoldTable.LOG_6_5.lethality(history.upTo(time));
      points.add(new Point(time, Math.min(MOST, before)));
    }
    return points;
  }

  private static String drawing(
      Layout layout, String title, List<Curve> curves, ComputedCook cook, TimeBase base) {
    double end = cook.result().endTime();
    Plot plot =
        Plot.start(layout, title, description(curves), new Range(0, end), new Range(0, MOST));
    plot.rules(
        base.ticks(0, end, layout.mostTicksAcross()), Tick.decimal(0, MOST, layout.mostTicksUp()));
    for (HoldTable column : List.of(HoldTable.LOG_6_5, HoldTable.LOG_7)) {
      plot.level("zero", column.logs());
      plot.text(
          "tick start",
          layout.plotLeft() + 4,
          plot.y().at(column.logs()) - 3,
          Numbers.decimal(column.logs(), 1) + " published");
    }
    curves.forEach(plot::curve);
    return plot.frame(base.axisTitle(), "powers of ten").names(curves).finished();
  }

  private static String description(List<Curve> curves) {
    StringBuilder text = new StringBuilder("Lethality over time, growing. ");
    for (Curve curve : curves) {
      double last = curve.points().get(curve.points().size() - 1).y();
      text.append(curve.name()).append(": at the end ");
      text.append(last >= MOST ? "over 9" : Numbers.decimal(last, 1)).append(". ");
    }
    return text.toString().strip();
  }

  private static Table table(List<Curve> curves, CookFile file, double end, TimeBase base) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      double time = end * i / ROWS;
      List<String> row = new ArrayList<>(List.of(base.text(time)));
      curves.forEach(curve -> row.add(entry(curve, time)));
      rows.add(row);
    }
    return Table.ofNumbers(
        "Lethality of " + file.name() + ", powers of ten",
        List.of(base.columnTitle(), "least", "face"),
        rows);
  }

  private static String entry(Curve curve, double time) {
    double value = curve.at(time);
    return Double.isNaN(value) ? "over 9" : Numbers.decimal(value, 2);
  }
}
