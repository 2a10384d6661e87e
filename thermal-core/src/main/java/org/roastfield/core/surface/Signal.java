package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/** A quantity of the surroundings as a function of time since the start of the cook. */
@FunctionalInterface
public interface Signal {

  /**
   * Value at a time.
   *
   * @param time since the start of the cook [s]; the integrator may ask up to one step past the end
   *     of a stage
   */
  double at(double time);

  /**
   * Shortest period of a fluctuation that matters [s]; steps are kept below a third of it, so that
   * none is stepped over. Infinite when the signal is constant.
   */
  default double shortestPeriod() {
    return Double.POSITIVE_INFINITY;
  }

  /** A signal that never changes. */
  static Signal constant(double value) {
    Check.finite("value", value);
    return new ConstantSignal(value);
  }

  /** The signal plus a constant. */
  default Signal plus(double offset) {
    return new OffsetSignal(this, Check.finite("offset", offset));
  }
}
