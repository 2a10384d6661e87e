package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class RobinSeriesPropertiesTest {
  private static final double SURFACE = 1;
  private static final int TRIES = 60;

  @Property(tries = TRIES)
  void meanFallsByTheSurfaceFlux(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = -2, max = 3) double logBiot,
      @ForAll @DoubleRange(min = 0.02, max = 2) @Scale(4) double fourierNumber) {
    RobinSeries series = RobinSeries.of(mode, Math.pow(10, logBiot));
    double rate = Differences.first(series::mean, fourierNumber, 1e-3 * fourierNumber);
    double flux =
        (mode.exponent() + 1) * series.biotNumber() * series.temperature(SURFACE, fourierNumber);
    assertEquals(-flux, rate, 1e-9 * (1 + flux / fourierNumber));
  }

  @Property(tries = TRIES)
  void satisfiesTheHeatEquation(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = -2, max = 3) double logBiot,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double position,
      @ForAll @DoubleRange(min = 0.05, max = 2) @Scale(4) double fourierNumber) {
    RobinSeries series = RobinSeries.of(mode, Math.pow(10, logBiot));
    double rate =
        Differences.first(
            time -> series.temperature(position, time), fourierNumber, 1e-3 * fourierNumber);
    double gradient = Differences.first(x -> series.temperature(x, fourierNumber), position, 2e-3);
    double curvature =
        Differences.second(x -> series.temperature(x, fourierNumber), position, 2e-3);
    assertEquals(rate, curvature + mode.exponent() * gradient / position, 1e-7);
  }

  @Property(tries = TRIES)
  void coolsFromTheSurfaceInwardsAndForGood(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = -2, max = 3) double logBiot,
      @ForAll @DoubleRange(min = 0, max = 0.9) double position,
      @ForAll @DoubleRange(min = 0.001, max = 2) @Scale(4) double fourierNumber) {
    RobinSeries series = RobinSeries.of(mode, Math.pow(10, logBiot));
    double here = series.temperature(position, fourierNumber);
    double roundOff = 1e-13;
    assertTrue(here > -roundOff && here < 1 + roundOff, () -> "was " + here);
    assertTrue(series.temperature(position + 0.1, fourierNumber) < here + roundOff);
    assertTrue(series.temperature(position, 1.1 * fourierNumber) < here + roundOff);
  }
}
