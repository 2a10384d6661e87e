package org.roastfield.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;

/**
 * What comes of a cook whose truth is known to nobody, when someone goes by a rule: a plan is
 * judged by such cooks. The display is read every half minute; the truth may come from another
 * model than the plan.
 *
 * @param pull when it came off the gentle heat [s]; infinite if the rule never said so in the time
 *     allowed
 * @param ready when it could have rested, had it not waited for its sear [s]
 * @param carved when it was carved: at the time to leave, or when rested if that is later [s]
 * @param finalCore highest core up to carving [K]
 * @param turned when its fire was changed by the look at the display [s]; infinite if it never was
 * @param hotter by how much [K]
 */
public record FollowedCook(
    double pull, double ready, double carved, double finalCore, double turned, double hotter) {

  /** Time between readings [s]. */
  public static final double PERIOD = 30;

  /** Core at which nobody waits any longer [K]: 95 °C. */
  private static final double HOTTEST = 368.15;

  /**
   * A cook as it truly is.
   *
   * @param cook with its stages; the rule of its last gentle one bounds how long is waited
   * @param fires the same on a fire so much hotter than stated [K]
   * @param roles of its stages
   * @param display the probe that is read, with its instrument
   * @param air that its stem sticks out into [K]
   * @param noise added to a reading at a time since the start of the cook [K]
   * @param settings of the computation
   */
  public record Truth(
      Cook cook,
      DoubleFunction<Cook> fires,
      List<Role> roles,
      Probe display,
      Signal air,
      DoubleUnaryOperator noise,
      Settings settings) {

    /** Copies the list. */
    public Truth {
      roles = List.copyOf(roles);
    }

    /** The same read without noise. */
    public Truth withoutNoise() {
      return new Truth(cook, fires, roles, display, air, time -> 0, settings);
    }
  }

  /**
   * Cooks by a rule.
   *
   * @param check the look at the display on the way, if there is one
   * @param timing what the clock decides
   * @throws IllegalStateException if the truth cannot be computed
   */
  public static FollowedCook by(
      PullRule rule, Optional<FireCheck> check, Truth truth, Timing timing) {
    Course course = new Course(truth.roles(), false);
    Simulator simulator = Simulator.with(truth.settings());
    Member member =
        new Member(truth.cook(), Probe.CORE, Instrument.IDEAL, Double.POSITIVE_INFINITY);
    Optional<Course.Turned> turned = Optional.empty();
    SimulationResult watched = watched(simulator, course, member, turned);
    double longest = longest(truth, watched);
    double changed = Double.POSITIVE_INFINITY;
    double by = 0;
    double raised = 0;
    if (check.isPresent()) {
      FireCheck look = check.get();
      PullRule.Paced there = new PullRule.Paced(Pull.at(look.reading(), 0));
      double time = time(there, 0, watched, truth, longest);
      double drawnOn = look.drawnOn(time, there.pace());
      double hotter = look.hotterAt(drawnOn);
      raised = look.raisedAt(drawnOn);
      if (time < Double.POSITIVE_INFINITY && hotter != 0) {
        changed = time;
        by = hotter;
        Cook after = truth.fires().apply(hotter);
        turned = Optional.of(new Course.Turned(List.of(StageEnd.at(time)), after));
        watched = watched(simulator, course, member, turned);
        longest = longest(truth, watched);
      }
    }
    double pull = time(rule, raised, watched, truth, longest);
    if (pull == Double.POSITIVE_INFINITY) {
      double hottest = highest(watched);
      return new FollowedCook(pull, pull, pull, hottest, changed, by);
    }
    SimulationResult result =
        simulator.run(course.timed(member, turned, pull, Ends.of(timing))).orElseThrow();
    double rested = result.stages().get(result.stages().size() - 2).end();
    double waited = course.waits() ? Math.max(0, timing.sears() - pull) : 0;
    return new FollowedCook(
        pull, rested - waited, Math.max(rested, timing.leave()), highest(result), changed, by);
  }

  private static SimulationResult watched(
      Simulator simulator, Course course, Member member, Optional<Course.Turned> turned) {
    return resultOf(simulator.run(course.through(member, turned, HOTTEST - Plan.AHEAD, HOTTEST)));
  }

  private static double longest(Truth truth, SimulationResult watched) {
    int last = truth.roles().lastIndexOf(Role.GENTLE);
    double start = last == 0 ? 0 : watched.stages().get(last - 1).end();
    return Math.min(
        watched.endTime(), start + truth.cook().stages().get(last).end().longest(start));
  }

  /**
   * When a rule says so.
   *
   * @param raised by how much more the display must show than the rule knows [K]
   */
  private static double time(
      PullRule rule, double raised, SimulationResult watched, Truth truth, double longest) {
    ProbeTrace display = watched.shownBy(truth.display(), truth.air());
    for (int i = 0; i * PERIOD <= longest; i++) {
      double time = i * PERIOD;
      if (rule.pulls(time, display.at(time) + truth.noise().applyAsDouble(time) - raised)) {
        return time;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double highest(SimulationResult result) {
    double highest = result.core().at(0);
    for (double time : result.stepTimes()) {
      highest = Math.max(highest, result.core().at(time));
    }
    for (var stage : result.stages()) {
      highest = Math.max(highest, result.corePeak(stage).temperature());
    }
    return highest;
  }

  private static SimulationResult resultOf(Outcome outcome) {
    if (outcome instanceof Outcome.Failed failed) {
      return failed.partial();
    }
    return outcome.orElseThrow();
  }
}
