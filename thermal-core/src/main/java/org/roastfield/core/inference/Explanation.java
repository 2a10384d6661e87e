package org.roastfield.core.inference;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * One thing that may be so, as a calibration of the same evidence: that all is as stated, or that
 * one thing is not, which the calibration then leaves free.
 *
 * @param name for messages
 * @param odds how likely it is before the evidence, relative to the others, greater than 0
 * @param calibration of the evidence if it is so
 * @param start coordinates that its search starts from, as many as it has; may be empty for the
 *     prior's mean
 */
public record Explanation(String name, double odds, Calibration calibration, List<Double> start) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the name is blank, the odds are not positive or the start
   *     is of another length
   */
  public Explanation {
    Check.notBlank("name", name);
    Check.positive("odds", odds);
    start = List.copyOf(start);
    int size = calibration.prior().size();
    if (!start.isEmpty() && start.size() != size) {
      throw new IllegalArgumentException(
          "start of " + name + " must have " + size + " coordinates, had " + start.size());
    }
  }

  /** One that is searched from the prior's mean on. */
  public Explanation(String name, double odds, Calibration calibration) {
    this(name, odds, calibration, List.of());
  }

  /** The most probable coordinates if it is so. */
  MapEstimate estimate() {
    return start.isEmpty()
        ? calibration.map()
        : calibration.mapFrom(start.stream().mapToDouble(each -> each).toArray());
  }
}
