package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Temperatures over time with the stages of the cook. */
final class TraceFigure {

  /**
   * A point to be pointed out.
   *
   * @param point time [s] and temperature [°C]
   * @param words in full
   * @param fewWords where there is little room
   */
  record Mark(Point point, String words, String fewWords) {}

  private final List<Curve> curves;
  private final List<Span> stages;
  private final Optional<Mark> mark;
  private final TimeBase base;

  /**
   * A figure of some curves.
   *
   * @param curves temperature [°C] over time [s]
   * @param stages at least one
   * @param mark the carryover peak, if there is one
   */
  TraceFigure(List<Curve> curves, List<Span> stages, Optional<Mark> mark, TimeBase base) {
    this.curves = List.copyOf(curves);
    this.stages = List.copyOf(stages);
    this.mark = mark;
    this.base = base;
  }

  /** The picture over the time from {@code seen.start()} to {@code seen.end()}. */
  Panel panel(Span seen, String title) {
    return Panel.drawn(Layout.both(), layout -> drawing(layout, seen, title));
  }

  /** The numbers at round times and at the ends of the stages. */
  Table table(Span seen, String caption, int mostRows) {
    List<String> headings = new ArrayList<>(List.of(base.columnTitle(), "minutes"));
    curves.forEach(curve -> headings.add(curve.name() + ", °C"));
    List<List<String>> rows = times(seen, mostRows).stream().map(time -> row(time)).toList();
    return Table.ofNumbers(caption, headings, rows);
  }

  private List<Double> times(Span seen, int most) {
    List<Double> times = new ArrayList<>();
    base.ticks(seen.start(), seen.end(), most).forEach(tick -> times.add(tick.value()));
    times.add(seen.start());
    stages.forEach(stage -> times.add(stage.end()));
    mark.ifPresent(there -> times.add(there.point().x()));
    return times.stream()
        .filter(time -> time >= seen.start() && time <= seen.end())
        .sorted()
        .distinct()
        .toList();
  }

  private List<String> row(double time) {
    List<String> row =
        new ArrayList<>(List.of(base.exactText(time), Numbers.decimal(time / 60, 1)));
    curves.forEach(curve -> row.add(Numbers.decimal(curve.at(time), 1)));
    return row;
  }

  private String drawing(Layout layout, Span seen, String title) {
    List<Curve> shown =
        curves.stream().map(curve -> curve.between(seen.start(), seen.end())).toList();
    Range range = Curves.range(shown);
    Plot plot =
        Plot.start(layout, title, description(shown), new Range(seen.start(), seen.end()), range);
    StageStrip.tint(plot, stages);
    plot.rules(
        base.ticks(seen.start(), seen.end(), layout.mostTicksAcross()),
        Tick.decimal(range.low(), range.high(), layout.mostTicksUp()));
    StageStrip.draw(plot, stages);
    shown.forEach(plot::curve);
    plot.frame(base.axisTitle(), "°C").names(shown);
    mark.filter(there -> plot.x().holds(there.point().x()))
        .ifPresent(
            there ->
                plot.mark(there.point(), layout.isNarrow() ? there.fewWords() : there.words()));
    return plot.finished();
  }

  private String description(List<Curve> shown) {
    StringBuilder text = new StringBuilder("Temperature over time. ");
    for (Curve curve : shown) {
      text.append(Curves.inWords(curve, base)).append(' ');
    }
    mark.ifPresent(there -> text.append("Marked: ").append(there.words()).append(". "));
    return text.append("Stages: ").append(StageStrip.inWords(stages, base)).append('.').toString();
  }
}
