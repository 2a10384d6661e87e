package org.roastfield.lab.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.surface.Signal;

class PlanTrialTest {

  private static final List<PlanTrial.Tried> TRIED =
      new PlanTrial(EnsembleSimulator.with(Planner.PLANNING), 3).run(3, done -> {});

  @Test
  void oracle_isNearerToTheWish_onTheModelItKnows() {
    for (PlanTrial.Tried one : TRIED) {
      assertFalse(one.other());
      assertTrue(one.byOracle().miss(one.wish()) < 3, one.byOracle().toString());
    }
  }

  @Test
  void rules_differ_inWhatTheyDo() {
    for (PlanTrial.Tried one : TRIED) {
      assertTrue(one.byCarryover().cook().pull() > one.byPlan().cook().pull());
      assertEquals(one.byWeight().lead(), one.byLine().lead(), 0);
      double clock = one.byWeight().lead() - 200 - TrialCook.REST;
      assertEquals(clock, one.byWeight().cook().pull(), 30);
    }
  }

  @Test
  void openings_takeTheSameHeat_smoothOrSharp() {
    Prior prior = Prior.of(TrialCook.PARAMETERS);
    ParameterPoint point = SearPlanner.middle(prior);
    point = point.moved(point.index("openings"), 1);
    Signal smooth = TrialWeather.smooth(383, point);
    Signal sharp = TrialWeather.sharp(383, point);
    double lost = 0;
    for (double time = 0.5; time < 18_000; time++) {
      lost += sharp.at(time) - smooth.at(time);
    }
    double both = 2 * (383 - 320) * 2 * 90;
    assertEquals(0, lost / both, 0.1);
  }

  @Test
  void everyTruth_isBuilt_andOtherModelsDiffer() {
    TrialCook cook = new TrialCook(0.09, 383, 333);
    ParameterPoint point = SearPlanner.middle(Prior.of(TrialCook.PARAMETERS));
    Signal air = Signal.constant(383);
    for (TrialTruth truth : TrialTruth.values()) {
      boolean same = truth == TrialTruth.AS_PLANNED;
      assertEquals(
          same,
          truth
              .cook(cook, point, air)
              .toString()
              .equals(TrialTruth.AS_PLANNED.cook(cook, point, air).toString()),
          truth.name());
    }
  }
}
