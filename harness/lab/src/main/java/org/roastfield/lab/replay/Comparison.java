package org.roastfield.lab.replay;

/**
 * Measured and computed temperature at one time.
 *
 * @param time since the start of the log [s]
 * @param measured [K]
 * @param computed what the probe would show [K]
 * @param trueCore computed in the middle of the cut [K]
 */
public record Comparison(double time, double measured, double computed, double trueCore) {

  /** Computed less measured [K]. */
  public double error() {
    return computed - measured;
  }
}
