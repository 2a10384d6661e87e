package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

class WhatIfTest {

  private static final double AIR = Temperatures.celsius(120);
  private static final double DIAMETER = 0.08;
  private static final EnsembleSimulator SIMULATOR = EnsembleSimulator.with(Planner.PLANNING);
  private static final PlanRequest REQUEST =
      PlanRequest.of(hotter(0), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4))
          .withDraws(100, 3);
  private static final Plan PLAN = Planner.with(SIMULATOR).plan(REQUEST);
  private static final WhatIf WHAT_IF = WhatIf.of(SIMULATOR, REQUEST, PLAN);

  /** By as many draws as derivatives are taken of. */
  private static final WhatIf AS_FEW = WhatIf.of(SIMULATOR, REQUEST.withDraws(20, 3), PLAN);

  private static PlannedCook hotter(double kelvin) {
    return PlanCooks.loin(DIAMETER, AIR + kelvin);
  }

  private static double later(WhatIf.Effect effect, Milestone.Kind kind) {
    return effect.later().getOrDefault(kind, Double.NaN);
  }

  /** Draws and their middle differ by some percent. */
  @Test
  void smallChange_bySensitivity_isThatOfTheDraws() {
    WhatIf.Effect estimate = WHAT_IF.estimate(WhatIfTest::hotter, 1);
    WhatIf.Effect exact = AS_FEW.exact(hotter(1), 0);
    assertEquals(WhatIf.Method.SENSITIVITY, estimate.method());
    assertEquals(exact.pull(), estimate.pull(), 0.1 * Math.abs(exact.pull()));
    assertEquals(exact.ready(), estimate.ready(), 0.1 * Math.abs(exact.ready()));
    assertEquals(exact.finalCore(), estimate.finalCore(), 0.02);
  }

  /** The amount that plans print, beside the same draws: a derivative without it is a fifth off. */
  @Test
  void printedChange_bySensitivity_isThatOfTheDraws() {
    WhatIf.Effect estimate = WHAT_IF.estimate(WhatIfTest::hotter, 15);
    WhatIf.Effect exact = AS_FEW.exact(hotter(15), 0);
    assertEquals(WhatIf.Method.SENSITIVITY, estimate.method());
    double near = later(exact, Milestone.Kind.NEAR);
    assertEquals(near, later(estimate, Milestone.Kind.NEAR), 0.1 * Math.abs(near));
    assertEquals(exact.pull(), estimate.pull(), 0.1 * Math.abs(exact.pull()));
    assertEquals(exact.ready(), estimate.ready(), 0.1 * Math.abs(exact.ready()));
  }

  /** Every milestone after the cut goes on moves, what the clock decides by nothing. */
  @Test
  void printedChange_movesEachMilestone() {
    WhatIf.Effect exact = AS_FEW.exact(hotter(15), 0);
    for (Milestone one : PLAN.milestones()) {
      boolean after = one.kind().compareTo(Milestone.Kind.ON) > 0;
      assertEquals(after, exact.later().containsKey(one.kind()), one.toString());
    }
    WhatIf.Effect estimate = WHAT_IF.estimate(WhatIfTest::hotter, 15);
    estimate
        .later()
        .forEach(
            (kind, by) -> {
              double drawn = later(exact, kind);
              assertEquals(drawn, by, 1 + 0.1 * Math.abs(drawn), kind.toString());
            });
    assertTrue(estimate.later().containsKey(Milestone.Kind.SEAR));
    assertEquals(0, later(exact, Milestone.Kind.CARVE));
  }

  /**
   * What is on already may wait longer, for which its rule has targets: they make up for the hour
   * to within a kelvin, on this side or that.
   */
  @Test
  void laterService_isPulledLater_forItsRuleMovesAlong() {
    WhatIf.Effect later = WHAT_IF.exact(REQUEST.cook(), 3600);
    assertTrue(later.pull() >= 0 && later.pull() < 3600, later.toString());
    assertEquals(later.pull(), later.ready(), 1e-6);
    assertEquals(0, later.finalCore(), 1, later.toString());
    assertEquals(3600, later(later, Milestone.Kind.SEAR), 1e-6);
    assertEquals(3600, later(later, Milestone.Kind.CARVE), 1e-6);
    WhatIf.Effect promised = WHAT_IF.exact(REQUEST.cook(), 0);
    assertEquals(PLAN.chanceReady(), promised.chanceReady(), 1e-12);
  }

  private static PlannedCook slow(double kelvin) {
    return PlanCooks.loin(0.096, Temperatures.celsius(88) + kelvin);
  }

  /** A thick loin in a slow fire: some draws hardly get there, and the median needs them. */
  @Test
  void drawsThatHardlyGetThere_haveNoDerivative() {
    PlanRequest slow =
        PlanRequest.of(slow(0), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4))
            .withDraws(100, 3);
    Plan plan = Planner.with(SIMULATOR).plan(slow);
    WhatIf.Effect effect = WhatIf.of(SIMULATOR, slow, plan).estimate(WhatIfTest::slow, 15);
    assertEquals(WhatIf.Method.FEW_DRAWS, effect.method());
  }

  @Test
  void fewDraws_sayThatTheyAreFew() {
    assertEquals(WhatIf.Method.FEW_DRAWS, WHAT_IF.few(hotter(15), 0).method());
  }

  @Test
  void earlierService_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> WHAT_IF.exact(REQUEST.cook(), -60));
  }

  @Test
  void raisedFire_isReadyEarlier_withMoreCarryover() {
    WhatIf.Effect exact = WHAT_IF.exact(hotter(15), 0);
    assertTrue(exact.pull() < -600);
    assertTrue(later(exact, Milestone.Kind.NEAR) < 0);
    assertTrue(exact.finalCore() > 0);
    assertTrue(exact.chanceReady() > PLAN.chanceReady());
  }

  @Test
  void noChange_changesNothing() {
    WhatIf.Effect none = WHAT_IF.exact(hotter(0), 0);
    assertEquals(0, none.pull(), 0);
    assertEquals(0, none.finalCore(), 0);
  }

  private static final PlanRequest LOOKING =
      PlanRequest.of(
              PlanCooks.loin()
                  .with(
                      Fires.of(
                          kelvin ->
                              PlanCooks.loin(0.096, Temperatures.celsius(110) + kelvin).cooks())),
              PlanCooks.prior(),
              CoreWish.of(DonenessScale.TRADE, 4))
          .with(Service.usual().withLatest(900))
          .withDraws(300, 3);

  /** A changed cook looks at the display too, and its fires are changed like the rest of it. */
  @Test
  void changesOfACookThatIsLookedAt_leaveTheLook() {
    Plan plan = Planner.with(SIMULATOR).plan(LOOKING);
    assertTrue(plan.check().isPresent());
    WhatIf whatIf = WhatIf.of(SIMULATOR, LOOKING, plan);
    PlannedCook cook = LOOKING.cook();
    WhatIf.Effect none = whatIf.exact(cook.changed(point -> point), 0);
    assertEquals(0, none.pull(), 0);
    assertEquals(0, none.finalCore(), 0);
    assertEquals(0, whatIf.exact(cook.hotter(0), 0).pull(), 0);
    WhatIf.Effect hotter = whatIf.estimate(cook::hotter, 15);
    assertEquals(WhatIf.Method.FEW_DRAWS, hotter.method());
    assertTrue(hotter.pull() < -60, hotter.toString());
    assertThrows(IllegalArgumentException.class, () -> whatIf.exact(cook.with(cook.cooks()), 0));
  }

  /** The fire is let down and raised from where it is. */
  @Test
  void hotterCook_hasItsFiresFromThere() {
    PlannedCook cook = LOOKING.cook();
    ParameterPoint point = LOOKING.prior().parameters().point(LOOKING.prior().mean());
    Cook raised = cook.fire().cooks().apply(25.0).apply(point);
    Cook further = cook.hotter(15).fire().cooks().apply(10.0).apply(point);
    assertEquals(gentle(raised), gentle(further));
    assertEquals(
        gentle(cook.fire().cooks().apply(15.0).apply(point)), gentle(cook.hotter(15).at(point)));
    assertThrows(IllegalArgumentException.class, () -> hotter(0).hotter(15));
  }

  /** Wind does not cease where the fire is changed. */
  @Test
  void changedCook_isChangedOnEveryFire() {
    PlannedCook cook = LOOKING.cook();
    ParameterPoint point = LOOKING.prior().parameters().point(LOOKING.prior().mean());
    Cook calm = cook.fire().cooks().apply(40.0).apply(lessConvection(point));
    PlannedCook changed = cook.changed(WhatIfTest::lessConvection);
    assertEquals(gentle(calm), gentle(changed.fire().cooks().apply(40.0).apply(point)));
    assertEquals(gentle(cook.at(lessConvection(point))), gentle(changed.at(point)));
    assertNotEquals(gentle(cook.at(point)), gentle(changed.at(point)));
  }

  private static SurfaceLaw gentle(Cook cook) {
    return cook.stages().get(0).upper();
  }

  private static ParameterPoint lessConvection(ParameterPoint point) {
    int at = point.index("convection");
    return point.moved(at, 0.7 * point.coordinate(at).value());
  }
}
