package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A drawing with two straight axes, written as SVG in the order of the calls: what is drawn later
 * lies on top.
 *
 * <p>Colours, dashes and letters come from the style sheet by class.
 */
final class Plot {

  private static final double LABEL_GAP = 14;

  private final Layout layout;
  private final Axis x;
  private final Axis y;
  private final Markup svg = new Markup();
  private final List<List<Point>> drawn = new ArrayList<>();

  private Plot(Layout layout, Axis x, Axis y) {
    this.layout = layout;
    this.x = x;
    this.y = y;
  }

  /**
   * Starts a drawing.
   *
   * @param layout its size
   * @param title name for those who hear the page
   * @param description what the picture shows, for those who hear the page
   * @param across values from left to right
   * @param up values from bottom to top
   */
  static Plot start(Layout layout, String title, String description, Range across, Range up) {
    Axis y = new Axis(up.low(), up.high(), layout.plotBottom(), layout.plotTop());
    return new Plot(layout, across(layout, across), y).opened(title, description);
  }

  /** The same with an upright axis whose values grow downwards. */
  static Plot startDownwards(
      Layout layout, String title, String description, Range across, Range down) {
    Axis y = new Axis(down.low(), down.high(), layout.plotTop(), layout.plotBottom());
    return new Plot(layout, across(layout, across), y).opened(title, description);
  }

  private static Axis across(Layout layout, Range range) {
    return new Axis(range.low(), range.high(), layout.plotLeft(), layout.plotRight());
  }

  Axis x() {
    return x;
  }

  Axis y() {
    return y;
  }

  Layout layout() {
    return layout;
  }

  /** For what this class does not draw. */
  Markup svg() {
    return svg;
  }

  /** Fine lines across the plot at the ticks, with their labels. */
  Plot rules(List<Tick> across, List<Tick> up) {
    for (Tick tick : up) {
      double place = y.at(tick.value());
      segment("rule", layout.plotLeft(), place, layout.plotRight(), place);
      text("tick end", layout.plotLeft() - 7, place + 4, tick.label());
    }
    for (Tick tick : across) {
      double place = x.at(tick.value());
      segment("rule", place, layout.plotTop(), place, layout.plotBottom());
      text("tick middle", place, layout.plotBottom() + 17, tick.label());
    }
    return this;
  }

  /**
   * Short lines outside the plot at the ticks, with their labels, where nothing may lie over the
   * plot.
   */
  Plot ticks(List<Tick> across, List<Tick> up) {
    for (Tick tick : up) {
      double place = y.at(tick.value());
      segment("outside", layout.plotLeft() - 4, place, layout.plotLeft(), place);
      text("tick end", layout.plotLeft() - 7, place + 4, tick.label());
    }
    for (Tick tick : across) {
      double place = x.at(tick.value());
      segment("outside", place, layout.plotBottom(), place, layout.plotBottom() + 4);
      text("tick middle", place, layout.plotBottom() + 17, tick.label());
    }
    return this;
  }

  /** Outline of the plot, and what its axes are. */
  Plot frame(String across, String up) {
    svg.empty(
        "rect",
        "class",
        "frame",
        "x",
        Numbers.coordinate(layout.plotLeft()),
        "y",
        Numbers.coordinate(layout.plotTop()),
        "width",
        Numbers.coordinate(layout.plotRight() - layout.plotLeft()),
        "height",
        Numbers.coordinate(layout.plotBottom() - layout.plotTop()));
    double middle = (layout.plotLeft() + layout.plotRight()) / 2;
    text("axis middle", middle, layout.height() - 12, across);
    text("axis start", 4, 13, up);
    return this;
  }

  /** A line through the curve's points, with gaps where a point is not finite. */
  Plot curve(Curve curve) {
    PathData data = new PathData();
    List<Point> places = new ArrayList<>();
    for (Point point : curve.points()) {
      if (point.isFinite()) {
        places.add(place(point));
      } else {
        data.line(places);
        drawn.add(List.copyOf(places));
        places.clear();
      }
    }
    data.line(places);
    drawn.add(places);
    if (!data.isEmpty()) {
      svg.empty("path", "class", "line " + curve.role().styleName(), "d", data.toString());
    }
    return this;
  }

  /** The area between two curves over the same x, such as an interval. */
  Plot band(List<Point> upper, List<Point> lower) {
    List<Point> places = new ArrayList<>(upper.stream().map(this::place).toList());
    for (int i = lower.size() - 1; i >= 0; i--) {
      places.add(place(lower.get(i)));
    }
    svg.empty("path", "class", "band", "d", new PathData().outline(places).toString());
    return this;
  }

  /** Small rings. */
  Plot points(List<Point> points) {
    svg.open("g", "class", "points");
    for (Point point : points) {
      if (point.isFinite()) {
        svg.empty(
            "circle",
            "cx",
            Numbers.coordinate(x.at(point.x())),
            "cy",
            Numbers.coordinate(y.at(point.y())),
            "r",
            "2.2");
      }
    }
    svg.close();
    return this;
  }

  /**
   * A ring at a point with a few words beside it, where they cover least of what was drawn before.
   */
  Plot mark(Point point, String words) {
    Point place = place(point);
    Room room = Room.beside(place, words, layout.plot(), drawn);
    double edge = room.bottom() < place.y() ? room.bottom() : room.top();
    double nearest = Math.max(room.left() + 6, Math.min(room.right() - 6, place.x()));
    return segment("pointer", place.x(), place.y(), nearest, edge)
        .ring(place)
        .text("words middle", room.middle(), room.bottom() - 4, words);
  }

  private Plot ring(Point place) {
    svg.empty(
        "circle",
        "class",
        "mark",
        "cx",
        Numbers.coordinate(place.x()),
        "cy",
        Numbers.coordinate(place.y()),
        "r",
        "4.5");
    return this;
  }

  /** A level line across the plot. */
  Plot level(String styleName, double value) {
    segment(styleName, layout.plotLeft(), y.at(value), layout.plotRight(), y.at(value));
    return this;
  }

  /** An upright line through the plot. */
  Plot upright(String styleName, double value) {
    segment(styleName, x.at(value), layout.plotTop(), x.at(value), layout.plotBottom());
    return this;
  }

  /** Names of the curves at the right, level with their ends as far as there is room. */
  Plot names(List<Curve> curves) {
    List<Curve> ordered =
        curves.stream()
            .filter(curve -> curve.points().stream().anyMatch(Point::isFinite))
            .sorted(Comparator.comparingDouble(curve -> end(curve).y()))
            .toList();
    List<Double> wanted = ordered.stream().map(curve -> end(curve).y()).toList();
    double low = layout.plotTop() + 4;
    double high = layout.plotBottom() - 4;
    double gap = Math.min(LABEL_GAP, (high - low) / Math.max(1, wanted.size() - 1));
    List<Double> places = Letters.spread(wanted, gap, low, high);
    for (int i = 0; i < ordered.size(); i++) {
      name(ordered.get(i), places.get(i));
    }
    return this;
  }

  /** Text at a place in the drawing. */
  Plot text(String styleName, double atX, double atY, String words) {
    svg.element(
        "text",
        words,
        "class",
        styleName,
        "x",
        Numbers.coordinate(atX),
        "y",
        Numbers.coordinate(atY));
    return this;
  }

  /** A straight line between places in the drawing. */
  Plot segment(String styleName, double fromX, double fromY, double toX, double toY) {
    svg.empty(
        "line",
        "class",
        styleName,
        "x1",
        Numbers.coordinate(fromX),
        "y1",
        Numbers.coordinate(fromY),
        "x2",
        Numbers.coordinate(toX),
        "y2",
        Numbers.coordinate(toY));
    return this;
  }

  /** The drawing. */
  String finished() {
    return svg.close().newLine().finished();
  }

  Point place(Point point) {
    return new Point(x.at(point.x()), y.at(point.y()));
  }

  private void name(Curve curve, double place) {
    Point end = end(curve);
    double right = layout.plotRight();
    String role = curve.role().styleName();
    segment("leader " + role, Math.max(end.x(), right) + 1, end.y(), right + 8, place);
    String words = Letters.shortened(curve.name(), layout.lettersAtRight());
    text("name " + role, right + 11, place + 4, words);
  }

  private Point end(Curve curve) {
    List<Point> finite = curve.points().stream().filter(Point::isFinite).toList();
    return place(finite.get(finite.size() - 1));
  }

  private Plot opened(String title, String description) {
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "picture",
        "role",
        "img",
        "viewBox",
        "0 0 " + Numbers.coordinate(layout.width()) + " " + Numbers.coordinate(layout.height()));
    svg.newLine().element("title", title).element("desc", description).newLine();
    return this;
  }
}
