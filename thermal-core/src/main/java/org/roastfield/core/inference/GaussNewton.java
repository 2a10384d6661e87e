package org.roastfield.core.inference;

/** Steps and covariances of linearised evidence and a prior. */
final class GaussNewton {

  private GaussNewton() {}

  /** (P⁻¹ + JᵀJ)⁻¹ with some of the rows. */
  static double[][] covariance(Prior prior, Linearisation linear, boolean[] rows) {
    return Cholesky.of(sum(prior.factor().inverse(), linear.information(rows))).inverse();
  }

  /** −(P⁻¹ + JᵀJ)⁻¹ (Jᵀw + P⁻¹(z − m)) with some of the rows. */
  static double[] step(Prior prior, double[] z, Linearisation linear, boolean[] rows) {
    double[] mean = prior.mean();
    double[] away = new double[z.length];
    for (int p = 0; p < z.length; p++) {
      away[p] = z[p] - mean[p];
    }
    double[] gradient = product(prior.factor().inverse(), away);
    double[] more = linear.gradient(rows);
    for (int p = 0; p < z.length; p++) {
      gradient[p] = -gradient[p] - more[p];
    }
    return product(covariance(prior, linear, rows), gradient);
  }

  /** The sum of two matrices. */
  static double[][] sum(double[][] a, double[][] b) {
    double[][] sum = new double[a.length][a.length];
    for (int p = 0; p < a.length; p++) {
      for (int q = 0; q < a.length; q++) {
        sum[p][q] = a[p][q] + b[p][q];
      }
    }
    return sum;
  }

  /** A x. */
  static double[] product(double[][] a, double[] x) {
    double[] y = new double[a.length];
    for (int p = 0; p < y.length; p++) {
      y[p] = product(a[p], x);
    }
    return y;
  }

  /** aᵀx. */
  static double product(double[] a, double[] x) {
    double sum = 0;
    for (int p = 0; p < x.length; p++) {
      sum += a[p] * x[p];
    }
    return sum;
  }
}
