package org.roastfield.lab.replay;

/**
 * Least squares of a few parameters within bounds, after Levenberg and Marquardt, with central
 * differences. A parameter at a bound that the step would leave stays there.
 */
final class LeastSquares {

  private static final int MOST_STEPS = 30;
  private static final double FIRST_DAMPING = 1e-3;
  private static final double MOST_DAMPING = 1e8;
  private static final double FACTOR = 10;
  private static final double SETTLED = 1e-5;

  /** Differences between computed and measured. */
  interface Residuals {
    double[] at(double[] parameters);
  }

  private final Residuals residuals;
  private final double[] step;
  private final double[] low;
  private final double[] high;

  /**
   * @param step half the difference for derivatives [parameters]
   * @param low lower bounds [parameters]
   * @param high upper bounds [parameters]
   */
  LeastSquares(Residuals residuals, double[] step, double[] low, double[] high) {
    this.residuals = residuals;
    this.step = step.clone();
    this.low = low.clone();
    this.high = high.clone();
  }

  /** Parameters of a least sum of squares near {@code start}. */
  double[] solve(double[] start) {
    double[] x = start.clone();
    double[] r = residuals.at(x);
    double damping = FIRST_DAMPING;
    for (int i = 0; i < MOST_STEPS && x.length > 0; i++) {
      double[][] jacobian = jacobian(x);
      double before = squares(r);
      boolean better = false;
      while (!better && damping < MOST_DAMPING) {
        double[] next = moved(x, jacobian, r, damping);
        double[] nextResiduals = residuals.at(next);
        better = squares(nextResiduals) < before;
        damping = better ? damping / FACTOR : damping * FACTOR;
        if (better) {
          x = next;
          r = nextResiduals;
        }
      }
      if (!better || before - squares(r) < SETTLED * before) {
        return x;
      }
    }
    return x;
  }

  private double[][] jacobian(double[] x) {
    double[][] jacobian = new double[x.length][];
    for (int p = 0; p < x.length; p++) {
      double[] above = x.clone();
      double[] below = x.clone();
      above[p] = Math.min(high[p], x[p] + step[p]);
      below[p] = Math.max(low[p], x[p] - step[p]);
      double[] a = residuals.at(above);
      double[] b = residuals.at(below);
      for (int i = 0; i < a.length; i++) {
        a[i] = (a[i] - b[i]) / (above[p] - below[p]);
      }
      jacobian[p] = a;
    }
    return jacobian;
  }

  private double[] moved(double[] x, double[][] jacobian, double[] r, double damping) {
    int n = x.length;
    boolean[] held = new boolean[n];
    double[] change = new double[n];
    for (int round = 0; round <= n; round++) {
      change = change(jacobian, r, damping, held);
      boolean free = true;
      for (int p = 0; p < n; p++) {
        double aim = x[p] + change[p];
        boolean below = x[p] <= low[p] && aim < low[p];
        boolean leaves = below || (x[p] >= high[p] && aim > high[p]);
        if (leaves && !held[p]) {
          held[p] = true;
          free = false;
        }
      }
      if (free) {
        break;
      }
    }
    double[] next = new double[n];
    for (int p = 0; p < n; p++) {
      next[p] = Math.max(low[p], Math.min(high[p], x[p] + change[p]));
    }
    return next;
  }

  /** −(JᵀJ + damping diag JᵀJ)⁻¹ Jᵀ r, 0 for parameters that are held. */
  private static double[] change(double[][] jacobian, double[] r, double damping, boolean[] held) {
    int n = jacobian.length;
    double[][] a = new double[n][n + 1];
    for (int p = 0; p < n; p++) {
      if (held[p]) {
        a[p][p] = 1;
        continue;
      }
      for (int q = 0; q < n; q++) {
        a[p][q] = held[q] ? 0 : product(jacobian[p], jacobian[q]);
      }
      a[p][p] += damping * a[p][p] + Double.MIN_NORMAL;
      a[p][n] = -product(jacobian[p], r);
    }
    return eliminated(a);
  }

  /** Solution of a system with its right-hand side in the last column, overwritten. */
  private static double[] eliminated(double[][] a) {
    int n = a.length;
    for (int p = 0; p < n; p++) {
      for (int q = p + 1; q < n; q++) {
        double factor = a[q][p] / a[p][p];
        for (int c = p; c <= n; c++) {
          a[q][c] -= factor * a[p][c];
        }
      }
    }
    double[] x = new double[n];
    for (int p = n - 1; p >= 0; p--) {
      double sum = a[p][n];
      for (int q = p + 1; q < n; q++) {
        sum -= a[p][q] * x[q];
      }
      x[p] = sum / a[p][p];
    }
    return x;
  }

  /** Sum of squares; infinite where a difference is no number. */
  static double squares(double[] r) {
    double sum = product(r, r);
    return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
