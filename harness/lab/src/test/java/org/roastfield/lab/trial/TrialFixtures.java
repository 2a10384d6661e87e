package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.PullRule;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.surface.Signal;

/** Cooks of made-up outcomes. */
final class TrialFixtures {

  private TrialFixtures() {}

  /**
   * Cooks of what the plan believes that follow it.
   *
   * @param kept the same within the window
   * @param count of cooks
   * @param off how much hotter and later than that, in widths of its 10 to 90 %
   */
  static List<Tried> cooks(
      Plan plan, Plan kept, TrialKind kind, Prior prior, int count, double off) {
    SplittableRandom random = new SplittableRandom(6);
    double hotter = off * (plan.finalCore().high() - plan.finalCore().low());
    Spread pulls = plan.milestone(Milestone.Kind.PULL).time();
    double later = off * (pulls.high() - pulls.low());
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ParameterPoint point = prior.parameters().point(prior.draw(random));
      Cook cook = kind.planned().apply(point);
      FollowedCook.Truth truth =
          new FollowedCook.Truth(
              cook,
              kelvin -> kind.planned().apply(kind.planned().hotter(point, kelvin)),
              kind.roles(),
              cook.probes().get(0),
              Signal.constant(290),
              time -> 0,
              Planner.PLANNING);
      FollowedCook one =
          FollowedCook.by(PullRule.of(plan.pull()), plan.check(), truth, plan.timing());
      FollowedCook moved =
          new FollowedCook(
              one.pull() + later,
              one.ready() + later,
              one.carved() + later,
              one.finalCore() + hotter,
              one.turned(),
              one.hotter());
      FollowedCook inWindow =
          FollowedCook.by(PullRule.of(kept.pull()), kept.check(), truth, kept.timing());
      Map<Tried.Rule, Tried.Result> results = new EnumMap<>(Tried.Rule.class);
      results.put(Tried.Rule.PLAN, new Tried.Result(moved, plan.lead()));
      results.put(Tried.Rule.KEPT, new Tried.Result(inWindow, kept.lead()));
      tried.add(new Tried(i, TrialTruth.AS_PLANNED, kind.wish(), plan, kept, results));
    }
    return tried;
  }
}
