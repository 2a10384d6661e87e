package org.roastfield.lab.replay;

import java.util.OptionalDouble;

/**
 * How fast the core rose from one temperature to another: their difference over the time between
 * their first crossings.
 *
 * @param span the two temperatures
 * @param measured [K/s]; empty if the log does not cross both
 * @param computed [K/s]; empty if the computation does not
 */
public record HeatingRate(RateSpan span, OptionalDouble measured, OptionalDouble computed) {

  /** Rate between the times at which the ends of a span were reached. */
  static HeatingRate of(RateSpan span, TargetTime low, TargetTime high) {
    return new HeatingRate(
        span,
        rate(span, low.measured(), high.measured()),
        rate(span, low.computed(), high.computed()));
  }

  private static OptionalDouble rate(RateSpan span, OptionalDouble low, OptionalDouble high) {
    return low.isPresent() && high.isPresent() && high.getAsDouble() > low.getAsDouble()
        ? OptionalDouble.of((span.high() - span.low()) / (high.getAsDouble() - low.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Computed over measured less 1, where both are there. */
  public OptionalDouble relativeError() {
    return measured.isPresent() && computed.isPresent()
        ? OptionalDouble.of(computed.getAsDouble() / measured.getAsDouble() - 1)
        : OptionalDouble.empty();
  }
}
