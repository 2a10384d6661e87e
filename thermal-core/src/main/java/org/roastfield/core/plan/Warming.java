package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.Collections;
import org.roastfield.core.ensemble.EnsembleResult;

/**
 * How the displays of draws warm near the pull, from when they got to one or two readings: rates
 * straight between these and beyond, times by a parabola.
 */
final class Warming {

  /** How far from where it was learned a rule is looked for, and in what strides [K]. */
  static final double REACH = 20;

  private static final double STRIDE = 0.25;

  /** How near a reading at a time is found [K]. */
  private static final double CLOSE = 1e-3;

  /** Least share of a rate that is left when it is drawn on. */
  private static final double LEAST_RATE = 0.1;

  private final double low;
  private final double high;
  private final double[] lowTimes;
  private final double[] lowRates;
  private final double[] highTimes;
  private final double[] highRates;

  /** What was found to be added near the readings at which draws were pulled [s], [K/s]. */
  private final double[] laterTimes;

  private final double[] fasterRates;

  private final boolean seen;

  private Warming(double low, Arrivals atLow, double high, Arrivals atHigh) {
    this.low = low;
    this.high = high;
    this.lowTimes = atLow.there();
    this.highTimes = atHigh.there();
    this.lowRates = atLow.rates();
    this.highRates = atHigh.rates();
    this.laterTimes = new double[lowTimes.length];
    this.fasterRates = new double[lowTimes.length];
    this.seen = false;
  }

  private Warming(Warming before, double[] laterTimes, double[] fasterRates) {
    this.low = before.low;
    this.high = before.high;
    this.lowTimes = before.lowTimes;
    this.highTimes = before.highTimes;
    this.lowRates = before.lowRates;
    this.highRates = before.highRates;
    this.laterTimes = laterTimes;
    this.fasterRates = fasterRates;
    this.seen = true;
  }

  /** Whether it was moved to what came of draws. */
  boolean hasSeen() {
    return seen;
  }

  /**
   * The same, moved to what came of draws that were pulled at readings of their own.
   *
   * @param readings one a draw [K]
   */
  Warming seen(double[] readings, Run run) {
    double[] later = laterTimes.clone();
    double[] faster = fasterRates.clone();
    double[] rates = Arrivals.of(run).rates();
    for (int i = 0; i < readings.length; i++) {
      if (rates[i] > 0 && arrives(i)) {
        later[i] += run.pull[i] - time(i, readings[i]);
        faster[i] += rates[i] - rate(i, readings[i]);
      }
    }
    return new Warming(this, later, faster);
  }

  /** From one run that ended at a reading [K]. */
  static Warming of(double reading, Run run) {
    Arrivals there = Arrivals.of(run);
    return new Warming(reading, there, reading, there);
  }

  /** Readings that draws are cooked through to learn how they warm between two, in order [K]. */
  static double[] levels(double low, double high) {
    double[] levels = {low - Plan.AHEAD, low, high - Plan.AHEAD, high};
    Arrays.sort(levels);
    return levels;
  }

  /**
   * From draws that were cooked through the {@link #levels} of two readings.
   *
   * @param low the lower reading [K]
   * @param high the higher one [K]
   * @param first stage that ends at the first level
   */
  static Warming of(double low, double high, EnsembleResult result, int first) {
    double[] levels = levels(low, high);
    Arrivals[] arrivals = new Arrivals[2];
    for (int r = 0; r < arrivals.length; r++) {
      double reading = r == 0 ? low : high;
      int before = first + Arrays.binarySearch(levels, reading - Plan.AHEAD);
      int there = first + Arrays.binarySearch(levels, reading);
      arrivals[r] = new Arrivals(Run.ends(result, before), Run.ends(result, there));
    }
    return new Warming(low, arrivals[0], high, arrivals[1]);
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
    double second = arrivesHigh(draw) ? highRates[draw] : first;
    double share = high > low ? (reading - low) / (high - low) : 0;
    double rate = first + share * (second - first) + fasterRates[draw];
    return Math.max(LEAST_RATE * Math.min(first, second), rate);
  }

  /** When a draw gets to a reading, if it goes on so [s]. */
  double time(int draw, double reading) {
    return laterTimes[draw] + learned(draw, reading);
  }

  private double learned(int draw, double reading) {
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

  /**
   * Reading at which a draw's display first meets a rule [K].
   *
   * @param start of its cut [K]
   */
  double meets(int draw, double start, Pull pull) {
    if (!arrives(draw)) {
      return Math.max(start, Collections.max(pull.targets()));
    }
    double lowest = Math.max(start, low - REACH);
    double most = high + REACH;
    double before = missing(draw, lowest, pull);
    for (double reading = lowest; before > 0 && reading < most; reading += STRIDE) {
      double then = missing(draw, reading + STRIDE, pull);
      if (then <= 0) {
        return reading + STRIDE * before / (before - then);
      }
      before = then;
    }
    return before > 0 ? most : lowest;
  }

  /**
   * What a draw's display shows at a time, if it gets to the lower reading at all [K].
   *
   * @param start of its cut [K], as the least
   * @param time since the start of the cook [s]
   */
  double reading(int draw, double start, double time) {
    double below = Math.max(start, low - REACH);
    double above = high + REACH;
    if (time(draw, below) >= time) {
      return below;
    }
    while (above - below > CLOSE) {
      double middle = 0.5 * (below + above);
      if (time(draw, middle) < time) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return above;
  }

  /** What a display that is drawn on lacks of the target at a reading [K]. */
  private double missing(int draw, double reading, Pull pull) {
    return pull.target(time(draw, reading)) - reading - pull.ahead() * rate(draw, reading);
  }
}
