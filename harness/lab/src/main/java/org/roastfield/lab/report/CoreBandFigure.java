package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Spread;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.PlanStep;

/** The core of all draws over time: median, and the band that eight in ten lie in. */
final class CoreBandFigure {

  private static final int TABLE_ROWS = 24;

  private final PlanSheet sheet;
  private final TimeBase base;

  CoreBandFigure(PlanSheet sheet) {
    this.sheet = sheet;
    this.base = TimeBase.clock(sheet.clock().at(-sheet.plan().lead()));
  }

  Figure figure() {
    String title = "The core over time";
    return new Figure(
        title,
        "Half of the draws are below the line; eight in ten lie in the tinted band, as long as most"
            + " are not yet carved. Upright lines: "
            + lines()
            + ".",
        List.of(Panel.drawn(Layout.both(), layout -> drawing(layout, title))),
        List.of(table()));
  }

  private String drawing(Layout layout, String title) {
    Curve low = curve("10 %", Spread::low);
    Curve median = curve("core", Spread::median);
    Curve high = curve("90 %", Spread::high);
    Range up = Curves.range(List.of(low, high));
    Range across = across();
    Plot plot = Plot.start(layout, title, description(median), across, up);
    plot.band(high.points(), low.points())
        .rules(
            base.ticks(across.low(), across.high(), layout.mostTicksAcross()),
            Tick.decimal(up.low(), up.high(), layout.mostTicksUp()));
    StageStrip.draw(plot, spans());
    return plot.curve(median)
        .frame(base.axisTitle(), sheet.scale().unit())
        .names(List.of(low, median, high))
        .finished();
  }

  /** Time since the cook begins. */
  private double since(double time) {
    return sheet.plan().lead() + time;
  }

  private Range across() {
    List<Double> times = sheet.plan().core().times();
    return new Range(since(times.get(0)), since(times.get(times.size() - 1)));
  }

  /** Stretches between the medians of what divides the cook. */
  private List<Span> spans() {
    List<Span> spans = new ArrayList<>();
    String name = "gentle heat";
    double from = across().low();
    for (String id : List.of("pull", "sear", "rest")) {
      Optional<PlanStep> step = sheet.step(id).filter(s -> Double.isFinite(s.time().median()));
      if (step.isPresent()) {
        double until = since(step.get().time().median());
        spans.add(new Span(name, from, until));
        from = until;
        name = id.equals("pull") ? "pause" : id;
      }
    }
    spans.add(new Span(name.equals("pause") ? "rest" : name, from, across().high()));
    return spans.stream().filter(span -> span.duration() > 0).toList();
  }

  private String lines() {
    return StageStrip.inWords(spans(), base);
  }

  private Curve curve(String name, ToDoubleFunction<Spread> quantile) {
    Plan.CoreBand core = sheet.plan().core();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < core.times().size(); i++) {
      double kelvin = quantile.applyAsDouble(core.spreads().get(i));
      points.add(new Point(since(core.times().get(i)), sheet.scale().value(kelvin)));
    }
    return new Curve(name, Curve.Role.CORE, points);
  }

  private String description(Curve median) {
    return "Core over time with the band of eight draws in ten. "
        + Curves.inWords(median, base, sheet.scale());
  }

  private Table table() {
    Plan.CoreBand core = sheet.plan().core();
    int every = Math.max(1, core.times().size() / TABLE_ROWS);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < core.times().size(); i += every) {
      Spread spread = core.spreads().get(i);
      rows.add(
          List.of(
              base.text(since(core.times().get(i))),
              value(spread.low()),
              value(spread.median()),
              value(spread.high())));
    }
    return Table.ofNumbers(
        "Core of the draws, " + sheet.scale().unit(),
        List.of(base.columnTitle(), "10 %", "50 %", "90 %"),
        rows);
  }

  private String value(double kelvin) {
    return Numbers.decimal(sheet.scale().value(kelvin), 1);
  }
}
