package org.roastfield.core.inference;

import java.util.random.RandomGenerator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What is believed of parameters before the evidence: a normal distribution of their coordinates,
 * cut off at their bounds. Immutable. A profile's posterior becomes the prior of the next cook.
 */
public final class Prior {

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private static final int MOST_ATTEMPTS = 10_000;

  private final ParameterSet parameters;
  private final double[] mean;
  private final double[][] covariance;
  private final Normal normal;
  private final double logLeft;

  private Prior(ParameterSet parameters, double[] mean, double[][] covariance) {
    this.parameters = parameters;
    this.mean = mean;
    this.covariance = covariance;
    this.normal = Normal.of(mean, covariance);
    this.logLeft = cut().logLeft();
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

  /**
   * The same where more is known of some parameters, as of a cooker by its profile: these get the
   * other's mean and covariance, and are independent of the rest.
   *
   * @param known of parameters that are all among these, by their ids
   * @throws IllegalArgumentException if one is not
   */
  public Prior with(Prior known) {
    int n = size();
    int[] place =
        known.parameters.list().stream().mapToInt(p -> parameters.index(p.id())).toArray();
    double[] middle = mean();
    double[][] wide = new double[n][n];
    boolean[] replaced = new boolean[n];
    for (int a = 0; a < place.length; a++) {
      replaced[place[a]] = true;
      middle[place[a]] = known.mean[a];
      for (int b = 0; b < place.length; b++) {
        wide[place[a]][place[b]] = known.covariance[a][b];
      }
    }
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        if (!replaced[p] && !replaced[q]) {
          wide[p][q] = covariance[p][q];
        }
      }
    }
    return of(parameters, middle, wide);
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

  /**
   * Mean of the coordinates of what the bounds leave of the distribution, where {@link #mean} is
   * that of the whole: bound after bound, the others moved along by their correlation with it.
   * Exact where one coordinate alone has bounds within reach. A copy.
   */
  public double[] expected() {
    return cut().mean();
  }

  private CutNormal cut() {
    CutNormal cut = new CutNormal(mean, covariance);
    for (int p = 0; p < mean.length; p++) {
      cut.limit(p, parameters.get(p).lowest(), parameters.get(p).highest());
    }
    return cut;
  }

  /**
   * Logarithm of the share of the normal distribution's weight that the bounds leave, bound after
   * bound as in {@link #expected}.
   */
  public double logLeft() {
    return logLeft;
  }

  /** Standard deviation of a coordinate. */
  public double spread(int parameter) {
    return Math.sqrt(covariance[parameter][parameter]);
  }

  /**
   * Share of a coordinate's belief that lies below a value: of what its own bounds leave of its
   * normal distribution, as draws have it but for what other coordinates' bounds move.
   */
  public double below(int parameter, double coordinate) {
    Parameter of = parameters.get(parameter);
    double least = unbounded(parameter, of.lowest());
    double most = unbounded(parameter, of.highest());
    double share = (unbounded(parameter, coordinate) - least) / (most - least);
    return Math.max(0, Math.min(1, share));
  }

  private double unbounded(int parameter, double coordinate) {
    return STANDARD.cumulativeProbability((coordinate - mean[parameter]) / spread(parameter));
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
    for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
      double[] drawn = normal.draw(random);
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
    return normal.factor();
  }

  /** L⁻¹(z − mean). */
  double[] whitened(double[] coordinates) {
    return normal.whitened(coordinates);
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

  /** Minus the logarithm of the density, see {@link #logDensity}. */
  double negativeLogDensity(double[] coordinates) {
    return -logDensity(coordinates);
  }

  /** Logarithm of the density within the bounds; beyond them it goes on, for searches. */
  public double logDensity(double[] coordinates) {
    return normal.logDensity(coordinates) - logLeft;
  }

  /** Whether coordinates lie within the bounds. */
  public boolean allows(double[] coordinates) {
    for (int p = 0; p < coordinates.length; p++) {
      Parameter parameter = parameters.get(p);
      if (!(coordinates[p] >= parameter.lowest() && coordinates[p] <= parameter.highest())) {
        return false;
      }
    }
    return true;
  }
}
