package org.roastfield.lab.replay;

import java.util.List;

/**
 * Core readings of a log beside their computation.
 *
 * @param readout what was compared, in words: a probe, or the true core
 * @param byProbe whether a probe's readings were computed, so that the true core may differ
 * @param core measured and computed at every reading used
 * @param errors summary of {@code core}
 * @param targets times to given temperatures
 * @param rates heating rates that were asked for
 * @param water that left the cut
 */
public record Compared(
    String readout,
    boolean byProbe,
    List<Comparison> core,
    ErrorSummary errors,
    List<TargetTime> targets,
    List<HeatingRate> rates,
    WaterLoss water) {

  /** Copies the lists. */
  public Compared {
    core = List.copyOf(core);
    targets = List.copyOf(targets);
    rates = List.copyOf(rates);
  }
}
