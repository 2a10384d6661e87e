package org.roastfield.core.support;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.lifecycle.AfterContainer;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class UniformDrawsPropertiesTest {

  private static final int TRIES = 400;
  private static final int[] QUARTERS = new int[4];

  @Property(tries = TRIES)
  void draws_areInTheirRange(@ForAll @DoubleRange(min = 5, max = 405) @Scale(3) double value) {
    assertTrue(value >= 5 && value <= 405);
    QUARTERS[(int) Math.min(3, (value - 5) / 100)]++;
  }

  /** A quarter holds 100 of 400 on the average, with a standard deviation below 9. */
  @AfterContainer
  static void everyQuarter_isDrawnFrom() {
    for (int count : QUARTERS) {
      assertTrue(count > 55 && count < 145, () -> "drawn " + count + " of " + TRIES);
    }
  }
}
