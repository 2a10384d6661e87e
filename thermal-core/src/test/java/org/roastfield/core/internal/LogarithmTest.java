package org.roastfield.core.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bounds that {@link Logarithm} states, at points even in the logarithm. */
class LogarithmTest {

  private static final int POINTS = 500_000;

  @Test
  void error_isWithinItsBoundFromAThousandthToAThousand() {
    for (int i = 0; i <= POINTS; i++) {
      double r = StrictMath.pow(10, -3 + 6.0 * i / POINTS);
      assertWithin(r, 2e-14, 1e-12);
    }
  }

  @Test
  void error_isWithinItsBoundUpToAHundredMillion() {
    for (int i = 0; i <= POINTS; i++) {
      double r = StrictMath.pow(10, 3 + 5.0 * i / POINTS);
      assertWithin(r, 0, 1e-6);
    }
  }

  /** Thin vapour: the ratio of dry shares is a little off one, and its logarithm is small. */
  @Test
  void error_isWithinItsBoundNextToOne() {
    double above = 1;
    double below = 1;
    for (int i = 0; i < 10_000; i++) {
      assertWithin(above, 2e-14, 1e-12);
      assertWithin(below, 2e-14, 1e-12);
      above = Math.nextUp(above);
      below = Math.nextDown(below);
    }
  }

  @Test
  void one_hasTheLogarithmZero() {
    assertEquals(0, Logarithm.of(1));
  }

  @Test
  void logarithm_rises() {
    double last = Logarithm.of(1e-3);
    for (int i = 1; i <= POINTS; i++) {
      double next = Logarithm.of(StrictMath.pow(10, -3 + 11.0 * i / POINTS));
      assertTrue(next > last);
      last = next;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-Double.MIN_VALUE, -1e-9, -1, -1e9, Double.NEGATIVE_INFINITY, Double.NaN})
  void numbersBelowZero_haveNone(double r) {
    assertTrue(Double.isNaN(Logarithm.of(r)));
  }

  private static void assertWithin(double r, double absolute, double relative) {
    double exact = StrictMath.log(r);
    double error = Math.abs(Logarithm.of(r) - exact);
    assertTrue(
        error < absolute + relative * Math.abs(exact),
        () -> "off by " + error + " at r = " + r + ", ln r = " + exact);
  }
}
