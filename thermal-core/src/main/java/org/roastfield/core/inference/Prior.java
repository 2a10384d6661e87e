package org.roastfield.core.inference;

import java.util.random.RandomGenerator;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What is believed of parameters before the evidence: a normal distribution of their coordinates,
 * cut off at their bounds. Immutable. A profile's posterior becomes the prior of the next cook.
 */
public final class Prior {

  private static final int MOST_ATTEMPTS = 10_000;
  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  private final ParameterSet parameters;
  private final double[] mean;
  private final double[][] covariance;
  private final Cholesky factor;

  private Prior(ParameterSet parameters, double[] mean, double[][] covariance) {
    this.parameters = parameters;
    this.mean = mean;
    this.covariance = covariance;
    this.factor = Cholesky.of(covariance);
  }

  /** The parameters' own priors, independent of each other. */
  public static Prior of(ParameterSet parameters) {
    int n = parameters.size();
    double[][] covariance = new double[n][n];
    for (int p = 0; p < n; p++) {
      double spread = parameters.get(p).spread();
      covariance[p][p] = spread * spread;
    }
    return new Prior(parameters, parameters.centre(), covariance);
  }

  /**
   * A prior with another mean and covariance of the coordinates.
   *
   * @throws IllegalArgumentException if a size differs from the number of parameters or the
   *     covariance is not positive definite
   */
  public static Prior of(ParameterSet parameters, double[] mean, double[][] covariance) {
    int n = parameters.size();
    Check.inRange("length of mean", mean.length, n, n);
    Check.inRange("rows of covariance", covariance.length, n, n);
    double[][] copy = new double[n][];
    for (int p = 0; p < n; p++) {
      Check.inRange("length of row " + p, covariance[p].length, n, n);
      copy[p] = covariance[p].clone();
    }
    return new Prior(parameters, mean.clone(), copy);
  }

  /** The parameters. */
  public ParameterSet parameters() {
    return parameters;
  }

  /** How many parameters. */
  public int size() {
    return mean.length;
  }

  /** Mean of the coordinates; a copy. */
  public double[] mean() {
    return mean.clone();
  }

  /** Standard deviation of a coordinate. */
  public double spread(int parameter) {
    return Math.sqrt(covariance[parameter][parameter]);
  }

  /** Covariance of two coordinates. */
  public double covariance(int a, int b) {
    return covariance[a][b];
  }

  /**
   * Coordinates drawn from the distribution, again and again until they lie within the bounds.
   *
   * @throws IllegalStateException if that takes more than 10 000 attempts
   */
  public double[] draw(RandomGenerator random) {
    double[] normal = new double[mean.length];
    for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
      for (int p = 0; p < normal.length; p++) {
        normal[p] = StudentProposal.normal(random);
      }
      double[] drawn = factor.coloured(normal);
      for (int p = 0; p < drawn.length; p++) {
        drawn[p] += mean[p];
      }
      if (allows(drawn)) {
        return drawn;
      }
    }
    throw new IllegalStateException(
        "the bounds of " + parameters + " leave next to nothing of their distribution");
  }

  double[][] covariance() {
    return covariance;
  }

  Cholesky factor() {
    return factor;
  }

  /** L⁻¹(z − mean). */
  double[] whitened(double[] coordinates) {
    double[] x = new double[mean.length];
    for (int p = 0; p < x.length; p++) {
      x[p] = coordinates[p] - mean[p];
    }
    return factor.whitened(x);
  }

  /** Coordinates with those beyond a bound at it. */
  double[] limited(double[] coordinates) {
    double[] limited = coordinates.clone();
    for (int p = 0; p < limited.length; p++) {
      Parameter parameter = parameters.get(p);
      limited[p] = Math.max(parameter.lowest(), Math.min(parameter.highest(), limited[p]));
    }
    return limited;
  }

  /** Minus the logarithm of the density; the share that bounds cut off is left out. */
  double negativeLogDensity(double[] coordinates) {
    double sum = factor.halfLogDeterminant();
    for (double each : whitened(coordinates)) {
      sum += 0.5 * each * each + HALF_LOG_TWO_PI;
    }
    return sum;
  }

  /** Whether coordinates lie within the bounds. */
  boolean allows(double[] coordinates) {
    for (int p = 0; p < coordinates.length; p++) {
      Parameter parameter = parameters.get(p);
      if (!(coordinates[p] >= parameter.lowest() && coordinates[p] <= parameter.highest())) {
        return false;
      }
    }
    return true;
  }
}
