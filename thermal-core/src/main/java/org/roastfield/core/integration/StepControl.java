package org.roastfield.core.integration;

/**
 * Step sizes: the usual controller for an embedded error of order 3 (local error h⁴), in kelvin.
 */
final class StepControl {

  private static final double SAFETY = 0.9;
  private static final double LARGEST_GROWTH = 5;
  private static final double SMALLEST_SHRINK = 0.1;

  private final double tolerance;
  private boolean afterRejection;

  StepControl(double tolerance) {
    this.tolerance = tolerance;
  }

  boolean accepts(double error) {
    return error <= tolerance;
  }

  /** Factor of the next step after an error, never above 1 right after a rejection. */
  double factor(double error) {
    double ratio = error / tolerance;
    double factor = ratio > 0 ? SAFETY / Math.sqrt(Math.sqrt(ratio)) : LARGEST_GROWTH;
    factor = Math.max(SMALLEST_SHRINK, Math.min(LARGEST_GROWTH, factor));
    boolean limited = afterRejection || ratio > 1;
    afterRejection = ratio > 1;
    return limited ? Math.min(1, factor) : factor;
  }

  void restart() {
    afterRejection = false;
  }
}
