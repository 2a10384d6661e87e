package org.roastfield.core.plan;

import java.util.ArrayDeque;
import java.util.Deque;
import org.roastfield.core.internal.Check;

/** Decides by one reading after another when a cut comes off the gentle heat; serves one cook. */
@FunctionalInterface
public interface PullRule {

  /**
   * Whether to take it off now; asked until it says so.
   *
   * @param time since the start of the cook [s], increasing
   * @param reading of the display [K]
   */
  boolean pulls(double time, double reading);

  /** At a reading [K], as a plan says. */
  static PullRule atReading(double pull) {
    Check.positive("pull", pull);
    return (time, reading) -> reading >= pull;
  }

  /** As a plan says: by the time that the last {@link Plan#AHEAD} kelvin took. */
  static PullRule of(Pull pull) {
    return pull.ahead() == 0 ? atReading(pull.target()) : new Paced(pull);
  }

  /** Waits for the reading that the pace of the display asks for. */
  final class Paced implements PullRule {

    private final Pull pull;
    private final Deque<double[]> readings = new ArrayDeque<>();

    private Paced(Pull pull) {
      this.pull = pull;
    }

    @Override
    public boolean pulls(double time, double reading) {
      readings.add(new double[] {time, reading});
      while (readings.size() > 1 && secondIsBelow(reading - Plan.AHEAD)) {
        readings.removeFirst();
      }
      double[] first = readings.getFirst();
      double rise = reading - first[1];
      if (!(rise >= Plan.AHEAD && time > first[0])) {
        return false;
      }
      return reading >= pull.reading(Plan.AHEAD * (time - first[0]) / rise);
    }

    private boolean secondIsBelow(double level) {
      var each = readings.iterator();
      each.next();
      return each.next()[1] <= level;
    }
  }

  /** By the clock [s]. */
  static PullRule atTime(double pull) {
    Check.notNegative("pull", pull);
    return (time, reading) -> time >= pull;
  }

  /**
   * As soon as a straight line through the readings so far gets to a temperature in a given time:
   * as if the core went on rising.
   *
   * @param temperature [K]
   * @param ahead how far the line is drawn [s]
   * @param window how long readings count [s], greater than 0
   */
  static PullRule byStraightLine(double temperature, double ahead, double window) {
    Check.positive("temperature", temperature);
    Check.notNegative("ahead", ahead);
    return new StraightLine(temperature, ahead, Check.positive("window", window));
  }

  /** Least squares over a window of readings. */
  final class StraightLine implements PullRule {

    private final double temperature;
    private final double ahead;
    private final double window;
    private final Deque<double[]> readings = new ArrayDeque<>();

    private StraightLine(double temperature, double ahead, double window) {
      this.temperature = temperature;
      this.ahead = ahead;
      this.window = window;
    }

    @Override
    public boolean pulls(double time, double reading) {
      readings.add(new double[] {time, reading});
      while (readings.getFirst()[0] < time - window) {
        readings.removeFirst();
      }
      double meanTime = readings.stream().mapToDouble(one -> one[0]).average().orElseThrow();
      double mean = readings.stream().mapToDouble(one -> one[1]).average().orElseThrow();
      double square = 0;
      double product = 0;
      for (double[] one : readings) {
        square += (one[0] - meanTime) * (one[0] - meanTime);
        product += (one[0] - meanTime) * (one[1] - mean);
      }
      double slope = square > 0 ? product / square : 0;
      return mean + slope * (time + ahead - meanTime) >= temperature;
    }
  }
}
