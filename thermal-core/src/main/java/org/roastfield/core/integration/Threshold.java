package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/** A reading that is waited for; owned by one cook or lane and set anew for each stage. */
final class Threshold {

  private static final int MOST_ROOT_STEPS = 60;

  /** Distance from the threshold at which a root inside a step is near enough [K]. */
  private static final double ROOT_TOLERANCE = 1e-9;

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
    return missing(
        reading.of(state.temperature, state.surface(State.UPPER), state.surface(State.LOWER)));
  }

  /** Decrease of the distance still to go at the end of a step [K/s]. */
  double approach(StepReading step) {
    return rising ? step.endRate() : -step.endRate();
  }

  /** First share θ of a step at which the threshold is passed; infinite if it is not. */
  double crossing(StepReading step) {
    if (missing(rising ? step.upperBound() : step.lowerBound()) > 0) {
      return Double.POSITIVE_INFINITY;
    }
    double before = 0;
    for (double theta = LOOK; theta < 1; theta += LOOK) {
      if (missing(step.at(theta)) <= 0) {
        return root(step, before, theta);
      }
      before = theta;
    }
    return missing(step.end()) <= 0 ? root(step, before, 1) : Double.POSITIVE_INFINITY;
  }

  /** Root between two shares by the rule of false position, as Illinois amended it. */
  private double root(StepReading step, double low, double high) {
    double a = low;
    double b = high;
    double missingA = missing(step.at(a));
    double missingB = missing(step.at(b));
    int kept = 0;
    for (int i = 0; i < MOST_ROOT_STEPS; i++) {
      double middle = a + (b - a) * missingA / (missingA - missingB);
      double missing = missing(step.at(middle));
      if (Math.abs(missing) <= ROOT_TOLERANCE) {
        return middle;
      }
      if (missing > 0) {
        a = middle;
        missingA = missing;
        missingB *= kept < 0 ? 0.5 : 1;
        kept = -1;
      } else {
        b = middle;
        missingB = missing;
        missingA *= kept > 0 ? 0.5 : 1;
        kept = 1;
      }
    }
    return b;
  }
}
