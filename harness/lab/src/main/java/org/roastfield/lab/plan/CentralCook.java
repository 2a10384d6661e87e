package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PullRule;
import org.roastfield.core.plan.Role;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;

/**
 * The cook that a plan expects, for pictures of it and cautions about it: the middle of the
 * beliefs, which goes by the plan's look and rule as its display says, and is carved at the median.
 */
final class CentralCook {

  /** Name of the wait for the sear. */
  static final String WAIT = "wait";

  /** Name of the gentle heat after the fire was changed. */
  private static final String TURNED = "fire changed";

  /** What a display's stem sticks out into; assumed. */
  private static final Signal ROOM = Signal.constant(Temperatures.celsius(17));

  /** By which sears are made longer to see what that does. */
  private static final double LONGER = 1.25;

  private CentralCook() {}

  /**
   * Its stages; empty if the rule never takes it off, or it cannot be computed.
   *
   * @param fires the cook at the middle of what is unknown, on a fire so much hotter than stated
   *     [K]
   * @param display probe that is read in it
   * @param leastRest [s]
   */
  static Optional<Cook> of(
      DoubleFunction<Cook> fires, Probe display, List<Role> roles, Plan plan, double leastRest) {
    Cook middle = fires.apply(0);
    FollowedCook followed;
    try {
      followed =
          FollowedCook.by(
              PullRule.of(plan.pull()),
              plan.check(),
              new FollowedCook.Truth(
                  middle, fires, roles, display, ROOM, time -> 0, Settings.withDefaults()),
              plan.timing());
    } catch (IllegalStateException notComputed) {
      return Optional.empty();
    }
    double carve = plan.lead() + plan.milestone(Milestone.Kind.CARVE).time().median();
    if (!Double.isFinite(followed.pull()) || !Double.isFinite(carve)) {
      return Optional.empty();
    }
    List<Stage> stages = new ArrayList<>();
    boolean kept = roles.contains(Role.HOLD);
    int lastGentle = roles.lastIndexOf(Role.GENTLE);
    for (int i = 0; i < roles.size(); i++) {
      Stage own = middle.stages().get(i);
      if (i == lastGentle) {
        stages.addAll(gentle(own, fires.apply(followed.hotter()).stages().get(i), followed));
        if (plan.waits()) {
          stages.add(waiting(middle.stages().get(roles.indexOf(Role.REST)), plan));
        }
      } else if (roles.get(i) == Role.REST && kept) {
        stages.add(ending(own, StageEnd.after(leastRest)));
      } else if (i == roles.size() - 1) {
        stages.add(ending(own, StageEnd.at(carve)));
      } else {
        stages.add(own);
      }
    }
    return Optional.of(new Cook(middle.cut(), stages, middle.probes()));
  }

  /**
   * How much hotter the middle of the expected cook gets if all sears after its gentle heat last a
   * quarter longer [K]; 0 if it has none that ends by the clock, or does not come to its end.
   */
  static double bySearing(Cook expected, List<Role> roles) {
    List<Stage> stages = new ArrayList<>(expected.stages());
    int offset = stages.size() - roles.size();
    for (int i = roles.lastIndexOf(Role.GENTLE) + 1; i < roles.size(); i++) {
      Stage own = stages.get(offset + i);
      if (roles.get(i) == Role.SEAR && own.end() instanceof StageEnd.After after) {
        stages.set(offset + i, ending(own, StageEnd.after(LONGER * after.duration())));
      }
    }
    Cook longer = new Cook(expected.cut(), stages, expected.probes());
    double more = finalCore(longer) - finalCore(expected);
    return more > 0 ? more : 0;
  }

  /** NaN of a cook that does not come to its end. */
  private static double finalCore(Cook cook) {
    return Simulator.withDefaults().run(cook) instanceof Outcome.Completed completed
        ? finalCore(completed.result())
        : Double.NaN;
  }

  /** Highest core of a whole cook [K]. */
  static double finalCore(SimulationResult result) {
    return result.stages().stream()
        .mapToDouble(stage -> result.corePeak(stage).temperature())
        .max()
        .orElseThrow();
  }

  /**
   * How long the expected cook waits for its sear; where none waits, how long draws are kept in the
   * middle, as it is [s].
   */
  static double held(Plan plan, Optional<SimulationResult> expected) {
    double middle = Double.isFinite(plan.held().median()) ? plan.held().median() : 0;
    return plan.waits() ? expected.flatMap(CentralCook::waited).orElse(middle) : middle;
  }

  /** How long a result's cook waits for its sear [s]; empty if it has no such stage. */
  static Optional<Double> waited(SimulationResult result) {
    return wait(result).map(stage -> stage.end() - stage.start());
  }

  /** The wait of a result's cook for its sear. */
  static Optional<StageResult> wait(SimulationResult result) {
    return result.stages().stream().filter(stage -> stage.name().equals(WAIT)).findFirst();
  }

  /** The gentle heat up to the pull, on another fire from the look on if that changes it. */
  private static List<Stage> gentle(Stage own, Stage after, FollowedCook followed) {
    StageEnd pull = StageEnd.at(followed.pull());
    if (followed.turned() == Double.POSITIVE_INFINITY) {
      return List.of(ending(own, pull));
    }
    return List.of(
        ending(own, StageEnd.at(followed.turned())),
        new Stage(TURNED, after.upper(), after.lower(), pull, Wetting.NONE, true));
  }

  /** The wait for the sear, where it rests later. */
  private static Stage waiting(Stage rest, Plan plan) {
    StageEnd end = StageEnd.at(plan.timing().sears());
    return new Stage(WAIT, rest.upper(), rest.lower(), end, Wetting.NONE, false);
  }

  static Stage ending(Stage stage, StageEnd end) {
    return new Stage(
        stage.name(), stage.upper(), stage.lower(), end, stage.wetting(), stage.continued());
  }
}
