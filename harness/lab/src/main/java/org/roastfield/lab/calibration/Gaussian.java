package org.roastfield.lab.calibration;

import java.util.random.RandomGenerator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;

/** A normal distribution of several coordinates. Immutable. */
final class Gaussian {

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);
  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  /** Relative difference of two entries across the diagonal that counts as rounding. */
  private static final double ASYMMETRY = 1e-9;

  private final double[] mean;
  private final double[][] lower;
  private final double constant;

  private Gaussian(double[] mean, double[][] lower) {
    this.mean = mean;
    this.lower = lower;
    double sum = 0;
    for (int p = 0; p < mean.length; p++) {
      sum -= StrictMath.log(lower[p][p]) + HALF_LOG_TWO_PI;
    }
    constant = sum;
  }

  /**
   * A distribution of its moments, which are copied.
   *
   * @throws IllegalArgumentException if the covariance is not positive definite
   */
  static Gaussian of(double[] mean, double[][] covariance) {
    try {
      var factor =
          new CholeskyDecomposition(new Array2DRowRealMatrix(covariance), ASYMMETRY, 0).getL();
      return new Gaussian(mean.clone(), factor.getData());
    } catch (NonPositiveDefiniteMatrixException e) {
      throw new IllegalArgumentException("covariance must be positive definite", e);
    }
  }

  double[] draw(RandomGenerator random) {
    return moved(mean, 1, random);
  }

  /** A place plus a draw of mean zero, stretched. */
  double[] moved(double[] place, double stretch, RandomGenerator random) {
    int n = place.length;
    double[] x = new double[n];
    for (int p = 0; p < n; p++) {
      x[p] = stretch * standard(random);
    }
    double[] moved = place.clone();
    for (int p = 0; p < n; p++) {
      for (int q = 0; q <= p; q++) {
        moved[p] += lower[p][q] * x[q];
      }
    }
    return moved;
  }

  double logDensity(double[] z) {
    int n = z.length;
    double[] w = new double[n];
    double sum = constant;
    for (int p = 0; p < n; p++) {
      w[p] = z[p] - mean[p];
      for (int q = 0; q < p; q++) {
        w[p] -= lower[p][q] * w[q];
      }
      w[p] /= lower[p][p];
      sum -= 0.5 * w[p] * w[p];
    }
    return sum;
  }

  /** A normal number by the inverse of its distribution: the same on every JVM. */
  static double standard(RandomGenerator random) {
    return STANDARD.inverseCumulativeProbability(Math.max(random.nextDouble(), 0x1p-54));
  }
}
