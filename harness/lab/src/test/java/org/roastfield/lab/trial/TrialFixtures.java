package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Spread;

/** Cooks of made-up outcomes. */
final class TrialFixtures {

  private static final int COOKS = 200;

  private TrialFixtures() {}

  /**
   * Cooks spread evenly over the quantiles of a plan, all numbers of a cook at the same.
   *
   * @param off how much hotter and later than that, in widths of its 10 to 90 %
   */
  static List<Tried> cooks(Plan plan, double wish, double off) {
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < COOKS; i++) {
      double share = (i + 0.5) / COOKS;
      double core = at(plan.finalCore(), share, off);
      double pull = at(plan.milestone(Milestone.Kind.PULL).time(), share, off);
      double ready = at(plan.milestone(Milestone.Kind.READY).time(), share, off);
      FollowedCook cook =
          new FollowedCook(pull + plan.lead(), ready + plan.lead(), ready + plan.lead(), core);
      Map<Tried.Rule, Tried.Result> results = new EnumMap<>(Tried.Rule.class);
      results.put(Tried.Rule.PLAN, new Tried.Result(cook, plan.lead()));
      tried.add(new Tried(i, false, wish, plan, results));
    }
    return tried;
  }

  /** Straight through the three quantiles. */
  private static double at(Spread spread, double share, double off) {
    double width = spread.high() - spread.low();
    double inside =
        share < 0.5
            ? spread.low() + (share - 0.1) / 0.4 * (spread.median() - spread.low())
            : spread.median() + (share - 0.5) / 0.4 * (spread.high() - spread.median());
    return inside + off * width;
  }
}
