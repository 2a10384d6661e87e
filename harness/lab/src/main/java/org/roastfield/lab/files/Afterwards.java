package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was found when a cook was over; each of it may be missing.
 *
 * @param weightBefore of the cut [kg], above 0
 * @param weightAfter of the cut [kg], above 0
 * @param ring overcooked depth below the crust [m], at least 0
 * @param finalCore highest core temperature found [K]
 * @param served clock time of the service
 * @param verdict of the cook, in words; untrusted text
 */
public record Afterwards(
    OptionalDouble weightBefore,
    OptionalDouble weightAfter,
    OptionalDouble ring,
    OptionalDouble finalCore,
    Optional<LocalDateTime> served,
    Optional<String> verdict) {

  /** Longest verdict [characters]. */
  static final int LONGEST_VERDICT = 2000;

  /** Checks what is there. */
  public Afterwards {
    weightBefore.ifPresent(weight -> checkWithin("weightBefore", weight, Double.MIN_VALUE, 1000));
    weightAfter.ifPresent(weight -> checkWithin("weightAfter", weight, Double.MIN_VALUE, 1000));
    ring.ifPresent(depth -> checkWithin("ring", depth, 0, 1));
    finalCore.ifPresent(core -> Notes.checkTemperature("finalCore", core));
    verdict.ifPresent(text -> Notes.check("verdict", text, LONGEST_VERDICT));
  }

  private static void checkWithin(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must be in [" + low + ", " + high + "], was " + value);
    }
  }
}
