package org.roastfield.core.inference;

import java.util.random.RandomGenerator;

/** A normal distribution of several coordinates. Immutable. */
public final class Normal {

  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  private final double[] mean;
  private final Cholesky factor;

  private Normal(double[] mean, Cholesky factor) {
    this.mean = mean;
    this.factor = factor;
  }

  /**
   * A distribution of its moments, which are copied.
   *
   * @throws IllegalArgumentException if the covariance is not positive definite
   */
  public static Normal of(double[] mean, double[][] covariance) {
    return new Normal(mean.clone(), Cholesky.of(covariance));
  }

  /**
   * A draw.
   *
   * @param random the same gives the same draw on every Java virtual machine
   */
  public double[] draw(RandomGenerator random) {
    return moved(mean, 1, random);
  }

  /** A place plus a draw of mean zero, stretched. */
  public double[] moved(double[] place, double stretch, RandomGenerator random) {
    double[] x = new double[place.length];
    for (int p = 0; p < x.length; p++) {
      x[p] = stretch * standard(random);
    }
    double[] moved = factor.coloured(x);
    for (int p = 0; p < moved.length; p++) {
      moved[p] += place[p];
    }
    return moved;
  }

  /** Logarithm of the density. */
  public double logDensity(double[] coordinates) {
    double sum = -factor.halfLogDeterminant();
    for (double each : whitened(coordinates)) {
      sum -= 0.5 * each * each + HALF_LOG_TWO_PI;
    }
    return sum;
  }

  /** A normal number by the inverse of its distribution: the same on every JVM. */
  public static double standard(RandomGenerator random) {
    return StudentProposal.normal(random);
  }

  /** L⁻¹(z − mean). */
  double[] whitened(double[] coordinates) {
    double[] x = new double[mean.length];
    for (int p = 0; p < x.length; p++) {
      x[p] = coordinates[p] - mean[p];
    }
    return factor.whitened(x);
  }

  Cholesky factor() {
    return factor;
  }
}
