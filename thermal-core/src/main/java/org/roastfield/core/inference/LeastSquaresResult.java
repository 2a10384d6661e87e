package org.roastfield.core.inference;

/** What came of a search for least squares. Immutable. */
public final class LeastSquaresResult {

  private final Status status;
  private final double[] x;
  private final double value;
  private final double decrement;
  private final double[][] curvature;
  private final Work work;

  /** How a search ended. */
  public enum Status {
    /** A linear model promises less than the tolerance. */
    CONVERGED,
    /** No step that double arithmetic can tell from none leads down. */
    AT_ROUND_OFF,
    /**
     * Three steps in a row gained less than the tolerance, though a linear model promises more: the
     * least lies at a bound that the unknowns only approach.
     */
    STALLED,
    /** The most steps were taken. */
    MOST_STEPS,
    /** Residuals cannot be computed at the start, or at any shorter step from the last point. */
    MODEL_FAILED
  }

  /**
   * Work of a search, the same on every machine.
   *
   * @param steps taken
   * @param evaluations of residuals
   * @param derivatives how many of them with derivatives
   */
  public record Work(int steps, int evaluations, int derivatives) {}

  LeastSquaresResult(
      Status status, double[] x, double value, double decrement, double[][] curvature, Work work) {
    this.status = status;
    this.x = x.clone();
    this.value = value;
    this.decrement = decrement;
    this.curvature = curvature;
    this.work = work;
  }

  /** How the search ended. */
  public Status status() {
    return status;
  }

  /** Whether the point found is a minimum as far as was asked or can be told. */
  public boolean isMinimum() {
    return status == Status.CONVERGED || status == Status.AT_ROUND_OFF || status == Status.STALLED;
  }

  /** The unknowns found; a copy. */
  public double[] x() {
    return x.clone();
  }

  /** Half the sum of squared residuals there [nat]; infinite if it could not be computed. */
  public double value() {
    return value;
  }

  /** Decrease that a linear model still promises there [nat]. */
  public double decrement() {
    return decrement;
  }

  /** An element of JᵀJ there. */
  public double curvature(int row, int column) {
    return curvature[row][column];
  }

  /** Work done. */
  public Work work() {
    return work;
  }
}
