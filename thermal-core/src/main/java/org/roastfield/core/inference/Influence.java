package org.roastfield.core.inference;

/**
 * What an estimate would be without some of its evidence, to first order: one Gauss-Newton step
 * from the estimate, under its errors and weights. Where the model is linear and errors are known
 * it is the estimate that a new fit finds. Immutable.
 */
public final class Influence {

  private final double[] moves;
  private final double[][] covariance;
  private final double[][] with;

  private Influence(double[] moves, double[][] covariance, double[][] with) {
    this.moves = moves;
    this.covariance = covariance;
    this.with = with;
  }

  /**
   * Influence of a part of the evidence.
   *
   * @throws IllegalArgumentException if the evidence has no such part
   */
  public static Influence of(FirstOrder around, EvidencePart part) {
    MapEstimate estimate = around.estimate();
    Linearisation linear = around.linear();
    boolean[] left = part.rows(around.calibration().evidence());
    for (int row = 0; row < left.length; row++) {
      left[row] = !left[row];
    }
    Prior prior = estimate.prior();
    double[] z = estimate.coordinates();
    double[] rest = GaussNewton.step(prior, z, linear, linear.all());
    double[] moves = GaussNewton.step(prior, z, linear, left);
    for (int p = 0; p < moves.length; p++) {
      moves[p] -= rest[p];
    }
    return new Influence(moves, GaussNewton.covariance(prior, linear, left), estimate.covariance());
  }

  /** How far a coordinate moves when the part is left out. */
  public double move(int parameter) {
    return moves[parameter];
  }

  /** Standard deviation of a coordinate without the part. */
  public double spread(int parameter) {
    return Math.sqrt(covariance[parameter][parameter]);
  }

  /**
   * Length of the move of some coordinates in posterior spreads: √(dᵀC⁻¹d), so that a move along a
   * poorly known combination counts little.
   *
   * @param parameters at least one
   */
  public double distance(int... parameters) {
    int n = parameters.length;
    double[] move = new double[n];
    double[][] among = new double[n][n];
    for (int a = 0; a < n; a++) {
      move[a] = moves[parameters[a]];
      for (int b = 0; b < n; b++) {
        among[a][b] = with[parameters[a]][parameters[b]];
      }
    }
    double sum = 0;
    for (double each : Cholesky.of(among).whitened(move)) {
      sum += each * each;
    }
    return Math.sqrt(sum);
  }
}
