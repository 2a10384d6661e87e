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

  /**
   * Factor by which the next step may grow for an error, before limits: 0.9 (tolerance/error)^¼;
   * infinite for no error.
   */
  static double growth(double error, double tolerance) {
    return SAFETY / Math.sqrt(Math.sqrt(error / tolerance));
  }

  /**
   * Factor of the next step after an error, never above 1 right after a rejection.
   *
   * @param growth {@link #growth} of the error
   */
  double factor(double error, double growth) {
    double factor = Math.max(SMALLEST_SHRINK, Math.min(LARGEST_GROWTH, growth));
    boolean rejected = error > tolerance;
    boolean limited = afterRejection || rejected;
    afterRejection = rejected;
    return limited ? Math.min(1, factor) : factor;
  }

  void restart() {
    afterRejection = false;
  }
}
