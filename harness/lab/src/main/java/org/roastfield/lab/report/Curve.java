package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * A quantity along an axis.
 *
 * @param name shown at the curve and in the table
 * @param role how it is drawn
 * @param points in order of x; one that is not finite is a gap
 */
record Curve(String name, Role role, List<Point> points) {

  /** How a curve is drawn: roles differ by dash as well as by colour. */
  enum Role {
    /** The middle of the cut. */
    CORE,
    /** The surface, or a slab's upper face. */
    UPPER,
    /** A slab's lower face. */
    LOWER,
    /** The cook's first probe. */
    PROBE_ONE,
    /** The cook's second probe, and any after it. */
    PROBE_TWO,
    /** The surroundings. */
    CHAMBER,
    /** What is left between two others. */
    ERROR,
    /** One of several alike, told apart by its label. */
    FIRST,
    /** See {@link #FIRST}. */
    SECOND,
    /** See {@link #FIRST}. */
    THIRD,
    /** See {@link #FIRST}. */
    FOURTH;

    /** Name in the style sheet. */
    String styleName() {
      return "line-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  Curve {
    points = List.copyOf(points);
  }

  /** Values of y that are numbers. */
  DoubleStream values() {
    return points.stream().mapToDouble(Point::y).filter(Double::isFinite);
  }

  /** The part in [{@code low}, {@code high}], cut by straight lines between points. */
  Curve between(double low, double high) {
    List<Point> inside = new ArrayList<>();
    addIfKnown(low, inside);
    points.stream().filter(p -> p.x() > low && p.x() < high).forEach(inside::add);
    addIfKnown(high, inside);
    return new Curve(name, role, inside);
  }

  /** Value at x by a straight line between points, NaN outside them. */
  double at(double x) {
    for (int i = 0; i < points.size(); i++) {
      Point here = points.get(i);
      if (here.x() == x) {
        return here.y();
      }
      if (here.x() > x) {
        return i == 0 ? Double.NaN : between(points.get(i - 1), here, x);
      }
    }
    return Double.NaN;
  }

  private void addIfKnown(double x, List<Point> to) {
    Point point = new Point(x, at(x));
    if (point.isFinite()) {
      to.add(point);
    }
  }

  private static double between(Point before, Point after, double x) {
    double share = (x - before.x()) / (after.x() - before.x());
    return before.y() + share * (after.y() - before.y());
  }
}
