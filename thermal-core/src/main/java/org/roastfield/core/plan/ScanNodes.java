package org.roastfield.core.plan;

import java.util.stream.IntStream;

/**
 * Draws that were pulled at each of a few readings: final cores, rates of the display and arrivals,
 * straight between the readings and beyond them.
 */
final class ScanNodes {

  private final double[] readings;

  /** Final cores of each reading, of the planned cook and each station, of each draw [K]. */
  private final double[][][] cores;

  /** Of each reading and draw, over the last {@link Plan#AHEAD} kelvin [K/s]. */
  private final double[][] rates;

  private final boolean[][] arrived;

  /** When rested, of each reading and draw [s]; infinite if never. */
  private final double[][] ready;

  private final double[] reached;
  private final double[] middleRates;

  /**
   * @param readings in order, evenly spaced
   * @param run draws of all readings, those of one side by side
   */
  ScanNodes(double[] readings, Run run) {
    this.readings = readings;
    int count = run.size() / readings.length;
    int[] computed = computed(run, count);
    cores = new double[readings.length][run.cores.length][computed.length];
    rates = new double[readings.length][computed.length];
    arrived = new boolean[readings.length][computed.length];
    ready = new double[readings.length][computed.length];
    reached = new double[readings.length];
    middleRates = new double[readings.length];
    for (int k = 0; k < readings.length; k++) {
      for (int i = 0; i < computed.length; i++) {
        int at = k * count + computed[i];
        for (int s = 0; s < run.cores.length; s++) {
          cores[k][s][i] = run.cores[s][at];
        }
        boolean there = run.pull[at] < Double.POSITIVE_INFINITY && run.pull[at] > run.near[at];
        ready[k][i] = run.ready[at];
        arrived[k][i] = run.pull[at] < Double.POSITIVE_INFINITY;
        rates[k][i] = there ? Plan.AHEAD / (run.pull[at] - run.near[at]) : 0;
        reached[k] += run.pull[at] < Double.POSITIVE_INFINITY ? 1.0 / computed.length : 0;
      }
      middleRates[k] = Spread.of(rates[k]).median();
    }
  }

  private int[] computed(Run run, int count) {
    return IntStream.range(0, count)
        .filter(
            i -> IntStream.range(0, readings.length).allMatch(k -> run.isComputed(k * count + i)))
        .toArray();
  }

  double lowest() {
    return readings[0];
  }

  double highest() {
    return readings[readings.length - 1];
  }

  /** Median over the draws [K/s]. */
  double middleRate(double reading) {
    return at(middleRates, reading);
  }

  /** Share of the draws that arrive at a reading. */
  double reached(double reading) {
    return Math.max(0, Math.min(1, at(reached, reading)));
  }

  /** Share of the draws that meet a rule, each at a reading of its own. */
  double reached(Pull pull) {
    if (pull.ahead() == 0) {
      return reached(pull.target());
    }
    int count = 0;
    for (int i = 0; i < rates[0].length; i++) {
      double reading = readingOf(pull, i);
      count += reading <= highest() && arrived[above(reading)][i] ? 1 : 0;
    }
    return (double) count / rates[0].length;
  }

  /** Final cores of the planned cook and each station, of all draws that go by a rule [K]. */
  double[][] cores(Pull pull) {
    double[][] result = new double[cores[0].length][rates[0].length];
    for (int i = 0; i < rates[0].length; i++) {
      double reading = readingOf(pull, i);
      int k = above(reading);
      double share = share(reading, k);
      for (int s = 0; s < result.length; s++) {
        result[s][i] = cores[k - 1][s][i] + share * (cores[k][s][i] - cores[k - 1][s][i]);
      }
    }
    return result;
  }

  /** When the draws that go by a rule are rested [s]; infinite for those that never are. */
  double[] ready(Pull pull) {
    double[] times = new double[rates[0].length];
    for (int i = 0; i < times.length; i++) {
      double reading = readingOf(pull, i);
      int k = above(reading);
      double later = ready[k][i];
      boolean both = later < Double.POSITIVE_INFINITY;
      times[i] = both ? ready[k - 1][i] + share(reading, k) * (later - ready[k - 1][i]) : later;
    }
    return times;
  }

  /** Reading at which a draw meets a rule: a few steps of a contraction. */
  private double readingOf(Pull pull, int draw) {
    double reading = pull.target() - pull.ahead() * middleRate(pull.target());
    if (pull.ahead() == 0) {
      return pull.target();
    }
    for (int step = 0; step < 6; step++) {
      int k = above(reading);
      double rate = rates[k - 1][draw] + share(reading, k) * (rates[k][draw] - rates[k - 1][draw]);
      reading = pull.target() - pull.ahead() * Math.max(0, rate);
    }
    return reading;
  }

  private double at(double[] values, double reading) {
    int k = above(reading);
    return values[k - 1] + share(reading, k) * (values[k] - values[k - 1]);
  }

  /** Index of the upper of the two readings whose line is used. */
  private int above(double reading) {
    int k = 1;
    while (k < readings.length - 1 && readings[k] < reading) {
      k++;
    }
    return k;
  }

  private double share(double reading, int k) {
    return (reading - readings[k - 1]) / (readings[k] - readings[k - 1]);
  }
}
