package org.roastfield.lab.files;

import java.util.Arrays;

/** Readings of one channel of a log. Immutable. */
public final class LogChannel {

  private final String name;
  private final double[] times;
  private final double[] temperatures;
  private final double[] missingTimes;

  private LogChannel(String name, double[] times, double[] temperatures, double[] missingTimes) {
    this.name = name;
    this.times = times;
    this.temperatures = temperatures;
    this.missingTimes = missingTimes;
  }

  /**
   * Channel from readings.
   *
   * @param name such as "core"
   * @param times [readings] since the start of the log [s], increasing; not modified
   * @param temperatures [readings] [K]; not modified
   * @param missingTimes [missing readings] times of the rows without a reading [s], increasing; not
   *     modified
   */
  public static LogChannel of(
      String name, double[] times, double[] temperatures, double... missingTimes) {
    if (times.length != temperatures.length) {
      throw new IllegalArgumentException(
          "temperatures.length must be " + times.length + ", was " + temperatures.length);
    }
    return new LogChannel(name, times.clone(), temperatures.clone(), missingTimes.clone());
  }

  /** Name, such as "core" or "chamber"; untrusted text of the file. */
  public String name() {
    return name;
  }

  /** Number of readings, those that are missing left out. */
  public int size() {
    return times.length;
  }

  /** Rows of the log in which this channel has no reading. */
  public int missing() {
    return missingTimes.length;
  }

  /** Time of reading {@code i} since the start of the log [s]. */
  public double time(int i) {
    return times[i];
  }

  /** Reading {@code i} [K]. */
  public double temperature(int i) {
    return temperatures[i];
  }

  /** Time of row {@code i} without a reading since the start of the log [s]. */
  public double missingTime(int i) {
    return missingTimes[i];
  }

  /** The readings up to and with a time [s]. */
  public LogChannel until(double end) {
    int n = upTo(times, end);
    return new LogChannel(
        name,
        Arrays.copyOf(times, n),
        Arrays.copyOf(temperatures, n),
        Arrays.copyOf(missingTimes, upTo(missingTimes, end)));
  }

  private static int upTo(double[] increasing, double end) {
    int n = 0;
    while (n < increasing.length && increasing[n] <= end) {
      n++;
    }
    return n;
  }
}
