package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.reference.ManufacturedSolution.Field;

class ManufacturedSolutionTest {
  private static final double RADIUS = 0.045;

  @ParameterizedTest
  @CsvSource({"0, 0.01", "0, 0.04", "0.5, 0.03", "1, 0.01", "1, 0.04", "2, 0.01", "2, 0.04"})
  void source_balancesTheHeatEquation(double exponent, double r) {
    ManufacturedSolution solution = withExponent(exponent);
    double t = 900;
    double expected =
        storageByDifferences(solution, r, t) - conductionByDifferences(solution, r, t);
    assertEquals(expected, solution.source(r, t), 1e-6 * Math.abs(expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1, 2})
  void source_isContinuousAtTheCentre(double exponent) {
    ManufacturedSolution solution = withExponent(exponent);
    double atCentre = solution.source(0, 300);
    assertEquals(atCentre, solution.source(1e-7, 300), 1e-8 * Math.abs(atCentre));
    assertEquals(0, Math.abs(solution.flux(0, 300)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.03, RADIUS})
  void flux_isConductivityTimesGradient(double r) {
    ManufacturedSolution solution = withExponent(1);
    double expected = fluxByDifferences(solution, r, 600);
    assertEquals(expected, solution.flux(r, 600), 1e-9 * Math.abs(expected));
  }

  @Test
  void property_isTheSlopeOfItsIntegral() {
    LinearProperty property = new LinearProperty(0.48, 2e-3, 293.15);
    double slope = Differences.first(to -> property.integral(280, to), 330, 0.1);
    assertEquals(property.at(330), slope, 1e-11);
    assertEquals(property.slope(), Differences.first(property::at, 330, 0.1), 1e-11);
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> withExponent(-1));
    assertThrows(IllegalArgumentException.class, () -> withExponent(1).source(-0.01, 0));
    assertThrows(IllegalArgumentException.class, () -> new Field(300, 20, 0, 1e-3));
    assertThrows(IllegalArgumentException.class, () -> new LinearProperty(Double.NaN, 0, 293.15));
  }

  private static double storageByDifferences(ManufacturedSolution solution, double r, double t) {
    double rate = Differences.first(time -> solution.temperature(r, time), t, 1);
    return solution.heatCapacity().at(solution.temperature(r, t)) * rate;
  }

  private static double conductionByDifferences(ManufacturedSolution solution, double r, double t) {
    double m = solution.exponent();
    double divergence =
        Differences.first(
            x -> Math.pow(x, m) * fluxByDifferences(solution, x, t), r, 0.005 * RADIUS);
    return divergence / Math.pow(r, m);
  }

  private static double fluxByDifferences(ManufacturedSolution solution, double r, double t) {
    double gradient = Differences.first(x -> solution.temperature(x, t), r, 0.005 * RADIUS);
    return solution.conductivity().at(solution.temperature(r, t)) * gradient;
  }

  private static ManufacturedSolution withExponent(double exponent) {
    return new ManufacturedSolution(
        exponent,
        new Field(320, 35, 1.2 / RADIUS, 4e-4),
        new LinearProperty(0.48, 2e-3, 293.15),
        new LinearProperty(3.66e6, 1e-3, 293.15));
  }
}
