package org.roastfield.lab.replay;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.LogChannel;

/**
 * A logged cook beside its computation.
 *
 * @param compared measured and computed core
 * @param chamber readings that were the surroundings; empty (size 0) where the log has none and the
 *     cook file's stated temperature stood in
 * @param chamberFromLog whether the surroundings were logged
 * @param startTemperature of the cut [K]
 * @param startFromLog whether that is the log's first core reading instead of the cook file's
 *     statement
 * @param assumptions inputs that the log does not hold, in words with units, each with where it
 *     came from
 * @param simulation the computation
 * @param profile what a replay by a profile says besides; empty without one
 */
public record ReplayResult(
    Compared compared,
    LogChannel chamber,
    boolean chamberFromLog,
    double startTemperature,
    boolean startFromLog,
    List<String> assumptions,
    SimulationResult simulation,
    Optional<ByProfile> profile) {

  /** Copies the list. */
  public ReplayResult {
    assumptions = List.copyOf(assumptions);
  }

  /** The same by a profile. */
  public ReplayResult with(ByProfile profile) {
    return new ReplayResult(
        compared,
        chamber,
        chamberFromLog,
        startTemperature,
        startFromLog,
        assumptions,
        simulation,
        Optional.of(profile));
  }

  /** Measured and computed core at every reading used. */
  public List<Comparison> core() {
    return compared.core();
  }

  /** Summary of the errors of the core. */
  public ErrorSummary errors() {
    return compared.errors();
  }

  /** Times to given core temperatures. */
  public List<TargetTime> targets() {
    return compared.targets();
  }
}
