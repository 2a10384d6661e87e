package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The most probable coordinates and a normal distribution around them: Laplace's approximation,
 * averaged over what is not known of the errors. Immutable.
 */
public final class MapEstimate {

  /** Share of variance that evidence must take from a prior before anything is claimed. */
  public static final double LEAST_CONTRACTION = 0.3;

  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  private final Prior prior;
  private final LeastSquaresResult found;
  private final double[] coordinates;
  private final double[] mean;
  private final double[][] covariance;
  private final double objective;
  private final List<ErrorModel> errors;
  private final List<double[]> precision;
  private final double[] predicted;
  private final double agreement;

  private MapEstimate(
      Prior prior,
      LeastSquaresResult found,
      double[] coordinates,
      double[] mean,
      double[][] covariance,
      double objective,
      List<ErrorModel> errors,
      List<double[]> precision,
      double[] predicted,
      double agreement) {
    this.prior = prior;
    this.found = found;
    this.coordinates = coordinates;
    this.mean = mean;
    this.covariance = covariance;
    this.objective = objective;
    this.errors = List.copyOf(errors);
    this.precision = List.copyOf(precision);
    this.predicted = predicted;
    this.agreement = agreement;
  }

  static MapEstimate of(
      Prior prior,
      LeastSquaresResult found,
      double[] coordinates,
      ErrorMixture mixture,
      double objective,
      List<ErrorModel> errors,
      List<double[]> precision,
      double[] predicted) {
    return new MapEstimate(
        prior,
        found,
        coordinates,
        prior.limited(mixture.mean()),
        mixture.covariance(),
        objective,
        errors,
        precision,
        predicted,
        Double.NaN);
  }

  /** A search that found nothing: what is believed stays the prior. */
  static MapEstimate none(Prior prior, LeastSquaresResult found, double[] coordinates) {
    return new MapEstimate(
        prior,
        found,
        coordinates,
        prior.mean(),
        prior.covariance(),
        Double.POSITIVE_INFINITY,
        List.of(),
        List.of(),
        new double[0],
        Double.NaN);
  }

  MapEstimate withAgreement(double share) {
    return new MapEstimate(
        prior,
        found,
        coordinates,
        mean,
        covariance,
        objective,
        errors,
        precision,
        predicted,
        share);
  }

  /** How the search ended. */
  public LeastSquaresResult.Status status() {
    return found.status();
  }

  /** Whether there is an estimate to speak of. */
  public boolean isFound() {
    return objective < Double.POSITIVE_INFINITY;
  }

  /** What was believed before. */
  public Prior prior() {
    return prior;
  }

  /**
   * Mean of the posterior's coordinates, over what is not known of the errors; at a bound where the
   * normal approximation's lies beyond it. A copy.
   */
  public double[] mean() {
    return mean.clone();
  }

  /** The most probable coordinates under the errors that the residuals speak for; a copy. */
  public double[] coordinates() {
    return coordinates.clone();
  }

  /** Value of a parameter at the mean of its coordinate, its median [unit]. */
  public double value(int parameter) {
    return prior.parameters().get(parameter).scale().value(mean[parameter]);
  }

  /** Standard deviation of a coordinate. */
  public double spread(int parameter) {
    return Math.sqrt(covariance[parameter][parameter]);
  }

  /** Covariance of two coordinates. */
  public double covariance(int a, int b) {
    return covariance[a][b];
  }

  /** Correlation of two coordinates, in [−1, 1]. */
  public double correlation(int a, int b) {
    return covariance[a][b] / (spread(a) * spread(b));
  }

  /**
   * Share of a coordinate's prior variance that the evidence took away: 0 nothing learned, 1 known
   * exactly. Below {@link #LEAST_CONTRACTION} the prior speaks, not the evidence.
   */
  public double contraction(int parameter) {
    double before = prior.spread(parameter);
    return 1 - covariance[parameter][parameter] / (before * before);
  }

  /** Combinations of coordinates in order of how much the evidence says of them, the most first. */
  public List<Direction> directions() {
    return Direction.all(prior.factor(), covariance);
  }

  /** Minus the logarithm of likelihood and prior, averaged over error models [nat]. */
  public double objective() {
    return objective;
  }

  /**
   * Logarithm of the evidence: of the likelihood's mean over the prior, by Laplace's approximation
   * [nat], of what the bounds leave of prior and posterior. Differences between models of the same
   * readings compare them; −∞ if nothing was found.
   */
  public double logEvidence() {
    return isFound()
        ? -objective
            + prior.size() * HALF_LOG_TWO_PI
            + Cholesky.of(covariance).halfLogDeterminant()
            + asPrior().logLeft()
        : Double.NEGATIVE_INFINITY;
  }

  /** Error model that the residuals of a series speak for. */
  public ErrorModel errors(int series) {
    return errors.get(series);
  }

  /** Weight of a reading's white part, at most 1.25: far below 1 for one that stands out. */
  public double weight(int series, int reading) {
    return precision.get(series)[reading];
  }

  /** Predictions at the estimate, in the order of the evidence; a copy. */
  public double[] predicted() {
    return predicted.clone();
  }

  /** Share of the starts that ended within 0.1 nat of the best; NaN if there was one alone. */
  public double agreement() {
    return agreement;
  }

  /** Work of the last search. */
  public LeastSquaresResult.Work work() {
    return found.work();
  }

  List<double[]> precision() {
    return precision;
  }

  double[][] covariance() {
    return covariance;
  }

  /** The posterior as the prior of another cook with the same parameters. */
  public Prior asPrior() {
    return Prior.of(prior.parameters(), mean, covariance);
  }

  /** A combination of coordinates, one prior standard deviation long. */
  public static final class Direction {

    private final double information;
    private final double[] move;
    private final double[] white;

    private Direction(double information, double[] move, double[] white) {
      this.information = information;
      this.move = move;
      this.white = white;
    }

    /**
     * Between what was believed before and after, of the same parameters.
     *
     * @throws IllegalArgumentException if the parameters differ
     */
    public static List<Direction> between(Prior before, Prior after) {
      if (!before.parameters().equals(after.parameters())) {
        throw new IllegalArgumentException(
            "after must be of the parameters of before, "
                + before.parameters()
                + ", was of "
                + after.parameters());
      }
      return all(before.factor(), after.covariance());
    }

    /** Eigenvectors of Lᵀ C⁻¹ L, whose eigenvalues are 1 where the evidence says nothing. */
    static List<Direction> all(Cholesky prior, double[][] covariance) {
      int n = covariance.length;
      double[][] columns = new double[n][];
      for (int j = 0; j < n; j++) {
        double[] unit = new double[n];
        unit[j] = 1;
        columns[j] = prior.coloured(unit);
      }
      double[][] relative = new double[n][n];
      double[][] precision = Cholesky.of(covariance).inverse();
      for (int a = 0; a < n; a++) {
        double[] product = GaussNewton.product(precision, columns[a]);
        for (int b = 0; b < n; b++) {
          relative[a][b] = GaussNewton.product(columns[b], product);
        }
      }
      return of(prior, new EigenDecomposition(new Array2DRowRealMatrix(relative, false)));
    }

    private static List<Direction> of(Cholesky prior, EigenDecomposition eigen) {
      List<Direction> directions = new ArrayList<>();
      for (int k = 0; k < eigen.getRealEigenvalues().length; k++) {
        double[] white = eigen.getEigenvector(k).toArray();
        double information = Math.max(0, eigen.getRealEigenvalue(k) - 1);
        directions.add(new Direction(information, prior.coloured(white), white));
      }
      return directions;
    }

    /** Inverse variances that the evidence adds to the prior's one; below 1 it says little. */
    public double information() {
      return information;
    }

    /** Share of the prior variance along it that the evidence took away. */
    public double contraction() {
      return information / (1 + information);
    }

    /** How far a coordinate moves along it. */
    public double move(int parameter) {
      return move[parameter];
    }

    /** Where along it a whitened point lies, in prior standard deviations. */
    double along(double[] point) {
      return GaussNewton.product(white, point);
    }
  }
}
