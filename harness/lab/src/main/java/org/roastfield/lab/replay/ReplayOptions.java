package org.roastfield.lab.replay;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a replay is asked for.
 *
 * @param until last time of the log that is used [s]; empty for all of it
 * @param targets core temperatures whose times are compared [K]; empty for every whole ten degrees
 *     Celsius inside the log's range
 * @param startFromLog whether the log's first core reading is the temperature that the cut starts
 *     with
 */
public record ReplayOptions(OptionalDouble until, List<Double> targets, boolean startFromLog) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if {@code until} is not positive
   */
  public ReplayOptions {
    targets = List.copyOf(targets);
    if (until.isPresent() && !(until.getAsDouble() > 0)) {
      throw new IllegalArgumentException(
          "until must be greater than 0, was " + until.getAsDouble());
    }
  }

  /** The whole log, targets every ten degrees, the cook file's start temperature. */
  public static ReplayOptions withDefaults() {
    return new ReplayOptions(OptionalDouble.empty(), List.of(), false);
  }
}
