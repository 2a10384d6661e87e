package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;

/**
 * One thing that may be so, as a calibration of the same evidence: that all is as stated, or that
 * one thing is not, which the calibration then leaves free.
 *
 * @param name for messages
 * @param odds how likely it is before the evidence, relative to the others, greater than 0
 * @param calibration of the evidence if it is so
 */
public record Explanation(String name, double odds, Calibration calibration) {

  /**
   * @throws IllegalArgumentException if the name is blank or the odds are not positive
   */
  public Explanation {
    Check.notBlank("name", name);
    Check.positive("odds", odds);
  }
}
