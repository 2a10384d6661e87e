package org.roastfield.core.inference;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.roastfield.core.internal.Check;

/**
 * What one log says of the numbers that its cook shares with others, and nothing of what was
 * believed before: the normal factor exp(ηᵀs − ½ sᵀΛs) by which its posterior differs from its
 * prior, with the cook's own numbers integrated out, eq. (89). Sites of several logs multiply,
 * where their posteriors would count the prior once for each. Immutable.
 *
 * <p>Exact for a model that is linear in its coordinates under normal errors; else as good as the
 * estimate's normal approximation.
 */
public final class LogSite {

  private final RealMatrix information;
  private final RealVector shift;

  private LogSite(RealMatrix information, RealVector shift) {
    this.information = information;
    this.shift = shift;
  }

  /**
   * Site of an estimate.
   *
   * @param estimate of one cook
   * @param shared ids of the coordinates that make up each shared number: one, or several whose sum
   *     it is, such as a cooker's convection and what a cook adds to it. The evidence may depend on
   *     them by their sum alone
   * @throws IllegalArgumentException if an id is not of the estimate, or nothing is shared
   */
  public static LogSite of(MapEstimate estimate, List<List<String>> shared) {
    Prior prior = estimate.prior();
    RealMatrix sums = sums(prior, shared);
    RealVector before = sums.operate(Matrices.vector(prior.mean()));
    RealMatrix wide = Matrices.sandwich(sums, Matrices.matrix(prior.covariance()));
    RealVector after = sums.operate(Matrices.vector(estimate.mean()));
    RealMatrix narrow = Matrices.sandwich(sums, Matrices.matrix(estimate.covariance()));
    return between(before, wide, after, narrow);
  }

  private static RealMatrix sums(Prior prior, List<List<String>> shared) {
    Check.inRange("number of shared", shared.size(), 1, prior.size());
    RealMatrix sums = new Array2DRowRealMatrix(shared.size(), prior.size());
    for (int s = 0; s < shared.size(); s++) {
      for (String id : shared.get(s)) {
        sums.setEntry(s, prior.parameters().index(id), 1);
      }
    }
    return sums;
  }

  /**
   * The factor from one belief to another about the same coordinates, such as from what was
   * believed of a cooker before its logs to what a profile says of it after them.
   *
   * @throws IllegalArgumentException if the sizes differ
   */
  public static LogSite between(Prior before, Prior after) {
    Check.inRange("size of after", after.size(), before.size(), before.size());
    return between(
        Matrices.vector(before.mean()),
        Matrices.matrix(before.covariance()),
        Matrices.vector(after.mean()),
        Matrices.matrix(after.covariance()));
  }

  /**
   * The factor from one normal distribution to another. A direction in which the second is no
   * narrower than the first has taught nothing: it stays out, mean and all.
   */
  static LogSite between(RealVector before, RealMatrix wide, RealVector after, RealMatrix narrow) {
    int n = before.getDimension();
    Cholesky unit = Cholesky.of(wide.getData());
    RealMatrix whitening = new Array2DRowRealMatrix(n, n);
    for (int j = 0; j < n; j++) {
      double[] e = new double[n];
      e[j] = 1;
      whitening.setColumn(j, unit.whitened(e));
    }
    RealMatrix relative = Matrices.symmetric(Matrices.sandwich(whitening, narrow));
    EigenDecomposition eigen = new EigenDecomposition(relative);
    RealVector moved = whitening.operate(after.subtract(before));
    RealMatrix information = new Array2DRowRealMatrix(n, n);
    RealVector shift = before.mapMultiply(0);
    for (int k = 0; k < n; k++) {
      double variance = eigen.getRealEigenvalue(k);
      if (variance < 1) {
        RealVector direction = whitening.transpose().operate(eigen.getEigenvector(k));
        double along = eigen.getEigenvector(k).dotProduct(moved);
        information =
            information.add(direction.outerProduct(direction).scalarMultiply(1 / variance - 1));
        shift = shift.add(direction.mapMultiply(along / variance));
      }
    }
    return new LogSite(information, shift.add(information.operate(before)));
  }

  /** How many shared numbers. */
  public int size() {
    return shift.getDimension();
  }

  /** Λ; a copy. */
  public double[][] information() {
    return information.getData();
  }

  /** η; a copy. */
  public double[] shift() {
    return shift.toArray();
  }

  RealMatrix precision() {
    return information;
  }

  RealVector weighted() {
    return shift;
  }

  /**
   * What the log says of the cooker, if each cook adds a draw of its own: Λ becomes (I + ΛΣ)⁻¹Λ and
   * η likewise, which needs no inverse of either.
   */
  LogSite blurred(RealMatrix betweenCooks) {
    RealMatrix blur =
        Matrices.inverse(Matrices.identity(size()).add(information.multiply(betweenCooks)));
    return new LogSite(Matrices.symmetric(blur.multiply(information)), blur.operate(shift));
  }
}
