package org.roastfield.core.outcome;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.internal.Check;
import org.roastfield.core.simulation.Trace;

/** Temperature of one place over time, straight between knots. Immutable. */
public final class TemperatureHistory {

  /** Farthest that a trace may be from the straight line at its middle [K]. */
  private static final double STRAIGHT = 0.005;

  private static final int DEEPEST = 12;

  /** Widest span of temperature that a rate is integrated over at once [K]. */
  private static final double SPAN = 1;

  private static final double GAUSS_NODE = Math.sqrt(0.6);

  private final double[] times;
  private final double[] temperatures;

  private TemperatureHistory(double[] times, double[] temperatures) {
    this.times = times;
    this.temperatures = temperatures;
  }

  /**
   * History through given knots.
   *
   * @param times increasing [s], copied
   * @param temperatures as many [K], copied
   * @throws IllegalArgumentException if there are none, numbers differ, times do not increase or a
   *     value is not finite
   */
  public static TemperatureHistory through(double[] times, double[] temperatures) {
    Check.inRange("number of times", times.length, 1, Integer.MAX_VALUE);
    Check.inRange("number of temperatures", temperatures.length, times.length, times.length);
    for (int i = 0; i < times.length; i++) {
      Check.finite("time", times[i]);
      Check.positive("temperature", temperatures[i]);
      if (i > 0) {
        Check.positive("time between knots", times[i] - times[i - 1]);
      }
    }
    return new TemperatureHistory(times.clone(), temperatures.clone());
  }

  /**
   * A trace as straight pieces that keep within 0.005 K of it where it is smooth.
   *
   * @param steps increasing times between which the trace is smooth [s], its start and end included
   */
  static TemperatureHistory of(Trace trace, double[] steps) {
    Knots knots = new Knots(trace);
    double before = trace.at(steps[0]);
    knots.add(steps[0], before);
    for (int i = 1; i < steps.length; i++) {
      double after = trace.at(steps[i]);
      knots.refine(steps[i - 1], before, steps[i], after, 0);
      before = after;
    }
    return knots.history();
  }

  /** From the first to the last knot [s]. */
  public double duration() {
    return times[times.length - 1] - times[0];
  }

  /** Temperature at the beginning [K]. */
  public double first() {
    return temperatures[0];
  }

  /** Temperature at the end [K]. */
  public double last() {
    return temperatures[temperatures.length - 1];
  }

  /** Highest temperature [K]. */
  public double highest() {
    return temperatures[warmest()];
  }

  /** The part from the warmest knot on. */
  public TemperatureHistory fromWarmest() {
    int from = warmest();
    return new TemperatureHistory(
        Arrays.copyOfRange(times, from, times.length),
        Arrays.copyOfRange(temperatures, from, times.length));
  }

  /**
   * The part up to a time.
   *
   * @param time [s], after the first knot, at most the last
   */
  public TemperatureHistory upTo(double time) {
    int last = times.length - 1;
    double end = Check.inRoundedRange("time", time, Math.nextUp(times[0]), times[last]);
    int i = 1;
    while (times[i] < end) {
      i++;
    }
    double[] until = Arrays.copyOf(times, i + 1);
    double[] there = Arrays.copyOf(temperatures, i + 1);
    double share = (end - times[i - 1]) / (times[i] - times[i - 1]);
    there[i] = temperatures[i - 1] + share * (temperatures[i] - temperatures[i - 1]);
    until[i] = end;
    return new TemperatureHistory(until, there);
  }

  private int warmest() {
    int warmest = 0;
    for (int i = 1; i < temperatures.length; i++) {
      if (temperatures[i] > temperatures[warmest]) {
        warmest = i;
      }
    }
    return warmest;
  }

  /** First time at or above a temperature [s]; empty if it is not reached. */
  public OptionalDouble firstRise(double temperature) {
    if (temperatures[0] >= temperature) {
      return OptionalDouble.of(times[0]);
    }
    for (int i = 1; i < times.length; i++) {
      if (temperatures[i] >= temperature) {
        return OptionalDouble.of(crossing(i, temperature));
      }
    }
    return OptionalDouble.empty();
  }

  /** First time at or below a temperature [s]; empty if it does not fall so far. */
  public OptionalDouble firstFall(double temperature) {
    if (temperatures[0] <= temperature) {
      return OptionalDouble.of(times[0]);
    }
    for (int i = 1; i < times.length; i++) {
      if (temperatures[i] <= temperature) {
        return OptionalDouble.of(crossing(i, temperature));
      }
    }
    return OptionalDouble.empty();
  }

  private double crossing(int i, double temperature) {
    double share = (temperature - temperatures[i - 1]) / (temperatures[i] - temperatures[i - 1]);
    return times[i - 1] + share * (times[i] - times[i - 1]);
  }

  /** Time spent between two temperatures [s]. */
  public double timeBetween(double low, double high) {
    double sum = 0;
    for (int i = 1; i < times.length; i++) {
      double a = Math.min(temperatures[i - 1], temperatures[i]);
      double b = Math.max(temperatures[i - 1], temperatures[i]);
      double inside = Math.min(b, high) - Math.max(a, low);
      double share = a == b ? (inside >= 0 ? 1 : 0) : Math.max(0, inside) / (b - a);
      sum += share * (times[i] - times[i - 1]);
    }
    return sum;
  }

  /** Longest time without a break at or above a temperature [s]. */
  public double longestAbove(double temperature) {
    double longest = 0;
    double run = 0;
    for (int i = 1; i < times.length; i++) {
      double dt = times[i] - times[i - 1];
      boolean from = temperatures[i - 1] >= temperature;
      boolean to = temperatures[i] >= temperature;
      if (from && to) {
        run += dt;
      } else if (from) {
        longest = Math.max(longest, run + crossing(i, temperature) - times[i - 1]);
        run = 0;
      } else {
        run = to ? times[i] - crossing(i, temperature) : 0;
      }
      longest = Math.max(longest, run);
    }
    return longest;
  }

  /**
   * Highest temperature that was kept, or exceeded, for a time without a break [K], to 1e-9; for a
   * time longer than the history its lowest temperature.
   *
   * @param duration [s], at least 0
   */
  public double heldFor(double duration) {
    Check.notNegative("duration", duration);
    double high = highest();
    if (longestAbove(high) >= duration) {
      return high;
    }
    double low = Arrays.stream(temperatures).min().orElseThrow();
    while (high - low > 1e-9) {
      double middle = 0.5 * (low + high);
      if (middle <= low || middle >= high) {
        break;
      }
      if (longestAbove(middle) >= duration) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Integral of a smooth rate over time, by three Gaussian points to each kelvin.
   *
   * @param rate of temperature [K], in 1/s
   */
  public double integral(DoubleUnaryOperator rate) {
    return integral(0, Double.MAX_VALUE, rate);
  }

  /**
   * The same over the time in which the temperature is in (low, high], for rates that jump or bend
   * there.
   *
   * @param low [K]
   * @param high [K]
   */
  double integral(double low, double high, DoubleUnaryOperator rate) {
    double sum = 0;
    for (int i = 1; i < times.length; i++) {
      double a = temperatures[i - 1];
      double b = temperatures[i];
      double dt = times[i] - times[i - 1];
      if (a == b) {
        sum += a > low && a <= high ? dt * rate.applyAsDouble(a) : 0;
      } else {
        double from = Math.max(low, Math.min(a, b));
        double to = Math.min(high, Math.max(a, b));
        sum += from < to ? rise(from, to, dt / Math.abs(b - a), rate) : 0;
      }
    }
    return sum;
  }

  /** Integral over an even rise that takes a time for each kelvin [s/K]; a fall has the same. */
  private static double rise(
      double from, double to, double timePerKelvin, DoubleUnaryOperator rate) {
    int parts = 1 + (int) ((to - from) / SPAN);
    double part = (to - from) / parts;
    double sum = 0;
    for (int p = 0; p < parts; p++) {
      double middle = from + part * (p + 0.5);
      double half = 0.5 * part * GAUSS_NODE;
      double ends = rate.applyAsDouble(middle - half) + rate.applyAsDouble(middle + half);
      sum += (5 * ends + 8 * rate.applyAsDouble(middle)) / 18;
    }
    return sum * part * timePerKelvin;
  }

  /** Sum over the straight pieces. */
  double sum(Piece piece) {
    double sum = 0;
    for (int i = 1; i < times.length; i++) {
      sum += piece.of(times[i] - times[i - 1], temperatures[i - 1], temperatures[i]);
    }
    return sum;
  }

  /** Share of a straight piece in a sum. */
  interface Piece {
    double of(double duration, double from, double to);
  }

  private static final class Knots {
    private final Trace trace;
    private double[] times = new double[64];
    private double[] temperatures = new double[64];
    private int count;

    Knots(Trace trace) {
      this.trace = trace;
    }

    void add(double time, double temperature) {
      if (count == times.length) {
        times = Arrays.copyOf(times, 2 * count);
        temperatures = Arrays.copyOf(temperatures, 2 * count);
      }
      times[count] = time;
      temperatures[count++] = temperature;
    }

    /** Adds knots up to the end of a span; looks at two places in it, for an S has none astray. */
    void refine(double from, double before, double to, double after, int depth) {
      double middle = 0.5 * (from + to);
      double there = trace.at(middle);
      double quarter = trace.at(0.5 * (from + middle));
      boolean straight =
          Math.abs(there - 0.5 * (before + after)) <= STRAIGHT
              && Math.abs(quarter - (0.75 * before + 0.25 * after)) <= STRAIGHT;
      if (straight || depth == DEEPEST) {
        add(to, after);
      } else {
        refine(from, before, middle, there, depth + 1);
        refine(middle, there, to, after, depth + 1);
      }
    }

    TemperatureHistory history() {
      return new TemperatureHistory(
          Arrays.copyOf(times, count), Arrays.copyOf(temperatures, count));
    }
  }
}
