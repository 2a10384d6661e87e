package org.roastfield.core.inference;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Mean, covariance and weight of a normal distribution that is cut off, one coordinate after
 * another.
 */
final class CutNormal {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Where less than this is left of a distribution, all of it is taken to be at the bound. */
  private static final double NOTHING = 1e-12;

  private final double[] mean;
  private final double[][] covariance;
  private double logLeft;

  CutNormal(double[] mean, double[][] covariance) {
    this.mean = mean.clone();
    this.covariance = new double[mean.length][];
    for (int p = 0; p < mean.length; p++) {
      this.covariance[p] = covariance[p].clone();
    }
  }

  /** Cuts one coordinate off at its bounds, either of which may be infinite. */
  void limit(int p, double lowest, double highest) {
    double spread = Math.sqrt(covariance[p][p]);
    double low = (lowest - mean[p]) / spread;
    double high = (highest - mean[p]) / spread;
    double left = NORMAL.cumulativeProbability(high) - NORMAL.cumulativeProbability(low);
    logLeft += StrictMath.log(Math.max(left, NOTHING));
    if (left < NOTHING) {
      move(p, spread * (low > 0 ? low : high), 0);
      return;
    }
    double shift = (NORMAL.density(low) - NORMAL.density(high)) / left;
    double share = 1 + (times(low) - times(high)) / left - shift * shift;
    move(p, spread * shift, share);
  }

  /** x times its density, which is 0 far out. */
  private static double times(double x) {
    return Double.isInfinite(x) ? 0 : x * NORMAL.density(x);
  }

  /**
   * @param by how far the coordinate moves
   * @param share of its variance that is left
   */
  private void move(int p, double by, double share) {
    double[] column = covariance[p].clone();
    double variance = column[p];
    for (int q = 0; q < mean.length; q++) {
      mean[q] += column[q] / variance * by;
      for (int r = 0; r < mean.length; r++) {
        covariance[q][r] -= column[q] * column[r] / variance * (1 - share);
      }
    }
  }

  /** Logarithm of the share of the weight that is left. */
  double logLeft() {
    return logLeft;
  }

  double[] mean() {
    return mean.clone();
  }
}
