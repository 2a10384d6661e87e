package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/** Temperature over depth at a few times. */
final class ProfileFigure {

  private static final int TABLE_ROWS = 12;

  private final List<Curve> profiles;
  private final String deepest;

  /**
   * A figure of some profiles.
   *
   * @param profiles temperature [°C] over depth [mm], all over the same depths; named after their
   *     time
   * @param deepest what lies at the greatest depth, such as "middle"
   */
  ProfileFigure(List<Curve> profiles, String deepest) {
    this.profiles = List.copyOf(profiles);
    this.deepest = deepest;
  }

  /** The picture. */
  Panel panel(String title) {
    return Panel.drawn(Layout.withoutStages(), layout -> drawing(layout, title));
  }

  /** The numbers at a dozen depths. */
  Table table(String caption) {
    List<String> headings = new ArrayList<>(List.of("depth, mm"));
    profiles.forEach(profile -> headings.add(profile.name() + ", °C"));
    double depth = depth();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i <= TABLE_ROWS; i++) {
      double at = depth * i / TABLE_ROWS;
      rows.add(
          Table.row(
              Numbers.decimal(at, 1),
              profiles.stream().map(profile -> Numbers.decimal(profile.at(at), 1)).toList()));
    }
    return Table.ofNumbers(caption, headings, rows);
  }

  private String drawing(Layout layout, String title) {
    Range range = Curves.range(profiles);
    Plot plot = Plot.start(layout, title, description(), new Range(0, depth()), range);
    plot.rules(
        Tick.decimal(0, depth(), layout.mostTicksAcross()),
        Tick.decimal(range.low(), range.high(), layout.mostTicksUp()));
    profiles.forEach(plot::curve);
    plot.frame("depth below the surface, mm", "°C");
    return plot.names(profiles).finished();
  }

  private double depth() {
    List<Point> points = profiles.get(0).points();
    return points.get(points.size() - 1).x();
  }

  private String description() {
    StringBuilder text = new StringBuilder("Temperature over depth, one line for each time. ");
    for (Curve profile : profiles) {
      List<Point> points = profile.points();
      text.append(profile.name()).append(": ");
      text.append(Numbers.decimal(points.get(0).y(), 1)).append(" °C at the surface, ");
      text.append(Numbers.decimal(points.get(points.size() - 1).y(), 1));
      text.append(" °C at the ").append(deepest).append(". ");
    }
    return text.toString().strip();
  }
}
