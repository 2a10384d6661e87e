package org.roastfield.lab.replay;

import java.util.OptionalDouble;

/**
 * When the core first reached a temperature.
 *
 * @param temperature [K]
 * @param measured time in the log [s], between readings by a straight line; empty if never reached
 * @param computed time at which the probe would first show it [s]; empty if it never does
 * @param trueCore time at which the computed middle of the cut reaches it [s]; empty if it never
 *     does
 */
public record TargetTime(
    double temperature, OptionalDouble measured, OptionalDouble computed, OptionalDouble trueCore) {

  /** Computed less measured [s], where both reached it. */
  public OptionalDouble error() {
    return measured.isPresent() && computed.isPresent()
        ? OptionalDouble.of(computed.getAsDouble() - measured.getAsDouble())
        : OptionalDouble.empty();
  }
}
