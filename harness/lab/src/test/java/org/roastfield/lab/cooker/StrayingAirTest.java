package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.surface.Signal;

class StrayingAirTest {

  private static final Prior PRIOR = Prior.of(StrayingAir.parameters());

  @Test
  void openings_takeTheSameHeat_smoothOrSharp() {
    ParameterPoint point = SearPlanner.middle(PRIOR);
    point = point.moved(point.index("openings"), 1);
    Signal smooth = StrayingAir.smooth(383, point);
    Signal sharp = StrayingAir.sharp(383, point);
    double lost = 0;
    for (double time = 0.5; time < 18_000; time++) {
      lost += sharp.at(time) - smooth.at(time);
    }
    double both = 2 * (383 - 320) * 2 * 90;
    assertEquals(0, lost / both, 0.1);
  }

  /** Eight kelvin at any knot, and e⁻¹ of it kept to the next: 2000 draws know both to 3 %. */
  @Test
  void drift_isThatOfAFireByHand() {
    SplittableRandom random = new SplittableRandom(5);
    int draws = 2000;
    double squares = 0;
    double products = 0;
    for (int i = 0; i < draws; i++) {
      ParameterPoint point = PRIOR.parameters().point(PRIOR.draw(random));
      point = point.moved(point.index("openings"), -1);
      Signal air = StrayingAir.sharp(0, point);
      squares += air.at(4200) * air.at(4200) / draws;
      products += air.at(4200) * air.at(6300) / draws;
    }
    assertEquals(8, Math.sqrt(squares), 0.4);
    assertEquals(Math.exp(-1), products / squares, 0.08);
  }
}
