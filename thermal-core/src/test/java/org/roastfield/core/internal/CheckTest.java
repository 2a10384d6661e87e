package org.roastfield.core.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckTest {

  private static final double NAN = Double.NaN;
  private static final double INFINITY = Double.POSITIVE_INFINITY;

  @Test
  void goodValues_areReturned() {
    assertEquals(-2.5, Check.finite("x", -2.5));
    assertEquals(Double.MIN_VALUE, Check.positive("x", Double.MIN_VALUE));
    assertEquals(0, Check.notNegative("x", 0));
    assertEquals(1, Check.inRange("x", 1.0, 0, 1));
    assertEquals(3, Check.inRange("x", 3, 3, 7));
    assertEquals(" a ", Check.notBlank("x", " a "));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void noNumbers_areRefusedByEveryCheck(double value) {
    assertRefused("x must be finite, was " + value, () -> Check.finite("x", value));
    assertRefused(
        "x must be finite and greater than 0, was " + value, () -> Check.positive("x", value));
    assertRefused(
        "x must be finite and at least 0, was " + value, () -> Check.notNegative("x", value));
    assertRefused("x must be in [0.0, 1.0], was " + value, () -> Check.inRange("x", value, 0, 1));
  }

  @Test
  void message_namesArgumentRuleAndValue() {
    assertRefused(
        "relativeHumidity must be in [0.0, 1.0], was 1.2",
        () -> Check.inRange("relativeHumidity", 1.2, 0, 1));
    assertRefused("cells must be in [6, 100], was 5", () -> Check.inRange("cells", 5, 6, 100));
    assertRefused(
        "radius must be finite and greater than 0, was 0.0", () -> Check.positive("radius", 0));
    assertRefused(
        "h must be finite and at least 0, was -1.0E-9", () -> Check.notNegative("h", -1e-9));
    assertRefused("name must not be blank, was \" \"", () -> Check.notBlank("name", " "));
  }

  @Test
  void rangeChecks_includeBothEnds() {
    assertEquals(0, Check.inRange("x", 0.0, 0, 1));
    assertRefused(
        "x must be in [0.0, 1.0], was " + Math.nextUp(1.0),
        () -> Check.inRange("x", Math.nextUp(1.0), 0, 1));
    assertRefused("x must be in [1, 2], was 3", () -> Check.inRange("x", 3, 1, 2));
  }

  @Test
  void emptyRange_refusesEverything() {
    assertRefused("x must be in [1.0, 0.0], was 0.5", () -> Check.inRange("x", 0.5, 1, 0));
    assertRefused("x must be in [NaN, 1.0], was 0.5", () -> Check.inRange("x", 0.5, NAN, 1));
    assertEquals(INFINITY, Check.inRange("x", INFINITY, 0, INFINITY));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
