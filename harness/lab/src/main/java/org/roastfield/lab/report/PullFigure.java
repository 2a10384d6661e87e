package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.plan.Candidate;
import org.roastfield.core.plan.Planner;
import org.roastfield.lab.plan.PlanSheet;

/** Readings that were weighed: chances of a final core below and above the wish. */
final class PullFigure {

  private static final double LOW = 0.8;

  private final PlanSheet sheet;

  PullFigure(PlanSheet sheet) {
    this.sheet = sheet;
  }

  Figure figure() {
    String title = "Which reading to take it off at";
    return new Figure(
        title,
        String.format(
            Locale.ROOT,
            "The earlier it comes off, the more often the final core falls short of the wish; the"
                + " later, the more often it goes beyond: by the first %d draws, which weigh the"
                + " readings, the clock's and the pace's part in the rule left as they are. The"
                + " upright line is the middle reading of the rule of least expected loss among those"
                + " that meet what is demanded.",
            Math.min(Planner.WEIGHING, sheet.plan().members())),
        List.of(Panel.drawn(Layout.low(LOW), layout -> drawing(layout, title))),
        List.of(table()));
  }

  private String drawing(Layout layout, String title) {
    List<Candidate> all = sheet.plan().candidates();
    Curve under = curve("below", Curve.Role.FIRST, Candidate::chanceUnder);
    Curve over = curve("above", Curve.Role.SECOND, Candidate::chanceOver);
    double reading = value(sheet.plan().reading());
    double first = Math.min(reading, value(all.get(0).reading()));
    double last = Math.max(reading, value(all.get(all.size() - 1).reading()));
    Range across = new Range(first - 0.5, last + 0.5);
    Range up = new Range(0, 100);
    return Plot.start(layout, title, description(), across, up)
        .rules(
            Tick.decimal(across.low(), across.high(), layout.mostTicksAcross()),
            Tick.decimal(0, 100, layout.mostTicksUp()))
        .upright("boundary-ground", reading)
        .upright("boundary", reading)
        .curve(under)
        .curve(over)
        .frame("reading when it comes off, " + sheet.scale().unit(), "chance, %")
        .names(List.of(under, over))
        .finished();
  }

  private Curve curve(String name, Curve.Role role, ToDoubleFunction<Candidate> chance) {
    List<Point> points = new ArrayList<>();
    for (Candidate one : sheet.plan().candidates()) {
      points.add(new Point(value(one.reading()), 100 * chance.applyAsDouble(one)));
    }
    return new Curve(name, role, points);
  }

  private String description() {
    return "Chances of a final core below and above the wish over the reading at which it comes off;"
        + " chosen: "
        + Numbers.text(sheet.plan().reading(), sheet.scale())
        + ".";
  }

  private double value(double kelvin) {
    return sheet.scale().value(kelvin);
  }

  private Table table() {
    double square = sheet.scale().difference(1) * sheet.scale().difference(1);
    List<List<String>> rows = new ArrayList<>();
    for (Candidate one : sheet.plan().candidates()) {
      rows.add(
          List.of(
              Numbers.decimal(value(one.reading()), 1),
              Numbers.decimal(value(one.finalCore().low()), 1),
              Numbers.decimal(value(one.finalCore().median()), 1),
              Numbers.decimal(value(one.finalCore().high()), 1),
              Numbers.decimal(100 * one.chanceUnder(), 0),
              Numbers.decimal(100 * one.chanceOver(), 0),
              Numbers.decimal(square * one.expectedLoss(), 1)));
    }
    return Table.ofNumbers(
        "Readings that were weighed, "
            + sheet.scale().unit()
            + "; loss in the square of "
            + sheet.scale().differenceUnit()
            + ", "
            + weights(),
        List.of(
            "reading", "final 10 %", "final 50 %", "final 90 %", "below, %", "above, %", "loss"),
        rows);
  }

  private String weights() {
    return sheet
        .file()
        .notes()
        .plan()
        .loss()
        .map(
            loss ->
                "short of the wish times "
                    + Numbers.decimal(loss.shortOf(), 2)
                    + ", beyond times "
                    + Numbers.decimal(loss.beyond(), 2))
        .orElse("above the wish twice");
  }
}
