package org.roastfield.core.inference;

import org.jspecify.annotations.Nullable;

/** Residuals whose half sum of squares is to be least. */
public interface LeastSquaresProblem {

  /** How many unknowns. */
  int unknowns();

  /** How many residuals. */
  int residuals();

  /**
   * Computes the residuals at a point, and their derivatives if asked.
   *
   * @param x the unknowns, not modified
   * @param r out: residuals
   * @param jacobian out, or null if not wanted: derivatives, one row an unknown
   * @return false if the point cannot be computed; then the outputs hold nothing
   */
  boolean at(double[] x, double[] r, double @Nullable [][] jacobian);
}
