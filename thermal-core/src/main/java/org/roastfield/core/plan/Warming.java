package org.roastfield.core.plan;

/**
 * How the displays of draws warm near the pull, from runs that ended at one or two readings: rates
 * straight between these and beyond, times by a parabola.
 */
final class Warming {

  /** Least share of a rate that is left when it is drawn on. */
  private static final double LEAST_RATE = 0.1;

  private final double low;
  private final double high;
  private final double[] lowTimes;
  private final double[] lowRates;
  private final double[] highTimes;
  private final double[] highRates;

  private Warming(double low, Run atLow, double high, Run atHigh) {
    this.low = low;
    this.high = high;
    this.lowTimes = atLow.pull;
    this.highTimes = atHigh.pull;
    this.lowRates = rates(atLow);
    this.highRates = rates(atHigh);
  }

  /** From one run that ended at a reading [K]. */
  static Warming of(double reading, Run run) {
    return new Warming(reading, run, reading, run);
  }

  /** From runs that ended at two readings, the second higher [K]. */
  static Warming of(double low, Run atLow, double high, Run atHigh) {
    return new Warming(low, atLow, high, atHigh);
  }

  private static double[] rates(Run run) {
    double[] rates = new double[run.size()];
    for (int i = 0; i < rates.length; i++) {
      double taken = run.pull[i] - run.near[i];
      boolean there = run.pull[i] < Double.POSITIVE_INFINITY && taken > 0;
      rates[i] = there ? Plan.AHEAD / taken : 0;
    }
    return rates;
  }

  /** The lower reading [K]. */
  double low() {
    return low;
  }

  /** The higher one [K]. */
  double high() {
    return high;
  }

  /** Whether a draw got to the lower reading. */
  boolean arrives(int draw) {
    return lowRates[draw] > 0;
  }

  private boolean arrivesHigh(int draw) {
    return high > low && highRates[draw] > 0;
  }

  /** Mean rate of a draw's display over the last {@link Plan#AHEAD} kelvin to a reading [K/s]. */
  double rate(int draw, double reading) {
    double first = lowRates[draw];
    if (!arrivesHigh(draw)) {
      return first;
    }
    double second = highRates[draw];
    double share = (reading - low) / (high - low);
    return Math.max(LEAST_RATE * Math.min(first, second), first + share * (second - first));
  }

  /** When a draw gets to a reading, if it goes on so [s]. */
  double time(int draw, double reading) {
    double first = 1 / lowRates[draw];
    if (!arrivesHigh(draw)) {
      return lowTimes[draw] + (reading - low) * first;
    }
    double second = 1 / highRates[draw];
    double chord = (highTimes[draw] - lowTimes[draw]) / (high - low);
    double slower = (second - first) / (high - low);
    if (reading > high) {
      double mean = Math.max(LEAST_RATE * second, chord + 0.5 * slower * (reading - low));
      return highTimes[draw] + (reading - high) * mean;
    }
    double mean = Math.max(LEAST_RATE * first, chord + 0.5 * slower * (reading - high));
    return lowTimes[draw] + (reading - low) * mean;
  }
}
