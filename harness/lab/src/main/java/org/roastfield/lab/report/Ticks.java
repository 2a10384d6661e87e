package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/** Round places on an axis. */
final class Ticks {

  private static final double[] DECIMAL = {1, 2, 5};
  private static final double[] MINUTES = {
    1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 7200, 14400
  };

  /** Share of a step by which a rounding error may put a tick beyond the end of the axis. */
  private static final double SLACK = 1e-9;

  private Ticks() {}

  /**
   * Multiples of 1, 2 or 5 times a power of ten in [{@code low}, {@code high}]: the finest such
   * step that gives at most {@code most} of them.
   *
   * @param high greater than {@code low}
   * @param most at least 2
   */
  static List<Double> decimal(double low, double high, int most) {
    return multiples(low, high, 0, decimalStep(low, high, most));
  }

  /**
   * Full minutes, quarter hours or hours of the clock, in seconds on the axis.
   *
   * @param low start of the axis [s]
   * @param high end of the axis [s]
   * @param clockAtZero time of day at 0 on the axis [s]
   * @param most at least 2
   */
  static List<Double> clock(double low, double high, double clockAtZero, int most) {
    for (double minutes : MINUTES) {
      double step = 60 * minutes;
      List<Double> ticks = multiples(low, high, clockAtZero, step);
      if (ticks.size() <= most) {
        return ticks;
      }
    }
    return decimal(low, high, most);
  }

  /** Step of {@link #decimal}. */
  static double decimalStep(double low, double high, int most) {
    if (!(high > low) || !Double.isFinite(high - low)) {
      throw new IllegalArgumentException("high must be above low, was [" + low + ", " + high + "]");
    }
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10((high - low) / most)));
    for (int decade = 0; decade < 3; decade++) {
      for (double factor : DECIMAL) {
        double step = factor * power;
        if (last(high, step) - first(low, step) < most) {
          return step;
        }
      }
      power *= 10;
    }
    return power;
  }

  private static List<Double> multiples(double low, double high, double origin, double step) {
    List<Double> ticks = new ArrayList<>();
    long last = last(high + origin, step);
    for (long k = first(low + origin, step); k <= last; k++) {
      ticks.add(k * step - origin);
    }
    return ticks;
  }

  private static long first(double low, double step) {
    return (long) Math.ceil(low / step - SLACK);
  }

  private static long last(double high, double step) {
    return (long) Math.floor(high / step + SLACK);
  }
}
