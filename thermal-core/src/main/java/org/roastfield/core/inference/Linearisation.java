package org.roastfield.core.inference;

import java.util.Arrays;

/**
 * What evidence says around a point to first order: whitened residuals and their derivatives by the
 * coordinates, in the order of the evidence.
 */
final class Linearisation {

  private final double[] residuals;
  private final double[][] columns;

  /**
   * @param residuals model less measured
   * @param columns one row a coordinate
   */
  Linearisation(double[] residuals, double[][] columns) {
    this.residuals = residuals;
    this.columns = columns;
  }

  /** Model less measured, whitened; not copied. */
  double[] residuals() {
    return residuals;
  }

  /** Derivatives, one row a coordinate, whitened; not copied. */
  double[][] columns() {
    return columns;
  }

  /** A row filter that lets all pass. */
  boolean[] all() {
    boolean[] all = new boolean[residuals.length];
    Arrays.fill(all, true);
    return all;
  }

  /** JᵀJ of some of the rows. */
  double[][] information(boolean[] rows) {
    int n = columns.length;
    double[][] information = new double[n][n];
    for (int p = 0; p < n; p++) {
      for (int q = 0; q <= p; q++) {
        information[p][q] = product(columns[p], columns[q], rows);
        information[q][p] = information[p][q];
      }
    }
    return information;
  }

  /** Jᵀw of some of the rows. */
  double[] gradient(boolean[] rows) {
    double[] gradient = new double[columns.length];
    for (int p = 0; p < gradient.length; p++) {
      gradient[p] = product(columns[p], residuals, rows);
    }
    return gradient;
  }

  private static double product(double[] a, double[] b, boolean[] rows) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      if (rows[i]) {
        sum += a[i] * b[i];
      }
    }
    return sum;
  }
}
