package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Lines of equal temperature on a map, every other one labelled where it has room. */
final class IsothermLines {

  private static final double SHORTEST_LABELLED = 46;
  private static final double[] LABEL_PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88};
  private static final double LABEL_HEIGHT = 15;

  private final Plot plot;
  private final List<Room> taken = new ArrayList<>();

  private IsothermLines(Plot plot) {
    this.plot = plot;
  }

  /**
   * Draws lines and labels.
   *
   * @param levels of the field [°C], increasing
   * @param isPale whether the band above a level's index is pale
   * @param keptFree places across that no label may cover, in the units of the axis
   */
  static void draw(
      Plot plot, Field field, List<Double> levels, IntPredicate isPale, List<Double> keptFree) {
    IsothermLines lines = new IsothermLines(plot);
    Room whole = plot.layout().plot();
    for (double x : keptFree) {
      double place = plot.x().at(x);
      lines.taken.add(new Room(place - 1, place + 1, whole.top(), whole.bottom()));
    }
    List<List<List<Point>>> places = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      places.add(lines.places(field, levels.get(i)));
      String tone = isPale.test(i) ? "on-pale" : "on-dark";
      lines.line(places.get(i), "isotherm " + tone + (isMain(levels, i) ? " main" : ""));
    }
    for (int i = 0; i < levels.size(); i++) {
      if (isMain(levels, i)) {
        String tone = isPale.test(i) ? "on-pale" : "on-dark";
        lines.label(places.get(i), Isotherms.text(levels, i), tone);
      }
    }
  }

  /** Every other level is a main one, those that are rounder. */
  private static boolean isMain(List<Double> levels, int index) {
    if (levels.size() < 2) {
      return true;
    }
    double step = levels.get(1) - levels.get(0);
    return Math.round(levels.get(index) / step) % 2 == 0;
  }

  private List<List<Point>> places(Field field, double level) {
    return Contours.lines(field, level).stream()
        .map(line -> line.stream().map(plot::place).toList())
        .toList();
  }

  private void line(List<List<Point>> lines, String styleName) {
    PathData data = new PathData();
    lines.forEach(data::line);
    if (!data.isEmpty()) {
      plot.svg().empty("path", "class", styleName, "d", data.toString()).newLine();
    }
  }

  private void label(List<List<Point>> lines, String words, String tone) {
    for (List<Point> line : lines) {
      double length = length(line);
      if (length < SHORTEST_LABELLED) {
        continue;
      }
      for (double share : LABEL_PLACES) {
        Point place = along(line, share * length);
        Room room = Room.around(place, Letters.width(words) + 8, LABEL_HEIGHT);
        if (isFree(room)) {
          taken.add(room);
          plot.text("isotherm-label middle " + tone, place.x(), place.y() + 4, words);
          break;
        }
      }
    }
  }

  private boolean isFree(Room room) {
    return plot.layout().plot().holds(room) && taken.stream().noneMatch(room::meets);
  }

  private static double length(List<Point> line) {
    double length = 0;
    for (int i = 1; i < line.size(); i++) {
      length += distance(line.get(i - 1), line.get(i));
    }
    return length;
  }

  private static Point along(List<Point> line, double wanted) {
    double left = wanted;
    for (int i = 1; i < line.size(); i++) {
      Point from = line.get(i - 1);
      Point to = line.get(i);
      double step = distance(from, to);
      if (step >= left && step > 0) {
        double share = left / step;
        return new Point(
            from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
      }
      left -= step;
    }
    return line.get(line.size() - 1);
  }

  private static double distance(Point a, Point b) {
    double dx = a.x() - b.x();
    double dy = a.y() - b.y();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
