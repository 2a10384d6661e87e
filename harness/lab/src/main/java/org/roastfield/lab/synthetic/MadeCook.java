package org.roastfield.lab.synthetic;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.LogPackage;

/**
 * A made-up cook: its log, and the truth that a calibration does not see.
 *
 * @param recipe it was made by
 * @param log what the cook would have logged
 * @param values true values beside the cooker's
 * @param departure how far the truth departs, by kind
 * @param milestones in order of time
 * @param weights of the whole cut; empty for a leg, of whose stations only one is computed, and
 *     where the law of the face, whose supply has no end, gave more water than is in the cut
 * @param result the computed truth
 */
public record MadeCook(
    SyntheticCook recipe,
    LogPackage log,
    TrueValues values,
    List<DepartureFact> departure,
    List<TrueMilestone> milestones,
    Optional<TrueWeights> weights,
    SimulationResult result)
    implements SyntheticCook.Made {

  /** Copies the lists. */
  public MadeCook {
    departure = List.copyOf(departure);
    milestones = List.copyOf(milestones);
  }

  /**
   * A number of a departure.
   *
   * @param name with its unit
   * @param value in that unit
   */
  public record DepartureFact(String name, double value) {}

  /**
   * An awaited event as it truly was.
   *
   * @param name such as "gentle heat ends"
   * @param time since the cut went on [s]
   * @param core temperature of the middle [K]
   */
  public record TrueMilestone(String name, double time, double core) {}

  /**
   * What the whole cut truly weighed.
   *
   * @param before the cook [kg]
   * @param after the rest [kg]: less by what evaporated and dripped
   */
  public record TrueWeights(double before, double after) {}
}
