package org.roastfield.core.integration;

import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.RobinSeries;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/** A body with a Robin surface that starts from the exact solution when it has become smooth. */
final class SmoothCooling {

  static final double RADIUS = 0.045;
  static final double AIR = 300;
  static final double DIFFERENCE = 80;
  static final double BIOT = 2;
  static final double FIRST = 0.3;
  static final double LAST = 0.6;

  private static final Material MATERIAL = Material.constant("constant", 0.5, 1000, 3600);

  private SmoothCooling() {}

  /**
   * Differences from the exact solution at the end [K].
   *
   * @param averages root mean square over the volume
   * @param centre at the centre
   * @param surface at the face
   */
  record Errors(double averages, double centre, double surface) {

    double largest() {
      return Math.max(averages, Math.max(centre, surface));
    }
  }

  static HeatProblem problem(Grid grid) {
    return new HeatProblem(grid, grid.isTwoSided() ? 2 * RADIUS : RADIUS, MATERIAL, null);
  }

  static SurfaceLaw law() {
    return new Convection(BIOT * 0.5 / RADIUS, Signal.constant(AIR));
  }

  static double seconds(double fourierNumber) {
    return fourierNumber * RADIUS * RADIUS / MATERIAL.diffusivity(AIR);
  }

  /** Exact temperature [K] over ξ of a grid. */
  static DoubleUnaryOperator exact(Grid grid, RobinSeries series, double fourierNumber) {
    return xi -> {
      double place = grid.isTwoSided() ? Math.abs(2 * xi - 1) : xi;
      return AIR + DIFFERENCE * series.temperature(Math.min(1, place), fourierNumber);
    };
  }

  /** Errors at Fo = {@value #LAST} on a grid. */
  static Errors errors(RadialMode mode, Grid grid, double accuracy) {
    RobinSeries series = RobinSeries.of(mode, BIOT);
    StageIntegration integration = new StageIntegration(problem(grid), accuracy, 100_000, AIR);
    State state = integration.state();
    CellAverages.of(grid, exact(grid, series, FIRST), state.temperature);
    integration.resetEnthalpy();
    SurfaceLaw law = law();
    integration.run(law, law, seconds(LAST - FIRST), null, step -> {});
    State end = integration.state();
    DoubleUnaryOperator exact = exact(grid, series, LAST);
    double middle = grid.isTwoSided() ? 0.5 : 0;
    double centre = Reading.at(grid, middle).of(end.temperature, end.face[0], end.face[1]);
    return new Errors(
        CellAverages.distance(grid, end.temperature, CellAverages.of(grid, exact)),
        Math.abs(centre - exact.applyAsDouble(middle)),
        Math.abs(end.face[State.UPPER] - exact.applyAsDouble(1)));
  }
}
