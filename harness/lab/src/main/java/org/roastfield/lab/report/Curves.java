package org.roastfield.lab.report;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.roastfield.lab.timeline.TemperatureScale;

/** What can be said of curves. */
final class Curves {

  private static final double HEADROOM = 0.06;

  private Curves() {}

  /** Lowest and highest value with a little room around them; [0, 1] if there is no value. */
  static Range range(List<Curve> curves) {
    DoubleSummaryStatistics values =
        curves.stream().flatMapToDouble(Curve::values).summaryStatistics();
    if (values.getCount() == 0) {
      return new Range(0, 1);
    }
    double room = Math.max(HEADROOM * (values.getMax() - values.getMin()), 0.5);
    return new Range(values.getMin() - room, values.getMax() + room);
  }

  /** Start, extremes and end of a curve over time in one sentence, in degrees Celsius. */
  static String inWords(Curve curve, TimeBase base) {
    return inWords(curve, base, TemperatureScale.CELSIUS);
  }

  /** The same of a curve on a scale. */
  static String inWords(Curve curve, TimeBase base, TemperatureScale scale) {
    List<Point> points = curve.points().stream().filter(Point::isFinite).toList();
    if (points.isEmpty()) {
      return curve.name() + ": no values.";
    }
    Point highest = points.stream().max(Comparator.comparingDouble(Point::y)).orElseThrow();
    return curve.name()
        + ": from "
        + value(points.get(0), scale)
        + " to "
        + value(points.get(points.size() - 1), scale)
        + ", highest "
        + value(highest, scale)
        + " at "
        + base.text(highest.x())
        + ".";
  }

  private static String value(Point point, TemperatureScale scale) {
    return Numbers.decimal(point.y(), 1) + " " + scale.unit();
  }
}
