package org.roastfield.lab.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.plan.CookerBelief;

class PlanTrialTest {

  private static final int COOKS = 200;

  /** Where few of them are on the other side. */
  private static final int MANY_COOKS = 1200;

  private static final TrialKind KIND = TrialKind.of(4);
  private static final Prior PRIOR = CookerBelief.population(KIND.planned()).prior();
  private static final ParameterPoint MIDDLE = SearPlanner.middle(PRIOR);

  @Test
  void everyTruth_canBeCooked_andOtherModelsDiffer() {
    double planned = pulled(TrialTruth.AS_PLANNED);
    for (TrialTruth other : TrialTruth.OTHERS) {
      assertNotEquals(planned, pulled(other), 1, other.name());
    }
  }

  private static double pulled(TrialTruth truth) {
    return Simulator.with(Planner.PLANNING)
        .run(truth.cook(KIND, MIDDLE, 1))
        .orElseThrow()
        .stages()
        .get(0)
        .end();
  }

  /** Its own loss has no side: the median is the wish. */
  @Test
  void oracle_expectsTheWish_ofEveryTruth() {
    for (TrialTruth truth : TrialTruth.values()) {
      EnsembleSimulator simulator = EnsembleSimulator.with(Planner.PLANNING);
      Plan plan = Oracle.plan(KIND, truth, MIDDLE, 1, PlanTrial.SERVICE, simulator);
      assertEquals(KIND.wish(), plan.finalCore().median(), 1, truth.name());
    }
  }

  @Test
  void profileOfLogs_isNearerToTheTruth_thanItsPrior() {
    SplittableRandom random = new SplittableRandom(2);
    ParameterPoint point = MIDDLE;
    point = point.moved(point.index("air-bias"), 4).moved(point.index("convection"), 1.3);
    TrialLogs logs = new TrialLogs();
    assertTrue(logs.add(KIND, TrialTruth.AS_PLANNED, point, random.nextLong()));
    assertTrue(logs.add(KIND, TrialTruth.AS_PLANNED, point, random.nextLong()));
    CookerProfile profile = logs.profile(1);
    int bias = profile.parameters().index("convection");
    assertTrue(profile.contraction(bias) > 0.1, "contraction " + profile.contraction(bias));
    double error = profile.value(bias) - 1.3;
    assertTrue(Math.abs(error) < 0.3, "convection off by " + error);
  }

  /** Of cooks that the plan believes in every bin is inside its band, and not of others. */
  @Test
  void reliability_tellsRightChancesFromWrongOnes() {
    for (Tried.Rule rule : List.of(Tried.Rule.PLAN, Tried.Rule.KEPT)) {
      Reliability right = Reliability.of(tried(0), rule);
      assertTrue(right.holds(), right.toString());
      assertTrue(right.pooled() < 0.03, right.toString());
    }
    Reliability wrong = Reliability.of(tried(1.5), Tried.Rule.PLAN);
    assertTrue(!wrong.holds(), wrong.toString());
    assertTrue(wrong.pooled() > 0.1, wrong.toString());
  }

  /** A window that is kept is stated as certain, and is: a bin of it has no width. */
  @Test
  void reliability_ofWhatIsCertain_isANumber() {
    List<Tried> many = tried(MANY_COOKS, 0);
    Reliability kept = Reliability.of(many, Tried.Rule.KEPT, Set.of(Reliability.Kind.READY));
    assertTrue(kept.bins().stream().anyMatch(bin -> bin.stated() == 0), kept.toString());
    for (Reliability.Bin bin : kept.bins()) {
      assertTrue(bin.band() >= 0, bin.toString());
      assertEquals(bin.stated() == 0, bin.band() == 0, bin.toString());
    }
    assertTrue(kept.holds(), kept.toString());
  }

  /** What a plan would serve late or keep too long is in the window, and the rest as it was. */
  @Test
  void keptWindow_isKept_andChangesNoOther() {
    int other = 0;
    for (Tried one : tried(0)) {
      assertTrue(one.inWindow(Tried.Rule.KEPT), "ready " + one.result(Tried.Rule.KEPT).late());
      if (one.inWindow(Tried.Rule.PLAN)) {
        double pull = one.result(Tried.Rule.PLAN).cook().pull();
        assertEquals(pull, one.result(Tried.Rule.KEPT).cook().pull(), FollowedCook.PERIOD);
      } else {
        other++;
      }
    }
    assertTrue(other > 0, "cooks outside the window of the plan that may miss it: " + other);
  }

  /**
   * Cooks whose outcome is that of draws of one plan, off by some of its spreads. Bands count the
   * chance of cooks alone, so that the plan has far more draws than there are cooks.
   */
  private static List<Tried> tried(double off) {
    return tried(COOKS, off);
  }

  private static List<Tried> tried(int count, double off) {
    PlanRequest request =
        PlanRequest.of(KIND.forPlanner(), PRIOR, CoreWish.of(KIND.wish()))
            .with(PlanTrial.SERVICE)
            .withDraws(4000, 1);
    Planner planner = Planner.withDefaults();
    Plan plan = planner.plan(request);
    Plan kept = planner.followed(request.with(PlanTrial.SERVICE.withKept(true)), plan);
    return TrialFixtures.cooks(plan, kept, KIND, PRIOR, count, off);
  }
}
