package org.roastfield.core.inference;

import java.util.Arrays;

/**
 * Shape of a generalised Pareto tail after [ZhangStephens2009], with the weak prior of
 * [Vehtari2024].
 */
final class ParetoTail {

  private static final double PRIOR_SHAPE = 0.5;
  private static final double PRIOR_WEIGHT = 10;

  private ParetoTail() {}

  /**
   * Shape of the largest importance weights: the share of moments that exist is its inverse.
   *
   * @param logWeights logarithms of weights, up to a constant
   * @return the shape; infinite if too few weights count
   */
  static double shape(double[] logWeights) {
    double[] sorted = logWeights.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    int tail = (int) Math.min(Math.ceil(0.2 * n), Math.ceil(3 * Math.sqrt(n)));
    double most = sorted[n - 1];
    if (tail < 5 || !(sorted[n - tail - 1] > Double.NEGATIVE_INFINITY)) {
      return Double.POSITIVE_INFINITY;
    }
    double cut = StrictMath.exp(sorted[n - tail - 1] - most);
    double[] excess = new double[tail];
    for (int i = 0; i < tail; i++) {
      excess[i] = StrictMath.exp(sorted[n - tail + i] - most) - cut;
    }
    return excess[tail - 1] > 0 ? fitted(excess) : Double.NEGATIVE_INFINITY;
  }

  /** Shape of sorted excesses. */
  static double fitted(double[] excess) {
    int n = excess.length;
    int points = 30 + (int) Math.sqrt(n);
    double quarter = excess[(int) (n / 4.0 + 0.5) - 1];
    double largest = excess[n - 1];
    double[] theta = new double[points];
    double[] logs = new double[points];
    for (int j = 0; j < points; j++) {
      theta[j] = 1 / largest + (1 - Math.sqrt(points / (j + 0.5))) / (3 * quarter);
      double k = shape(theta[j], excess);
      logs[j] = n * (StrictMath.log(-theta[j] / k) - k - 1);
    }
    double mean = 0;
    for (int j = 0; j < points; j++) {
      double inverse = 0;
      for (int i = 0; i < points; i++) {
        inverse += StrictMath.exp(logs[i] - logs[j]);
      }
      mean += theta[j] / inverse;
    }
    double k = shape(mean, excess);
    return (n * k + PRIOR_WEIGHT * PRIOR_SHAPE) / (n + PRIOR_WEIGHT);
  }

  private static double shape(double theta, double[] excess) {
    double sum = 0;
    for (double each : excess) {
      sum += StrictMath.log1p(-theta * each);
    }
    return sum / excess.length;
  }
}
