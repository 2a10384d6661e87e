package org.roastfield.core.plan;

/** When the displays of draws get to a reading, since the start of the cook; infinite for never. */
final class Arrivals {

  private final double[] before;
  private final double[] there;

  /**
   * @param before when they are {@link Plan#AHEAD} short of it [s]
   * @param there when they are there [s]
   */
  Arrivals(double[] before, double[] there) {
    this.before = before;
    this.there = there;
  }

  /** At the pull. */
  static Arrivals of(Run run) {
    return new Arrivals(run.near, run.pull);
  }

  /** When they are there [s]. */
  double[] there() {
    return there.clone();
  }

  int size() {
    return there.length;
  }

  /** Pace of the last {@link Plan#AHEAD} kelvin; 0 for draws that never get there [K/s]. */
  double[] rates() {
    double[] rates = new double[there.length];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = rate(i);
    }
    return rates;
  }

  private double rate(int draw) {
    double taken = there[draw] - before[draw];
    return there[draw] < Double.POSITIVE_INFINITY && taken > 0 ? Plan.AHEAD / taken : 0;
  }

  /** When a draw would get there as a look draws its display on [s]. */
  double drawnOn(int draw, FireCheck look) {
    return look.drawnOn(there[draw], rate(draw));
  }
}
