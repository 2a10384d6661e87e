package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.plan.SearOutcome;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.lab.plan.PlanSentences;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.SearTable;
import org.roastfield.lab.timeline.TemperatureScale;

/** What a longer sear buys and costs: crust and grey ring over its length, at equal cores. */
final class SearFigure {

  private static final double LOW = 0.8;
  private static final double MILLIMETRES = 1000;

  private final SearTable table;
  private final TemperatureScale scale;
  private final String weighed;

  SearFigure(PlanSheet sheet) {
    this.table = sheet.sears().orElseThrow();
    this.scale = sheet.scale();
    this.weighed = PlanSentences.weighed(sheet);
  }

  Figure figure() {
    return new Figure(
        "What a longer sear buys and costs",
        "Crust above, by an index from 0, raw, to 52, with its range from slow to fast estimate;"
            + " below, how deep the cut gets hotter than the wish. "
            + weighed
            + table.touch().sentence()
            + " The upright line is the sear of the cook file.",
        List.of(
            Panel.drawn(Layout.low(LOW), this::crust), Panel.drawn(Layout.low(LOW), this::ring)),
        List.of(numbers()));
  }

  private String crust(Layout layout) {
    Curve middle = curve("crust", Curve.Role.FIRST, one -> one.crust().middle());
    List<Point> low = curve("", Curve.Role.FIRST, one -> one.crust().low()).points();
    List<Point> high = curve("", Curve.Role.FIRST, one -> one.crust().high()).points();
    Range up = new Range(0, Math.max(10, 1.05 * most(high)));
    Plot plot = start(layout, "Crust by the length of the sear", middle, up).band(high, low);
    return finished(plot, layout, up, middle, "index of browning");
  }

  private String ring(Layout layout) {
    Curve ring = curve("ring", Curve.Role.SECOND, one -> MILLIMETRES * one.grey());
    Range up = new Range(0, Math.max(5, 1.1 * most(ring.points())));
    Plot plot = start(layout, "Grey ring by the length of the sear", ring, up);
    return finished(plot, layout, up, ring, "mm beyond the wish");
  }

  private Plot start(Layout layout, String title, Curve curve, Range up) {
    StringBuilder words = new StringBuilder(title).append(": ");
    for (Point point : curve.points()) {
      words.append(Numbers.decimal(point.x(), 0)).append(" s ");
      words.append(Numbers.decimal(point.y(), 1)).append(", ");
    }
    String description = words.substring(0, words.length() - 2) + ".";
    return Plot.start(layout, title, description, across(), up);
  }

  private String finished(Plot plot, Layout layout, Range up, Curve curve, String axis) {
    double own = table.own().schedule().duration();
    return plot.rules(
            Tick.decimal(across().low(), across().high(), layout.mostTicksAcross()),
            Tick.decimal(up.low(), up.high(), layout.mostTicksUp()))
        .upright("boundary-ground", own)
        .upright("boundary", own)
        .curve(curve)
        .points(curve.points())
        .frame("length of the whole sear, s", axis)
        .names(List.of(curve))
        .finished();
  }

  private Range across() {
    List<SearOutcome> lengths = table.lengths();
    return new Range(0, 1.05 * lengths.get(lengths.size() - 1).schedule().duration());
  }

  private static double most(List<Point> points) {
    return points.stream().mapToDouble(Point::y).max().orElseThrow();
  }

  private Curve curve(String name, Curve.Role role, ToDoubleFunction<SearOutcome> value) {
    List<Point> points = new ArrayList<>();
    for (SearOutcome one : table.lengths()) {
      points.add(new Point(one.schedule().duration(), value.applyAsDouble(one)));
    }
    return new Curve(name, role, points);
  }

  private List<String> row(String words, SearOutcome one) {
    return List.of(
        words,
        Numbers.decimal(scale.value(one.reading()), 1),
        Numbers.decimal(one.crust().low(), 0),
        Numbers.decimal(one.crust().middle(), 0),
        Numbers.decimal(one.crust().high(), 0),
        Numbers.decimal(one.average().middle(), 0),
        Numbers.decimal(MILLIMETRES * one.grey(), 1),
        Numbers.decimal(100 * one.within(), 0),
        one.early() ? "yes" : "no");
  }

  private Table numbers() {
    List<List<String>> rows = new ArrayList<>();
    for (SearOutcome one : table.all()) {
      rows.add(
          row(
              SearTable.words(one.schedule()) + (one.equals(table.own()) ? " (the file's)" : ""),
              one));
    }
    for (SearTable.Heated one : table.heats()) {
      rows.add(row(SearTable.words(one, scale), one.outcome()));
    }
    return Table.ofNumbers(
        "Sears last, first and both; even: share of the volume within "
            + scale.differenceText(SearPlanner.EVEN)
            + " of the wish",
        List.of(
            "sear",
            "core at the pull, " + scale.unit(),
            "crust, slow",
            "crust",
            "crust, fast",
            "crust, average",
            "ring, mm",
            "even, %",
            "core as wished"),
        rows);
  }
}
