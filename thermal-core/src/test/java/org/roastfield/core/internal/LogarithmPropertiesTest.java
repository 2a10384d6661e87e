package org.roastfield.core.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.support.UniformDraws;

/** What a logarithm must be, anywhere in its range. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class LogarithmPropertiesTest {

  /** A little below ln 1e3. */
  private static final double WIDE = 6.9;

  @Property
  void logarithm_isThatOfStrictMath(
      @ForAll @DoubleRange(min = -WIDE, max = WIDE) @Scale(12) double exponent) {
    double r = StrictMath.exp(exponent);
    double exact = StrictMath.log(r);
    assertEquals(exact, Logarithm.of(r), 2e-14 + 1e-12 * Math.abs(exact));
  }

  @Property
  void product_hasTheSumOfTheLogarithms(
      @ForAll @DoubleRange(min = -3.4, max = 3.4) @Scale(12) double one,
      @ForAll @DoubleRange(min = -3.4, max = 3.4) @Scale(12) double two) {
    double a = StrictMath.exp(one);
    double b = StrictMath.exp(two);
    double bound = 3 * (2e-14 + 1e-12 * WIDE);
    assertEquals(Logarithm.of(a) + Logarithm.of(b), Logarithm.of(a * b), bound);
  }

  @Property
  void reciprocal_hasTheOppositeLogarithm(
      @ForAll @DoubleRange(min = -WIDE, max = WIDE) @Scale(12) double exponent) {
    double r = StrictMath.exp(exponent);
    assertEquals(-Logarithm.of(r), Logarithm.of(1 / r), 2 * (2e-14 + 1e-12 * Math.abs(exponent)));
  }
}
