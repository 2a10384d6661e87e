package org.roastfield.core.plan;

import java.util.Arrays;

/**
 * How much later than usual the displays of draws would get to what their look draws them on to.
 */
final class Slowness {

  private static final double MINUTE = 60;

  /** Whether there is a look that some draws get to. */
  final boolean looks;

  /** Usual time of those that get there, since the start of the cook, a whole minute [s]. */
  final double middle;

  /** Later than that, one a draw [s]; 0 for those that never get there, and without a look. */
  final double[] later;

  private Slowness(boolean looks, double middle, double[] later) {
    this.looks = looks;
    this.middle = middle;
    this.later = later;
  }

  /** Of the first draws. */
  static Slowness of(Draws draws, int count) {
    if (draws.check().isEmpty()) {
      return new Slowness(false, 0, new double[count]);
    }
    double[] times = draws.drawnOn(count);
    double[] there = Arrays.stream(times).filter(Double::isFinite).toArray();
    if (there.length == 0) {
      return new Slowness(false, 0, new double[count]);
    }
    double middle = MINUTE * Math.rint(Spread.of(there).median() / MINUTE);
    double[] later =
        Arrays.stream(times).map(time -> Double.isFinite(time) ? time - middle : 0).toArray();
    return new Slowness(true, middle, later);
  }
}
