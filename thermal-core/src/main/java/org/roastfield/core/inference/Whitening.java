package org.roastfield.core.inference;

/**
 * Turns residuals with a drift into independent ones of unit variance, in one pass: the scalar
 * Kalman filter of the drift, whose innovations over their spread they are. The pass is linear in
 * the residuals for a fixed error model, so it whitens derivatives as well.
 */
final class Whitening {

  private static final double LOG_TWO_PI = 1.8378770664093453;

  private final double[] memory;
  private final double[] gain;
  private final double[] inverseSpread;
  private final double halfLogDeterminant;

  /**
   * @param times increasing [s]
   * @param model error model
   * @param precision factor on the inverse variance of each reading's white part, in (0, ∞): 1, or
   *     less for one that stands out
   */
  Whitening(double[] times, ErrorModel model, double[] precision) {
    int n = times.length;
    memory = new double[n];
    gain = new double[n];
    inverseSpread = new double[n];
    double stationary = model.driftSpread() * model.driftSpread();
    double white = model.whiteVariance();
    double variance = stationary;
    double sum = 0;
    for (int k = 0; k < n; k++) {
      double a = k == 0 ? 0 : StrictMath.exp((times[k - 1] - times[k]) / model.driftTime());
      double before = k == 0 ? stationary : a * a * variance + stationary * (1 - a * a);
      double innovation = before + white / precision[k];
      memory[k] = a;
      gain[k] = before / innovation;
      inverseSpread[k] = 1 / Math.sqrt(innovation);
      variance = before * (1 - gain[k]);
      sum += LOG_TWO_PI + StrictMath.log(innovation);
    }
    halfLogDeterminant = 0.5 * sum;
  }

  /** Half the logarithm of the determinant of 2π times the covariance. */
  double halfLogDeterminant() {
    return halfLogDeterminant;
  }

  /**
   * Whitens a column.
   *
   * @param column to whiten, from {@code from} on; not modified unless it is {@code out}
   * @param out where to write, from {@code to} on
   */
  void apply(double[] column, int from, double[] out, int to) {
    double mean = 0;
    for (int k = 0; k < memory.length; k++) {
      double before = memory[k] * mean;
      double innovation = column[from + k] - before;
      mean = before + gain[k] * innovation;
      out[to + k] = innovation * inverseSpread[k];
    }
  }

  /** Minus the logarithm of the density of residuals. */
  double negativeLogDensity(double[] residuals, int from) {
    double mean = 0;
    double sum = 0;
    for (int k = 0; k < memory.length; k++) {
      double before = memory[k] * mean;
      double innovation = residuals[from + k] - before;
      mean = before + gain[k] * innovation;
      double w = innovation * inverseSpread[k];
      sum += w * w;
    }
    return 0.5 * sum + halfLogDeterminant;
  }

  /** What is left of residuals when the drift, as seen from all of them, is taken out. */
  double[] withoutDrift(double[] residuals, int from) {
    int n = memory.length;
    double[] before = new double[n];
    double[] after = new double[n];
    double mean = 0;
    for (int k = 0; k < n; k++) {
      before[k] = memory[k] * mean;
      mean = before[k] + gain[k] * (residuals[from + k] - before[k]);
      after[k] = mean;
    }
    return smoothed(residuals, from, before, after);
  }

  /** Variance of the drift at each reading, as seen from all of them. */
  double[] driftVariance() {
    int n = memory.length;
    double[] variance = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      variance[k] = varianceAfter(k);
      if (k < n - 1) {
        double back = back(k);
        variance[k] += back * back * (variance[k + 1] - varianceBefore(k + 1));
      }
    }
    return variance;
  }

  /** The backward pass: each drift corrected by what the next one turned out to be. */
  private double[] smoothed(double[] residuals, int from, double[] before, double[] after) {
    int n = memory.length;
    double[] white = new double[n];
    double drift = n == 0 ? 0 : after[n - 1];
    for (int k = n - 1; k >= 0; k--) {
      if (k < n - 1) {
        drift = after[k] + back(k) * (drift - before[k + 1]);
      }
      white[k] = residuals[from + k] - drift;
    }
    return white;
  }

  /** Share of the next drift's correction that goes back to this one. */
  private double back(int k) {
    double next = varianceBefore(k + 1);
    return next > 0 ? varianceAfter(k) * memory[k + 1] / next : 0;
  }

  /** Variance of the drift before its reading is seen. */
  private double varianceBefore(int k) {
    return gain[k] / (inverseSpread[k] * inverseSpread[k]);
  }

  /** Variance of the drift after its reading is seen. */
  private double varianceAfter(int k) {
    return varianceBefore(k) * (1 - gain[k]);
  }
}
