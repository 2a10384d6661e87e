package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.surface.Signal;

class FollowedCookTest {

  private static final PlanRequest REQUEST =
      PlanRequest.of(PlanCooks.loin(), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4));

  private static final Timing AT_14_000 = new Timing(900, 14_000, 14_000 - 200 - 900);

  private static FollowedCook.Truth truth(Cook cook, double noise) {
    return new FollowedCook.Truth(
        cook,
        hotter -> cook,
        REQUEST.cook().roles(),
        REQUEST.cook().probeOf(cook),
        Signal.constant(293),
        time -> noise,
        Settings.withDefaults());
  }

  private static Cook middle() {
    return REQUEST.cook().at(SearPlanner.middle(PlanCooks.prior()));
  }

  /** What the look adds is what the display shows more when it comes off. */
  @Test
  void look_movesThePull_ofACookThatFollowsIt() {
    FollowedCook.Truth truth = truth(middle(), 0);
    FireCheck look = new FireCheck(300, 0, List.of(), List.of(0.0));
    PullRule rule = PullRule.atReading(325);
    FollowedCook plain = FollowedCook.by(rule, Optional.of(look), truth, AT_14_000);
    FollowedCook slow = FollowedCook.by(rule, Optional.of(look.leaning(0, 1)), truth, AT_14_000);
    FollowedCook higher =
        FollowedCook.by(
            PullRule.atReading(325 + FireCheck.MOST_RAISED), Optional.of(look), truth, AT_14_000);
    assertTrue(slow.pull() > plain.pull());
    assertEquals(higher, slow);
  }

  /**
   * Truths drawn as the plan's own draws are: shares within four standard errors of what was
   * stated.
   */
  @Test
  void statedChances_areThoseOfCooksThatFollowThePlan() {
    Plan plan = Planner.withDefaults().plan(REQUEST.withDraws(1000, 5));
    SplittableRandom random = new SplittableRandom(77);
    List<FollowedCook> cooks = new ArrayList<>();
    int count = 200;
    for (int i = 0; i < count; i++) {
      Cook drawn =
          REQUEST.cook().at(REQUEST.prior().parameters().point(REQUEST.prior().draw(random)));
      PullRule rule = PullRule.of(plan.pull());
      cooks.add(FollowedCook.by(rule, plan.check(), truth(drawn, 0), plan.timing()));
    }
    Spread core = plan.finalCore();
    assertShare(
        0.8, cooks.stream().filter(c -> between(c.finalCore(), core.low(), core.high())).count());
    assertShare(
        plan.chanceUnder(),
        cooks.stream().filter(c -> c.finalCore() < REQUEST.wish().low()).count());
    assertShare(plan.chanceReady(), cooks.stream().filter(c -> c.ready() <= plan.lead()).count());
  }

  private static void assertShare(double stated, long count) {
    assertEquals(stated, count / 200.0, 4 * Math.sqrt(stated * (1 - stated) / 200));
  }

  private static boolean between(double value, double low, double high) {
    return value >= low && value <= high;
  }

  @Test
  void displayThatShowsMore_isPulledEarlier_andColder() {
    FollowedCook right =
        FollowedCook.by(PullRule.atReading(325), Optional.empty(), truth(middle(), 0), AT_14_000);
    FollowedCook high =
        FollowedCook.by(PullRule.atReading(325), Optional.empty(), truth(middle(), 2), AT_14_000);
    assertTrue(high.pull() < right.pull() - 300);
    assertTrue(high.finalCore() < right.finalCore());
    assertEquals(right.pull() + 200 + 900, right.ready(), 1e-6);
    assertEquals(14_000, right.carved(), 0);
  }

  @Test
  void readingThatNeverComes_isSaid() {
    FollowedCook never =
        FollowedCook.by(PullRule.atReading(400), Optional.empty(), truth(middle(), 0), AT_14_000);
    assertEquals(Double.POSITIVE_INFINITY, never.ready(), 0);
  }

  @Test
  void paceOfTheDisplay_decides() {
    Pull pull = Pull.at(330, 1200);
    PullRule rule = PullRule.of(pull);
    double time = 0;
    while (!rule.pulls(time, 280 + 0.005 * time)) {
      time += 30;
    }
    assertEquals((330 - 280) / 0.005 - 1200, time, 30);
  }

  @Test
  void straightLine_pullsAhead_ofAStraightRise() {
    PullRule rule = PullRule.byStraightLine(330, 1200, 1800);
    double pull = 0;
    for (double time = 0; !rule.pulls(time, 280 + 0.005 * time); time += 30) {
      pull = time + 30;
    }
    assertEquals(10_000 - 1200, pull, 30);
    assertFalse(PullRule.atTime(100).pulls(99, 400));
    assertTrue(PullRule.atTime(100).pulls(100, 280));
  }
}
