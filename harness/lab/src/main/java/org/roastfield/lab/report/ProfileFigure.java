package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/** A quantity over depth at a few times. */
final class ProfileFigure {

  private static final int TABLE_ROWS = 12;

  /** What is drawn. */
  enum Quantity {
    TEMPERATURE("Temperature", "°C", 1),
    SALT("Salt", "%", 2);

    private final String word;
    private final String unit;
    private final int digits;

    Quantity(String word, String unit, int digits) {
      this.word = word;
      this.unit = unit;
      this.digits = digits;
    }
  }

  private final List<Curve> profiles;
  private final String deepest;
  private final Quantity quantity;

  /**
   * A figure of some profiles.
   *
   * @param profiles quantity over depth [mm], all over the same depths; named after their time
   * @param deepest what lies at the greatest depth, such as "middle"
   */
  ProfileFigure(List<Curve> profiles, String deepest, Quantity quantity) {
    this.quantity = quantity;
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
    profiles.forEach(profile -> headings.add(profile.name() + ", " + quantity.unit));
    double depth = depth();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i <= TABLE_ROWS; i++) {
      double at = depth * i / TABLE_ROWS;
      rows.add(
          Table.row(
              Numbers.decimal(at, 1),
              profiles.stream().map(profile -> number(profile.at(at))).toList()));
    }
    return Table.ofNumbers(caption, headings, rows);
  }

  private String drawing(Layout layout, String title) {
    Range range = range();
    Plot plot = Plot.start(layout, title, description(), new Range(0, depth()), range);
    plot.rules(
        Tick.decimal(0, depth(), layout.mostTicksAcross()),
        Tick.decimal(range.low(), range.high(), layout.mostTicksUp()));
    profiles.forEach(plot::curve);
    plot.frame("depth below the surface, mm", quantity.unit);
    return plot.names(profiles).finished();
  }

  /** Salt begins at none. */
  private Range range() {
    Range all = Curves.range(profiles);
    return quantity == Quantity.SALT ? new Range(0, all.high()) : all;
  }

  private String number(double value) {
    return Numbers.decimal(value, quantity.digits);
  }

  private double depth() {
    List<Point> points = profiles.get(0).points();
    return points.get(points.size() - 1).x();
  }

  private String description() {
    StringBuilder text = new StringBuilder(quantity.word + " over depth, one line for each time. ");
    for (Curve profile : profiles) {
      List<Point> points = profile.points();
      text.append(profile.name()).append(": ");
      text.append(number(points.get(0).y())).append(" ").append(quantity.unit);
      text.append(" at the surface, ");
      text.append(number(points.get(points.size() - 1).y())).append(" ").append(quantity.unit);
      text.append(" at the ").append(deepest).append(". ");
    }
    return text.toString().strip();
  }
}
