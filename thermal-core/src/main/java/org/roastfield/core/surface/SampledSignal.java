package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * A logged quantity: straight lines between samples, the first value before the first sample and
 * the last value after the last.
 *
 * <p>Immutable. Lookup is O(log n).
 */
public final class SampledSignal implements Signal {

  private final double[] times;
  private final double[] values;
  private final double shortestPeriod;

  private SampledSignal(double[] times, double[] values, double shortestPeriod) {
    this.times = times;
    this.values = values;
    this.shortestPeriod = shortestPeriod;
  }

  /**
   * Signal through samples.
   *
   * @param times [samples] since the start of the cook [s], strictly increasing; not modified
   * @param values [samples]; not modified
   * @param shortestPeriod shortest fluctuation that matters [s], greater than 0; four median
   *     sampling intervals is usual, infinite lets the step control alone decide
   * @throws IllegalArgumentException if the lengths differ, there is no sample, a number is not
   *     finite or time does not increase
   */
  public static SampledSignal of(double[] times, double[] values, double shortestPeriod) {
    Check.inRange("times.length", times.length, 1, Integer.MAX_VALUE);
    Check.inRange("values.length", values.length, times.length, times.length);
    if (!(shortestPeriod > 0)) {
      throw new IllegalArgumentException(
          "shortestPeriod must be greater than 0, was " + shortestPeriod);
    }
    for (int i = 0; i < times.length; i++) {
      Check.finite("times[" + i + "]", times[i]);
      Check.finite("values[" + i + "]", values[i]);
      if (i > 0 && !(times[i] > times[i - 1])) {
        throw new IllegalArgumentException(
            "times must increase, but times[" + i + "] = " + times[i] + " follows " + times[i - 1]);
      }
    }
    return new SampledSignal(times.clone(), values.clone(), shortestPeriod);
  }

  @Override
  public double at(double time) {
    int last = times.length - 1;
    if (!(time > times[0])) {
      return values[0];
    }
    if (time >= times[last]) {
      return values[last];
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (times[middle] <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double share = (time - times[low]) / (times[high] - times[low]);
    return values[low] + share * (values[high] - values[low]);
  }

  @Override
  public double shortestPeriod() {
    return shortestPeriod;
  }
}
