package org.roastfield.core.plan;

/**
 * What a look at the display at the end of the sear tells of the final core, over all draws that
 * follow the plan: spread of what is left after the best straight line, fitted to one half of the
 * draws and judged on the other.
 *
 * @param withoutLooking standard deviation of the final core [K]
 * @param byTime of the rest after a line in the duration of the gentle heat [K]
 * @param byReading of the rest after a line in the reading at the end of the sear [K]
 */
public record SearCheck(double withoutLooking, double byTime, double byReading) {

  /** Share of a spread below which two are taken for alike: assumed. */
  private static final double ALIKE = 0.05;

  /**
   * Of draws, one number each.
   *
   * @param finalCores [K]
   * @param durations of the gentle heat [s]
   * @param readings at the end of the sear [K]
   */
  static SearCheck of(double[] finalCores, double[] durations, double[] readings) {
    double[] nothing = new double[finalCores.length];
    return new SearCheck(
        left(finalCores, nothing), left(finalCores, durations), left(finalCores, readings));
  }

  /** Spread of what a line fitted to the even draws leaves in the odd ones. */
  private static double left(double[] y, double[] x) {
    double[] sums = new double[5];
    for (int i = 0; i < y.length; i += 2) {
      if (Math.abs(x[i]) <= Double.MAX_VALUE) {
        sums[0]++;
        sums[1] += x[i];
        sums[2] += y[i];
      }
    }
    double meanX = sums[1] / sums[0];
    double meanY = sums[2] / sums[0];
    for (int i = 0; i < y.length; i += 2) {
      if (Math.abs(x[i]) <= Double.MAX_VALUE) {
        sums[3] += (x[i] - meanX) * (x[i] - meanX);
        sums[4] += (x[i] - meanX) * (y[i] - meanY);
      }
    }
    double slope = sums[3] > 0 ? sums[4] / sums[3] : 0;
    double squares = 0;
    int count = 0;
    for (int i = 1; i < y.length; i += 2) {
      if (Math.abs(x[i]) <= Double.MAX_VALUE) {
        double rest = y[i] - meanY - slope * (x[i] - meanX);
        squares += rest * rest;
        count++;
      }
    }
    return Math.sqrt(squares / count);
  }

  /**
   * Whether the reading predicts the final core better than time does; if not it is a check of
   * plausibility only.
   */
  public boolean readingTellsMore() {
    return byReading < (1 - ALIKE) * byTime;
  }
}
