package org.roastfield.core.integration;

/**
 * Step sizes: the usual controller for an embedded error of order 3 (local error h⁴), in kelvin.
 */
final class StepControl {

  private static final double SAFETY = 0.9;
  private static final double LARGEST_GROWTH = 5;
  private static final double SMALLEST_SHRINK = 0.1;

  private StepControl() {}

  /**
   * Factor by which the next step may grow for an error, before limits: 0.9 (tolerance/error)^¼;
   * infinite for no error.
   */
  static double growth(double error, double tolerance) {
    return SAFETY / Math.sqrt(Math.sqrt(error / tolerance));
  }

  /**
   * Factor of the next step, never above 1 at a rejection and right after one.
   *
   * @param growth {@link #growth} of the error
   * @param limited whether this attempt or the last one was rejected for its error
   */
  static double factor(double growth, boolean limited) {
    double factor = Math.max(SMALLEST_SHRINK, Math.min(LARGEST_GROWTH, growth));
    return limited ? Math.min(1, factor) : factor;
  }
}
