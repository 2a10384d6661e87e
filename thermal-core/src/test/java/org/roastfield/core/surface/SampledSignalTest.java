package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampledSignalTest {

  private static final double INFINITY = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @CsvSource({
    "-100, 300",
    "0, 300",
    "5, 305",
    "10, 310",
    "15, 300",
    "20, 290",
    "50, 350",
    "80, 410",
    "81, 410",
    "1e9, 410"
  })
  void signal_isStraightBetweenSamplesAndHeldOutside(double time, double value) {
    double[] times = {0, 10, 20, 80};
    double[] values = {300, 310, 290, 410};
    assertEquals(value, SampledSignal.of(times, values, INFINITY).at(time), 1e-12);
  }

  @Test
  void oneSample_isHeldForEver() {
    Signal signal = SampledSignal.of(new double[] {5}, new double[] {300}, INFINITY);
    assertEquals(300, signal.at(-1));
    assertEquals(300, signal.at(5));
    assertEquals(300, signal.at(99));
  }

  @Test
  void arrays_areCopied() {
    double[] times = {0, 10};
    double[] values = {300, 310};
    Signal signal = SampledSignal.of(times, values, 100);
    times[1] = 0.5;
    values[0] = 0;
    assertEquals(305, signal.at(5));
    assertEquals(100, signal.shortestPeriod());
  }

  @Test
  void offset_isAddedAndKeepsThePeriod() {
    Signal signal = SampledSignal.of(new double[] {0, 10}, new double[] {300, 310}, 100).plus(7);
    assertEquals(312, signal.at(5));
    assertEquals(100, signal.shortestPeriod());
    assertEquals(INFINITY, Signal.constant(300).shortestPeriod());
    assertEquals(303, Signal.constant(300).plus(3).at(9));
  }

  @Test
  void wrongSamples_areRefused() {
    assertRefused(
        "times.length must be in [1, 2147483647], was 0",
        () -> SampledSignal.of(new double[0], new double[0], 1));
    assertRefused(
        "values.length must be in [2, 2], was 1",
        () -> SampledSignal.of(new double[] {0, 1}, new double[] {300}, 1));
    assertRefused(
        "shortestPeriod must be greater than 0, was NaN",
        () -> SampledSignal.of(new double[] {0}, new double[] {300}, Double.NaN));
    assertRefused(
        "times[1] must be finite, was NaN",
        () -> SampledSignal.of(new double[] {0, Double.NaN}, new double[] {300, 300}, 1));
    assertRefused(
        "values[0] must be finite, was Infinity",
        () -> SampledSignal.of(new double[] {0}, new double[] {INFINITY}, 1));
    assertRefused(
        "times must increase, but times[2] = 5.0 follows 5.0",
        () -> SampledSignal.of(new double[] {0, 5, 5}, new double[] {1, 2, 3}, 1));
    assertRefused("value must be finite, was NaN", () -> Signal.constant(Double.NaN));
    assertRefused("offset must be finite, was NaN", () -> Signal.constant(300).plus(Double.NaN));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
