package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class NumbersTest {

  @Test
  void numbers_areTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("1234.5", Numbers.decimal(1234.5, 1));
      assertEquals("0.3", Numbers.coordinate(0.3));
      assertEquals("2 h 05 min".replace(' ', '\u00a0'), Numbers.duration(7500));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void coordinate_isShortAndHasNoNegativeZero() {
    assertEquals("12", Numbers.coordinate(12.04));
    assertEquals("12.1", Numbers.coordinate(12.06));
    assertEquals("0", Numbers.coordinate(-0.01));
    assertEquals("-3.5", Numbers.coordinate(-3.5));
  }

  @Test
  void decimal_hasATrueMinusButNoneBeforeZero() {
    assertEquals("−1.20", Numbers.decimal(-1.2, 2));
    assertEquals("0.0", Numbers.decimal(-0.04, 1));
    assertEquals("–", Numbers.decimal(Double.NaN, 1));
    assertEquals("–", Numbers.decimal(Double.POSITIVE_INFINITY, 1));
  }

  @Test
  void signed_marksPositiveNumbersOnly() {
    assertEquals("+0.31", Numbers.signed(0.31, 2));
    assertEquals("−0.31", Numbers.signed(-0.31, 2));
    assertEquals("0.00", Numbers.signed(0.001, 2));
  }

  @Test
  void scientific_writesPowersOfTen() {
    assertEquals("−2.4·10⁻¹⁶", Numbers.scientific(-2.4e-16));
    assertEquals("3.0·10¹²", Numbers.scientific(3e12));
    assertEquals("0", Numbers.scientific(0));
    assertEquals("–", Numbers.scientific(Double.NaN));
  }

  @Test
  void bothScales_agreeWithTheDefinition() {
    assertEquals("57.0\u00a0°C (135\u00a0°F)", Numbers.bothScales(330.15));
  }

  @Test
  void duration_roundsToMinutes() {
    assertEquals("48\u00a0min", Numbers.duration(48 * 60 + 29));
    assertEquals("1\u00a0h\u00a000\u00a0min", Numbers.duration(3599));
    assertEquals("−5\u00a0min", Numbers.duration(-300));
    assertEquals("0\u00a0min", Numbers.duration(-10));
  }
}
