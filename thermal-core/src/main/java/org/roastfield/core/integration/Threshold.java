package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/** A reading that is waited for; owned by one cook or lane and set anew for each stage. */
final class Threshold {

  private static final int BISECTIONS = 40;

  /** Spacing of the places inside a step where the threshold is looked for besides its end. */
  private static final double LOOK = 0.25;

  private Reading reading;
  private double temperature;
  private boolean rising;

  Threshold(Reading reading, double temperature, boolean rising) {
    this.reading = reading;
    this.temperature = temperature;
    this.rising = rising;
  }

  /**
   * Waits for something else.
   *
   * @param reading where
   * @param temperature [K]
   * @param rising whether it is reached from below
   */
  Threshold set(Reading reading, double temperature, boolean rising) {
    this.reading = reading;
    this.temperature = temperature;
    this.rising = rising;
    return this;
  }

  Reading reading() {
    return reading;
  }

  /** Distance still to go [K] from a value; 0 or less when reached. */
  double missing(double value) {
    return rising ? temperature - value : value - temperature;
  }

  /** Distance still to go [K]. */
  double missing(State state) {
    return missing(reading.of(state.temperature, state.face[State.UPPER], state.face[State.LOWER]));
  }

  /** First share θ of a step at which the threshold is passed; infinite if it is not. */
  double crossing(StepReading step) {
    double before = 0;
    for (double theta = LOOK; theta < 1; theta += LOOK) {
      if (missing(step.at(theta)) <= 0) {
        return root(step, before, theta);
      }
      before = theta;
    }
    return missing(step.end()) <= 0 ? root(step, before, 1) : Double.POSITIVE_INFINITY;
  }

  private double root(StepReading step, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = 0.5 * (a + b);
      if (missing(step.at(middle)) <= 0) {
        b = middle;
      } else {
        a = middle;
      }
    }
    return b;
  }
}
