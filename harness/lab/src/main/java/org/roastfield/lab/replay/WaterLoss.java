package org.roastfield.lab.replay;

import java.util.OptionalDouble;

/**
 * Water that left the cut until the last reading used.
 *
 * @param evaporatedPerArea from a square metre of the upper face, or of the surface [kg/m²]
 * @param drippedPerArea from the same [kg/m²]
 * @param evaporated from the whole cut [kg]; empty if the cook file does not state its size
 * @param dripped from the whole cut [kg]; empty likewise
 * @param weighed mass that the cut was found to have lost [kg]; empty if nobody weighed it
 */
public record WaterLoss(
    double evaporatedPerArea,
    double drippedPerArea,
    OptionalDouble evaporated,
    OptionalDouble dripped,
    OptionalDouble weighed) {

  /** Evaporated and dripped less weighed [kg], where all are there. */
  public OptionalDouble error() {
    return weighed.isPresent() && evaporated.isPresent() && dripped.isPresent()
        ? OptionalDouble.of(
            evaporated.getAsDouble() + dripped.getAsDouble() - weighed.getAsDouble())
        : OptionalDouble.empty();
  }
}
