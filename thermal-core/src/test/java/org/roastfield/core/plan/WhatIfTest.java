package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.units.Temperatures;

class WhatIfTest {

  private static final double AIR = Temperatures.celsius(120);
  private static final double DIAMETER = 0.08;
  private static final EnsembleSimulator SIMULATOR = EnsembleSimulator.with(Planner.PLANNING);
  private static final PlanRequest REQUEST =
      PlanRequest.of(hotter(0), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4))
          .withDraws(100, 3);
  private static final Plan PLAN = Planner.with(SIMULATOR).plan(REQUEST);
  private static final WhatIf WHAT_IF = WhatIf.with(SIMULATOR);

  private static PlannedCook hotter(double kelvin) {
    return PlanCooks.loin(DIAMETER, AIR + kelvin);
  }

  /** Draws and their middle differ by some percent. */
  @Test
  void smallChange_bySensitivity_isThatOfTheDraws() {
    WhatIf.Effect estimate = WHAT_IF.estimate(REQUEST, PLAN, WhatIfTest::hotter, 1);
    WhatIf.Effect exact = WHAT_IF.exact(REQUEST.withDraws(20, 3), PLAN, hotter(1), 0);
    assertEquals(WhatIf.Method.SENSITIVITY, estimate.method());
    assertEquals(exact.pull(), estimate.pull(), 0.1 * Math.abs(exact.pull()));
    assertEquals(exact.ready(), estimate.ready(), 0.1 * Math.abs(exact.ready()));
    assertEquals(exact.finalCore(), estimate.finalCore(), 0.02);
  }

  /** The amount that plans print, beside the same draws: a derivative without it is a fifth off. */
  @Test
  void printedChange_bySensitivity_isThatOfTheDraws() {
    WhatIf.Effect estimate = WHAT_IF.estimate(REQUEST, PLAN, WhatIfTest::hotter, 15);
    WhatIf.Effect exact = WHAT_IF.exact(REQUEST.withDraws(20, 3), PLAN, hotter(15), 0);
    assertEquals(WhatIf.Method.SENSITIVITY, estimate.method());
    assertEquals(exact.near(), estimate.near(), 0.1 * Math.abs(exact.near()));
    assertEquals(exact.pull(), estimate.pull(), 0.1 * Math.abs(exact.pull()));
    assertEquals(exact.ready(), estimate.ready(), 0.1 * Math.abs(exact.ready()));
  }

  /**
   * What is on already may wait longer, for which its rule has targets: they make up for the hour
   * to within a kelvin, on this side or that.
   */
  @Test
  void laterService_isPulledLater_forItsRuleMovesAlong() {
    WhatIf.Effect later = WHAT_IF.exact(REQUEST, PLAN, REQUEST.cook(), 3600);
    assertTrue(later.pull() >= 0 && later.pull() < 3600, later.toString());
    assertEquals(later.pull(), later.ready(), 1e-6);
    assertEquals(0, later.finalCore(), 1, later.toString());
    WhatIf.Effect promised = WHAT_IF.exact(REQUEST, PLAN, REQUEST.cook(), 0);
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
    WhatIf.Effect effect = WHAT_IF.estimate(slow, plan, WhatIfTest::slow, 15);
    assertEquals(WhatIf.Method.FEW_DRAWS, effect.method());
  }

  @Test
  void fewDraws_sayThatTheyAreFew() {
    assertEquals(WhatIf.Method.FEW_DRAWS, WHAT_IF.few(REQUEST, PLAN, hotter(15), 0).method());
  }

  @Test
  void earlierService_isRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> WHAT_IF.exact(REQUEST, PLAN, REQUEST.cook(), -60));
  }

  @Test
  void raisedFire_isReadyEarlier_withMoreCarryover() {
    WhatIf.Effect exact = WHAT_IF.exact(REQUEST, PLAN, hotter(15), 0);
    assertTrue(exact.pull() < -600);
    assertTrue(exact.near() < 0);
    assertTrue(exact.finalCore() > 0);
    assertTrue(exact.chanceReady() > PLAN.chanceReady());
  }

  @Test
  void noChange_changesNothing() {
    WhatIf.Effect none = WHAT_IF.exact(REQUEST, PLAN, hotter(0), 0);
    assertEquals(0, none.pull(), 0);
    assertEquals(0, none.finalCore(), 0);
  }
}
