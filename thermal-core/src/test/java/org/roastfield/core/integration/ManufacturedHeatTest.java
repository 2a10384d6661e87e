package org.roastfield.core.integration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.PropertyCurve;
import org.roastfield.core.reference.LinearProperty;
import org.roastfield.core.reference.ManufacturedSolution;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Conductivity and heat capacity that depend on temperature, against a manufactured solution. */
class ManufacturedHeatTest {

  private static final double RADIUS = 0.045;
  private static final double DENSITY = 1000;
  private static final double DURATION = 1800;
  private static final double STIFFNESS = 20;
  private static final double HYBRID_DEPTH = 5e-3 / RADIUS;
  private static final LinearProperty CONDUCTIVITY =
      new LinearProperty(0.48, 3e-3, Temperatures.ZERO_CELSIUS);
  private static final LinearProperty HEAT_CAPACITY =
      new LinearProperty(3.4e6, 2e-3, Temperatures.ZERO_CELSIUS);

  /** Errors at the end [K]. */
  record Errors(double averages, double centre, double surface) {

    double largest() {
      return Math.max(averages, Math.max(centre, surface));
    }
  }

  @ParameterizedTest
  @CsvSource({"SLAB, 20", "SLAB, 40", "CYLINDER, 20", "CYLINDER, 40", "SPHERE, 20", "SPHERE, 40"})
  void errorFallsWithTheSquareOfTheCells(RadialMode mode, int cells) {
    double ratio = plain(mode, cells).largest() / plain(mode, 2 * cells).largest();
    double order = Math.log(ratio) / Math.log(2);
    assertTrue(order >= 1.9, () -> "order " + order);
  }

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void fortyCellsOfTheHybridScheme_areWithinAThousandthOfTheRange(RadialMode mode) {
    Grid grid = Grid.symmetric(mode.exponent(), 40, 0.5e-3 / RADIUS, HYBRID_DEPTH);
    Errors errors = errors(mode, grid);
    assertTrue(errors.largest() <= 0.04, errors::toString);
  }

  static Errors plain(RadialMode mode, int cells) {
    return errors(mode, Grid.symmetric(mode.exponent(), cells, 1.0 / cells, 1));
  }

  static Errors errors(RadialMode mode, Grid grid) {
    ManufacturedSolution exact = solution(mode);
    CellSource source =
        (time, averages) -> CellAverages.of(grid, xi -> exact.source(xi * RADIUS, time), averages);
    StageIntegration integration =
        new StageIntegration(new HeatProblem(grid, RADIUS, material(), source), 1e-6, 100_000, 320);
    CellAverages.of(grid, xi -> exact.temperature(xi * RADIUS, 0), integration.state().temperature);
    integration.resetEnthalpy();
    SurfaceLaw law = surface(exact);
    integration.run(law, law, DURATION, null, step -> {});
    State end = integration.state();
    double[] averages = CellAverages.of(grid, xi -> exact.temperature(xi * RADIUS, DURATION));
    double centre = Reading.at(grid, 0).of(end.temperature, end.face[State.UPPER], 0);
    return new Errors(
        CellAverages.distance(grid, end.temperature, averages),
        Math.abs(centre - exact.temperature(0, DURATION)),
        Math.abs(end.face[State.UPPER] - exact.temperature(RADIUS, DURATION)));
  }

  /** The exact flux, with a spring towards the exact temperature. */
  private static SurfaceLaw surface(ManufacturedSolution exact) {
    return (surfaceTemperature, time, flux) ->
        flux.addHeat(
            exact.flux(RADIUS, time)
                + STIFFNESS * (exact.temperature(RADIUS, time) - surfaceTemperature),
            -STIFFNESS);
  }

  private static Material material() {
    return new Material(
        "manufactured", DENSITY, curve(CONDUCTIVITY, 1), curve(HEAT_CAPACITY, 1 / DENSITY));
  }

  private static PropertyCurve curve(LinearProperty property, double factor) {
    double atZero = property.at(Temperatures.ZERO_CELSIUS);
    return PropertyCurve.polynomial(250, 400, factor * atZero, factor * property.slope());
  }

  private static ManufacturedSolution solution(RadialMode mode) {
    return new ManufacturedSolution(
        mode.exponent(),
        new ManufacturedSolution.Field(320, 35, 1.2 / RADIUS, 4e-4),
        CONDUCTIVITY,
        HEAT_CAPACITY);
  }
}
