package org.roastfield.core.inference;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/** Lower triangle L of a covariance, LLᵀ, and what it is good for. Immutable. */
final class Cholesky {

  private final double[][] lower;

  private Cholesky(double[][] lower) {
    this.lower = lower;
  }

  /**
   * Factor of a symmetric matrix.
   *
   * @throws IllegalArgumentException if it is not positive definite
   */
  static Cholesky of(double[][] matrix) {
    int n = matrix.length;
    DMatrixRMaj a = new DMatrixRMaj(matrix);
    var decomposition = DecompositionFactory_DDRM.chol(n, true);
    if (!decomposition.decompose(a)) {
      throw new IllegalArgumentException("covariance must be positive definite");
    }
    DMatrixRMaj l = decomposition.getT(null);
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        lower[i][j] = l.get(i, j);
      }
    }
    return new Cholesky(lower);
  }

  /** Whether a symmetric matrix has a factor. */
  static boolean isPositive(double[][] matrix) {
    return DecompositionFactory_DDRM.chol(matrix.length, true).decompose(new DMatrixRMaj(matrix));
  }

  /** L⁻¹ x. */
  double[] whitened(double[] x) {
    int n = lower.length;
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = x[i];
      for (int j = 0; j < i; j++) {
        sum -= lower[i][j] * w[j];
      }
      w[i] = sum / lower[i][i];
    }
    return w;
  }

  /** L x. */
  double[] coloured(double[] x) {
    int n = lower.length;
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        y[i] += lower[i][j] * x[j];
      }
    }
    return y;
  }

  /** Logarithm of the determinant of L. */
  double halfLogDeterminant() {
    double sum = 0;
    for (int i = 0; i < lower.length; i++) {
      sum += StrictMath.log(lower[i][i]);
    }
    return sum;
  }

  /** (LLᵀ)⁻¹. */
  double[][] inverse() {
    int n = lower.length;
    double[][] columns = new double[n][];
    for (int j = 0; j < n; j++) {
      double[] unit = new double[n];
      unit[j] = 1;
      columns[j] = whitened(unit);
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        for (int k = 0; k < n; k++) {
          inverse[i][j] += columns[i][k] * columns[j][k];
        }
      }
    }
    return inverse;
  }
}
