package org.roastfield.lab.intake;

/**
 * How much a trace wanders from reading to reading, measured by the trace itself: how far readings
 * are off the middle of the two before and the two after. Few of them being far off, as spikes are,
 * changes it little, and a steady rise or fall not at all.
 */
final class Noise {

  /** Standard deviation of a normal law over the median of its sizes. */
  private static final double OF_MEDIAN = 1.4826;

  /**
   * Standard deviation of a reading off the middle of its four neighbours over that of the reading,
   * where errors are independent and normal: the middle of four has 0.546 of them, by numbers.
   */
  private static final double OF_ONE = 1.139;

  /** Readings on either side that say how noisy a place is; where noise begins, one side does. */
  private static final int AROUND = 40;

  private final Series series;
  private final double deviation;

  Noise(Series series) {
    this.series = series;
    this.deviation = deviation(0, series.size());
  }

  /** Standard deviation of a single reading's noise, over all of the trace [K]. */
  double deviation() {
    return deviation;
  }

  /** The same of the noisier of the whole trace, the readings before one and those after it [K]. */
  double deviation(int i) {
    double before = deviation(i - AROUND, i);
    double after = deviation(i + 1, i + 1 + AROUND);
    return Math.max(deviation, Math.max(before, after));
  }

  private double deviation(int from, int to) {
    int first = Math.max(1, from);
    double[] sizes = new double[Math.max(0, Math.min(series.size() - 1, to) - first)];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(off(first + i));
    }
    return sizes.length == 0 ? 0 : OF_MEDIAN / OF_ONE * Series.median(sizes);
  }

  /**
   * How far a reading is off the middle of its neighbours [K], the smallest and the largest of them
   * left out if it has two on either side.
   *
   * @param i neither the first nor the last
   */
  double off(int i) {
    double before = series.at(i - 1);
    double after = series.at(i + 1);
    if (i < 2 || i > series.size() - 3) {
      return series.at(i) - 0.5 * (before + after);
    }
    double first = series.at(i - 2);
    double last = series.at(i + 2);
    double low = Math.min(Math.min(first, last), Math.min(before, after));
    double high = Math.max(Math.max(first, last), Math.max(before, after));
    return series.at(i) - 0.5 * (first + before + after + last - low - high);
  }
}
