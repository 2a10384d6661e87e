package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadySourceTest {
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1, 1.37, 2})
  void conductsTheSourceToTheSurface(double exponent) {
    SteadySource solution = withExponent(exponent);
    double r = 0.7 * solution.radius();
    double h = 1e-3 * solution.radius();
    double gradient = Differences.first(solution::temperature, r, h);
    double curvature = Differences.second(solution::temperature, r, h);
    double conducted = -solution.conductivity() * (curvature + exponent * gradient / r);
    assertEquals(solution.source(), conducted, 1e-6 * solution.source());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1, 1.37, 2})
  void surfaceGivesOffWhatIsReleased(double exponent) {
    SteadySource solution = withExponent(exponent);
    double excess = solution.temperature(solution.radius()) - solution.ambientTemperature();
    double givenOff = solution.heatTransferCoefficient() * excess;
    double released = solution.source() * solution.radius() / (exponent + 1);
    assertEquals(released, givenOff, 1e-10 * released);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1, 1.37, 2})
  void meanIsTheIntegralOverTheVolume(double exponent) {
    SteadySource solution = withExponent(exponent);
    int intervals = 100_000;
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < intervals; i++) {
      double r = (i + 0.5) / intervals * solution.radius();
      double weight = Math.pow(r, exponent);
      sum += weight * solution.temperature(r);
      weights += weight;
    }
    assertEquals(solution.meanTemperature(), sum / weights, 1e-5);
  }

  @Test
  void withoutSource_isAtTheSurroundings() {
    SteadySource solution = new SteadySource(1, 0.05, 0.5, 20, 0, 393.15);
    assertEquals(393.15, solution.temperature(0));
    assertEquals(393.15, solution.meanTemperature());
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new SteadySource(-0.1, 0.05, 0.5, 20, 1e4, 300));
    assertThrows(IllegalArgumentException.class, () -> new SteadySource(1, 0.05, 0.5, 0, 1e4, 300));
    assertThrows(IllegalArgumentException.class, () -> withExponent(1).temperature(0.06));
  }

  private static SteadySource withExponent(double exponent) {
    return new SteadySource(exponent, 0.05, 0.48, 17, 2e4, 293.15);
  }
}
