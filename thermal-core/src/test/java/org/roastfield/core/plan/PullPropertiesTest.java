package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Targets of a pull over time. */
class PullPropertiesTest {

  /** Steps included: two knots at one time. */
  @Property
  void walkingAlong_meetsTheTargetsThatAreLookedUp(
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0, max = 9) Double> times,
      @ForAll @Size(5) List<@DoubleRange(min = 320, max = 350) Double> targets,
      @ForAll @Size(8) List<@DoubleRange(min = -1, max = 10) Double> asked) {
    List<Double> knots = times.stream().map(Math::floor).sorted().toList();
    Pull pull = new Pull(knots, targets.subList(0, knots.size()), 0);
    Pull.Walk walk = pull.walk();
    for (int cut = 0; cut < 2; cut++) {
      walk.begin();
      asked.stream()
          .map(time -> cut(time))
          .sorted()
          .forEach(time -> assertEquals(pull.target(time), walk.target(time), "at " + time));
    }
  }

  /** Halves, so that knots themselves are asked for too. */
  private static double cut(double time) {
    return Math.rint(2 * time) / 2;
  }
}
