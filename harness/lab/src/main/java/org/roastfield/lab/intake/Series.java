package org.roastfield.lab.intake;

import java.util.Arrays;
import org.roastfield.lab.files.LogChannel;

/** Readings of a channel with what the rules of plausibility ask of them. */
final class Series {

  private final LogChannel channel;
  private final double interval;

  Series(LogChannel channel) {
    this.channel = channel;
    double[] intervals = new double[Math.max(0, channel.size() - 1)];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = channel.time(i + 1) - channel.time(i);
    }
    this.interval = median(intervals);
  }

  String name() {
    return channel.name();
  }

  int size() {
    return channel.size();
  }

  double time(int i) {
    return channel.time(i);
  }

  /** Reading [K]. */
  double at(int i) {
    return channel.temperature(i);
  }

  /** Change from the reading before [K]. */
  double step(int i) {
    return at(i) - at(i - 1);
  }

  /** Usual time between readings [s]. */
  double interval() {
    return interval;
  }

  /** Median of the readings from {@code from} to before {@code to}. */
  double median(int from, int to) {
    double[] values = new double[to - from];
    for (int i = from; i < to; i++) {
      values[i - from] = at(i);
    }
    return median(values);
  }

  /** Median of some numbers, which it sorts; NaN of none. */
  static double median(double... values) {
    Arrays.sort(values);
    return values.length == 0 ? Double.NaN : values[values.length / 2];
  }

  /** How far the readings of a span lie apart [K]; NaN if there are none. */
  double span(double from, double until) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = first(from); i < size() && time(i) <= until; i++) {
      low = Math.min(low, at(i));
      high = Math.max(high, at(i));
    }
    return high >= low ? high - low : Double.NaN;
  }

  /** First reading at or after a time. */
  int first(double time) {
    int low = 0;
    int high = size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (time(middle) < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
