package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.Signal;

/**
 * A logged trace and the probe that it is from.
 *
 * @param readings in time [s since the start of the cook] and kelvin
 * @param probe name of a probe that the cooks list, or "core" or "surface"
 * @param air around the stem [K], asked for only where a stem takes on a share of it
 */
public record ObservedTrace(Series readings, String probe, Signal air) {

  /**
   * @throws IllegalArgumentException if the name is blank or the first reading is before the cook
   */
  public ObservedTrace {
    Check.notBlank("probe", probe);
    Check.notNegative("first time of " + readings.name(), readings.time(0));
  }
}
