package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class TicksPropertiesTest {

  @Property
  void decimal_ticksAreInsideEvenAndNotTooMany(
      @ForAll @DoubleRange(min = -1000, max = 1000) double low,
      @ForAll @Scale(3) @DoubleRange(min = 1e-3, max = 5000) double length,
      @ForAll @IntRange(min = 2, max = 20) int most) {
    double high = low + length;
    List<Double> ticks = Ticks.decimal(low, high, most);
    double step = Ticks.decimalStep(low, high, most);
    assertTrue(ticks.size() <= most, () -> ticks.size() + " ticks");
    for (int i = 0; i < ticks.size(); i++) {
      double tick = ticks.get(i);
      assertTrue(tick >= low - 1e-8 * step && tick <= high + 1e-8 * step, () -> "outside: " + tick);
      if (i > 0) {
        assertEquals(step, tick - ticks.get(i - 1), 1e-9 * (step + Math.abs(tick)));
      }
    }
  }

  @Property
  void decimal_stepIsOneTwoOrFiveAndTheNextFinerWouldBeTooMany(
      @ForAll @Scale(3) @DoubleRange(min = 1e-3, max = 5000) double length,
      @ForAll @IntRange(min = 2, max = 20) int most) {
    double step = Ticks.decimalStep(0, length, most);
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10(step * (1 + 1e-9))));
    long lead = Math.round(step / power);
    assertTrue(lead == 1 || lead == 2 || lead == 5, () -> "step " + step);
    double finer = lead == 5 ? 2 * power : step / 2;
    // 0.3 / 0.1 is a little less than 3, but the third tick is on the axis
    assertTrue(Math.floor(length / finer + 1e-9) + 1 > most, () -> step + " could be " + finer);
  }
}
