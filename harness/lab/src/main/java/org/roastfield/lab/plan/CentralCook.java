package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Role;

/** The cook that a plan expects, for pictures of it and cautions about it: median times. */
final class CentralCook {

  /** Name of the wait for the sear. */
  static final String WAIT = "wait";

  private CentralCook() {}

  /**
   * Its stages.
   *
   * @param middle the cook at the median of what is unknown
   * @param leastRest [s]
   */
  static Cook of(Cook middle, List<Role> roles, Plan plan, double leastRest) {
    double pull = plan.lead() + plan.milestone(Milestone.Kind.PULL).time().median();
    double carve = plan.lead() + plan.milestone(Milestone.Kind.CARVE).time().median();
    boolean kept = roles.contains(Role.HOLD);
    int lastGentle = roles.lastIndexOf(Role.GENTLE);
    List<Stage> stages = new ArrayList<>();
    for (int i = 0; i < roles.size(); i++) {
      Stage own = middle.stages().get(i);
      if (i == lastGentle) {
        stages.add(ending(own, StageEnd.at(pull)));
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
    return new Cook(middle.cut(), stages, middle.probes());
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
