package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/**
 * A reading that is waited for.
 *
 * @param reading where
 * @param temperature [K]
 * @param rising whether it is reached from below
 */
record Threshold(Reading reading, double temperature, boolean rising) {

  /** Distance still to go [K]; 0 or less when reached. */
  double missing(State state) {
    return missing(reading.of(state.temperature, state.face[State.UPPER], state.face[State.LOWER]));
  }

  /** Distance still to go [K] at the share θ of a step. */
  double missing(DenseStep step, double theta) {
    return missing(step.at(reading, theta));
  }

  private double missing(double value) {
    return rising ? temperature - value : value - temperature;
  }
}
