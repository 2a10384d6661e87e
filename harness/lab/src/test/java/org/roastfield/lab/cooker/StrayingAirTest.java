package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.surface.Signal;

class StrayingAirTest {

  private static final Prior PRIOR = Prior.of(StrayingAir.parameters());

  @Test
  void openings_takeTheSameHeat_smoothOrAsTheyAre() {
    ParameterPoint closed = SearPlanner.middle(PRIOR);
    closed = closed.moved(closed.index("openings"), -1);
    ParameterPoint open = closed.moved(closed.index("openings"), 1);
    Signal smooth = StrayingAir.smooth(383, open);
    Signal rough = StrayingAir.rough(383, open, 3);
    Signal shut = StrayingAir.rough(383, closed, 3);
    double more = 0;
    for (double time = 0.5; time < 18_000; time++) {
      more += rough.at(time) - shut.at(time) - (smooth.at(time) - 383);
    }
    double both = 2 * (383 - 320) * 2 * 90;
    assertEquals(0, more / both, 0.1);
  }

  /**
   * As rough as eq. (83) wherever it is looked at: 8 K at a knot and half-way to the next, where a
   * straight line would have 6.6, and what an eighth of the correlation time leaves. 2000 draws
   * know a deviation to 0.13 K, a product over a square to 0.02.
   */
  @Test
  void drift_isThatOfAFireByHand_atKnotsAndBetween() {
    SplittableRandom random = new SplittableRandom(5);
    int draws = 2000;
    double knot = 2100;
    double[] squares = new double[2];
    double[] after = new double[2];
    for (int i = 0; i < draws; i++) {
      ParameterPoint point = PRIOR.parameters().point(PRIOR.draw(random));
      point = point.moved(point.index("openings"), -1);
      Signal air = StrayingAir.rough(0, point, i);
      assertEquals(StrayingAir.smooth(0, point).at(2 * knot), air.at(2 * knot), 1e-9);
      for (int half = 0; half < 2; half++) {
        double now = air.at((2 + 0.5 * half) * knot);
        squares[half] += now * now / draws;
        after[half] += now * air.at((2.125 + 0.5 * half) * knot) / draws;
      }
    }
    for (int half = 0; half < 2; half++) {
      assertEquals(8, Math.sqrt(squares[half]), 0.4);
      assertEquals(Math.exp(-0.125), after[half] / squares[half], 0.04);
    }
  }

  @Test
  void sameSeed_isTheSameAir() {
    ParameterPoint point = SearPlanner.middle(PRIOR);
    Signal once = StrayingAir.rough(383, point, 7);
    assertEquals(once.at(5000), StrayingAir.rough(383, point, 7).at(5000), 0);
    assertNotEquals(once.at(5000), StrayingAir.rough(383, point, 8).at(5000), 1);
  }
}
