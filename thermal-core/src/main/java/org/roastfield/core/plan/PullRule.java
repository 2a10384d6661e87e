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

  /**
   * As a plan says: by a straight line through the readings of the last {@link Plan#AHEAD} kelvin,
   * its end for the reading and its slope for the pace, since one reading may be off.
   */
  static PullRule of(Pull pull) {
    return new Paced(pull);
  }

  /** Waits for the reading that the pace of the display asks for. */
  final class Paced implements PullRule {

    private final Pull pull;
    private final Line line = new Line();

    Paced(Pull pull) {
      this.pull = pull;
    }

    /** Pace of the display over its last {@link Plan#AHEAD} kelvin [K/s]. */
    double pace() {
      return Math.max(0, line.slope());
    }

    @Override
    public boolean pulls(double time, double reading) {
      line.add(time, reading);
      while (line.secondIsBelow(reading - Plan.AHEAD)) {
        line.removeFirst();
      }
      boolean last = time + FollowedCook.PERIOD > pull.until();
      return time >= pull.from() && (last || meets(time, reading));
    }

    private boolean meets(double time, double reading) {
      return reading - line.first() >= Plan.AHEAD
          && line.at(time) >= pull.target(time) - pull.ahead() * pace();
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
    private final Line line = new Line();

    private StraightLine(double temperature, double ahead, double window) {
      this.temperature = temperature;
      this.ahead = ahead;
      this.window = window;
    }

    @Override
    public boolean pulls(double time, double reading) {
      line.add(time, reading);
      line.removeBefore(time - window);
      return line.at(time + ahead) >= temperature;
    }
  }

  /** Line of least squares through readings. */
  final class Line {

    private final Deque<double[]> readings = new ArrayDeque<>();

    private Line() {}

    private void add(double time, double reading) {
      readings.add(new double[] {time, reading});
    }

    private void removeFirst() {
      readings.removeFirst();
    }

    private void removeBefore(double time) {
      while (readings.getFirst()[0] < time) {
        readings.removeFirst();
      }
    }

    private double first() {
      return readings.getFirst()[1];
    }

    private boolean secondIsBelow(double level) {
      if (readings.size() < 2) {
        return false;
      }
      var each = readings.iterator();
      each.next();
      return each.next()[1] <= level;
    }

    private double mean(int which) {
      return readings.stream().mapToDouble(one -> one[which]).average().orElseThrow();
    }

    private double at(double time) {
      return mean(1) + slope() * (time - mean(0));
    }

    private double slope() {
      double meanTime = mean(0);
      double mean = mean(1);
      double square = 0;
      double product = 0;
      for (double[] one : readings) {
        square += (one[0] - meanTime) * (one[0] - meanTime);
        product += (one[0] - meanTime) * (one[1] - mean);
      }
      return square > 0 ? product / square : 0;
    }
  }
}
