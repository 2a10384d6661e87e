package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * When the gentle heat ends: as soon as the display, drawn on for a while as fast as it rose over
 * its last {@link Plan#AHEAD} kelvin, gets to a target, eq. (93). A cut that warms fast carries
 * over more, and comes off at a lower reading; and how long a cut has yet to wait for its sear, or
 * how late it is, moves the target.
 *
 * @param times since the start of the cook, in order [s]; at least one
 * @param targets at these times, straight between them, and as at the first and last beyond [K]
 * @param ahead how long the rise is drawn on [s], at least 0
 * @param from not before this, whatever the display shows [s]; −∞ for whenever it is
 * @param until by this at the latest, whatever the display shows [s]; ∞ for never
 */
public record Pull(
    List<Double> times, List<Double> targets, double ahead, double from, double until) {

  /** How far inside a window the clock decides, so that rounding does not [s]. */
  private static final double INSIDE = 1;

  /**
   * @throws IllegalArgumentException if a number is outside its range, times are out of order, or
   *     there are not as many targets
   */
  public Pull {
    times = List.copyOf(times);
    targets = List.copyOf(targets);
    Check.inRange("number of times", times.size(), 1, 100);
    Check.inRange("number of targets", targets.size(), times.size(), times.size());
    for (int i = 0; i < times.size(); i++) {
      Check.finite("time", times.get(i));
      Check.positive("target", targets.get(i));
      Check.inRange("time", times.get(i), i == 0 ? times.get(0) : times.get(i - 1), 1e9);
    }
    Check.notNegative("ahead", ahead);
    if (!(from <= until)) {
      throw new IllegalArgumentException(
          "from must not be after until, " + until + ", was " + from);
    }
  }

  /** By the display alone. */
  public Pull(List<Double> times, List<Double> targets, double ahead) {
    this(times, targets, ahead, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** At the same target whenever that is [K]. */
  public static Pull at(double target, double ahead) {
    return new Pull(List.of(0.0), List.of(target), ahead);
  }

  /**
   * The target at a time [K].
   *
   * @param time since the start of the cook [s]
   */
  public double target(double time) {
    int last = times.size() - 1;
    int next = 0;
    while (next <= last && times.get(next) <= time) {
      next++;
    }
    if (next == 0 || next > last) {
      return targets.get(next == 0 ? 0 : last);
    }
    double share = (time - times.get(next - 1)) / (times.get(next) - times.get(next - 1));
    return targets.get(next - 1) + share * (targets.get(next) - targets.get(next - 1));
  }

  /**
   * The same within the window of a service.
   *
   * @param wanted when a cut comes off that is carved as wanted without a wait, since the start of
   *     the cook [s]
   */
  public Pull within(Service service, double wanted) {
    double earliest = wanted - service.longestHold() + INSIDE;
    double latest = wanted + service.latest() - INSIDE;
    return new Pull(times, targets, ahead, Math.min(earliest, latest), latest);
  }

  /** Whether the clock may decide instead of the display. */
  public boolean isBound() {
    return from > Double.NEGATIVE_INFINITY || until < Double.POSITIVE_INFINITY;
  }

  /** The same so much later [s]. */
  Pull later(double by) {
    List<Double> later = times.stream().map(time -> time + by).toList();
    return new Pull(later, targets, ahead, from + by, until + by);
  }

  /** The same with all targets moved [K]. */
  Pull raised(double by) {
    List<Double> raised = targets.stream().map(target -> target + by).toList();
    return new Pull(times, raised, ahead, from, until);
  }

  /** Walks along the targets. */
  Walk walk() {
    return new Walk(this);
  }

  /**
   * Targets at times that only go on, for rules that are asked of many cuts: the knots around a
   * time are not looked for anew. Serves one cut after another.
   */
  static final class Walk {

    private final double[] knots;
    private final double[] targets;
    private final double lowest;
    private int next;

    private Walk(Pull pull) {
      knots = pull.times.stream().mapToDouble(Double::doubleValue).toArray();
      targets = pull.targets.stream().mapToDouble(Double::doubleValue).toArray();
      lowest = Arrays.stream(targets).min().orElseThrow();
    }

    /** Lowest target [K]. */
    double lowest() {
      return lowest;
    }

    /** Goes back to the start, for another cut. */
    void begin() {
      next = 0;
    }

    /** {@link Pull#target} at a time not before the last that was asked for since the start [s]. */
    double target(double time) {
      int last = knots.length - 1;
      while (next <= last && knots[next] <= time) {
        next++;
      }
      if (next == 0 || next > last) {
        return targets[next == 0 ? 0 : last];
      }
      double share = (time - knots[next - 1]) / (knots[next] - knots[next - 1]);
      return targets[next - 1] + share * (targets[next] - targets[next - 1]);
    }
  }
}
