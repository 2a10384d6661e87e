package org.roastfield.lab.replay;

import java.util.OptionalDouble;

/**
 * Water that left the cut until the last reading used.
 *
 * @param perArea evaporated from a square metre of the upper face, or of the surface [kg/m²]
 * @param computed evaporated from the whole cut [kg]; empty if the cook file does not state its
 *     size
 * @param weighed mass that the cut was found to have lost [kg]; empty if nobody weighed it
 */
public record WaterLoss(double perArea, OptionalDouble computed, OptionalDouble weighed) {

  /** Computed less weighed [kg], where both are there. */
  public OptionalDouble error() {
    return weighed.isPresent() && computed.isPresent()
        ? OptionalDouble.of(computed.getAsDouble() - weighed.getAsDouble())
        : OptionalDouble.empty();
  }
}
