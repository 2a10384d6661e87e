package org.roastfield.lab.plan;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * A plan as people read it.
 *
 * @param file what is cooked
 * @param clock whose zero is the carving
 * @param carving from carving to the table [s]
 * @param plan in numbers
 * @param wish for the final core
 * @param basis whose beliefs about the cooker the plan rests on, in a sentence
 * @param steps of the timetable in order
 * @param lines other statements
 * @param assumed what is taken for granted since the file does not say it
 * @param problems wishes that are not met, with the reason; the plan is the nearest possible
 * @param late if what was asked for cannot be had any more
 * @param fire what it needs, if the file says in what pit it burns
 * @param purchase if people are to be fed
 * @param sears against each other, if the cook has any
 * @param ring how deep it is done beyond the wish, if that is to be little
 * @param keepings of the rested cut until it is carved, if it is kept for long
 * @param changes what may happen, and what it does
 * @param central the cook that the plan expects; empty if it does not come to its end
 * @param cautions about it
 * @param scale of temperatures in words
 */
public record PlanSheet(
    CookFile file,
    PlanClock clock,
    double carving,
    Plan plan,
    CoreWish wish,
    String basis,
    List<PlanStep> steps,
    List<PlanLine> lines,
    List<PlanLine> assumed,
    List<Unmet> problems,
    Optional<Lateness> late,
    Optional<FireForecast> fire,
    Optional<Purchase> purchase,
    Optional<SearTable> sears,
    Optional<RingWish> ring,
    List<Keeping> keepings,
    List<PlanChange> changes,
    Optional<SimulationResult> central,
    List<Caution> cautions,
    TemperatureScale scale) {

  /** Copies the lists. */
  public PlanSheet {
    steps = List.copyOf(steps);
    lines = List.copyOf(lines);
    assumed = List.copyOf(assumed);
    problems = List.copyOf(problems);
    keepings = List.copyOf(keepings);
    changes = List.copyOf(changes);
    cautions = List.copyOf(cautions);
  }

  /** The step of an id. */
  public Optional<PlanStep> step(String id) {
    return steps.stream().filter(step -> step.id().equals(id)).findFirst();
  }
}
