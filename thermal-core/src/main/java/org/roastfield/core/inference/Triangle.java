package org.roastfield.core.inference;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;

/**
 * A linear least-squares problem min ‖J d + r‖ reduced by Householder reflections to a triangle: R
 * d + q, with a rest that no d changes. Normal equations are never formed, so a badly conditioned
 * Jacobian keeps its digits.
 */
final class Triangle {

  private final int unknowns;
  private final DMatrixRMaj r;

  /**
   * @param jacobian one row an unknown
   * @param residuals r
   */
  Triangle(double[][] jacobian, double[] residuals) {
    unknowns = jacobian.length;
    int rows = Math.max(residuals.length, unknowns + 1);
    DMatrixRMaj augmented = new DMatrixRMaj(rows, unknowns + 1);
    for (int i = 0; i < residuals.length; i++) {
      for (int p = 0; p < unknowns; p++) {
        augmented.unsafe_set(i, p, jacobian[p][i]);
      }
      augmented.unsafe_set(i, unknowns, residuals[i]);
    }
    r = triangle(augmented);
  }

  private static DMatrixRMaj triangle(DMatrixRMaj matrix) {
    QRDecomposition<DMatrixRMaj> qr =
        DecompositionFactory_DDRM.qr(matrix.getNumRows(), matrix.getNumCols());
    // The answer is whether a column is 0, which does no harm here.
    boolean unused = qr.decompose(matrix);
    return qr.getR(null, true);
  }

  /** Decrease of ½‖J d + r‖² that the best d brings. */
  double decrement() {
    double sum = 0;
    for (int p = 0; p < unknowns; p++) {
      sum += q(p) * q(p);
    }
    return 0.5 * sum;
  }

  /** Decrease of ½‖J d + r‖² that a given d brings. */
  double decrease(double[] d) {
    double sum = 0;
    for (int p = 0; p < unknowns; p++) {
      double move = 0;
      for (int j = p; j < unknowns; j++) {
        move += r.unsafe_get(p, j) * d[j];
      }
      sum -= move * (q(p) + 0.5 * move);
    }
    return sum;
  }

  /** The d of least ½‖J d + r‖² + ½ damping ‖scale d‖². */
  double[] step(double damping, double[] scale) {
    DMatrixRMaj stacked = new DMatrixRMaj(2 * unknowns + 1, unknowns + 1);
    double root = Math.sqrt(damping);
    for (int p = 0; p < unknowns; p++) {
      for (int j = p; j <= unknowns; j++) {
        stacked.unsafe_set(p, j, r.unsafe_get(p, j));
      }
      stacked.unsafe_set(unknowns + p, p, root * scale[p]);
    }
    DMatrixRMaj damped = triangle(stacked);
    double[] d = new double[unknowns];
    for (int p = unknowns - 1; p >= 0; p--) {
      double sum = -damped.unsafe_get(p, unknowns);
      for (int j = p + 1; j < unknowns; j++) {
        sum -= damped.unsafe_get(p, j) * d[j];
      }
      d[p] = sum == 0 ? 0 : sum / damped.unsafe_get(p, p);
    }
    return d;
  }

  /** JᵀJ. */
  double[][] curvature() {
    double[][] curvature = new double[unknowns][unknowns];
    for (int i = 0; i < unknowns; i++) {
      for (int j = 0; j < unknowns; j++) {
        for (int p = 0; p <= Math.min(i, j); p++) {
          curvature[i][j] += r.unsafe_get(p, i) * r.unsafe_get(p, j);
        }
      }
    }
    return curvature;
  }

  private double q(int p) {
    return r.unsafe_get(p, unknowns);
  }
}
