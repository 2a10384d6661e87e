package org.roastfield.core.integration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.RobinSeries;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.SurfaceLaw;

/** Observed order in time with fixed steps, against small steps on the same grid. */
class TemporalOrderTest {

  private static final int CELLS = 20;
  private static final int FEWEST_STEPS = 8;
  private static final int REFERENCE_STEPS = 512;
  private static final double DURATION =
      SmoothCooling.seconds(SmoothCooling.LAST - SmoothCooling.FIRST);

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void smoothCooling_isOfFourthOrder(RadialMode mode) {
    SurfaceLaw law = SmoothCooling.law();
    assertTrue(order(mode, law) >= 3.7, () -> "order " + order(mode, law));
  }

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void swingingAir_doesNotReduceTheOrderOfTheMeanSquare(RadialMode mode) {
    SurfaceLaw law = swinging();
    assertTrue(order(mode, law) >= 3.7, () -> "order " + order(mode, law));
  }

  @Test
  void swingingAir_isFollowedToAThousandthWithEightStepsAPeriod() {
    double error = error(RadialMode.CYLINDER, swinging(), 2 * FEWEST_STEPS, REFERENCE_STEPS);
    assertTrue(error < 1e-3 * SmoothCooling.DIFFERENCE, () -> "error " + error);
  }

  /** Order from the errors with twice and four times {@value #FEWEST_STEPS} steps. */
  static double order(RadialMode mode, SurfaceLaw law) {
    double coarse = error(mode, law, 2 * FEWEST_STEPS, REFERENCE_STEPS);
    double fine = error(mode, law, 4 * FEWEST_STEPS, REFERENCE_STEPS);
    return Math.log(coarse / fine) / Math.log(2);
  }

  /** Air that swings twice in the time that is integrated, around the air of the cooling. */
  static SurfaceLaw swinging() {
    double rate = 4 * Math.PI / DURATION;
    return new Convection(
        SmoothCooling.BIOT * 0.5 / SmoothCooling.RADIUS,
        time -> SmoothCooling.AIR + 20 * (1 - Math.cos(rate * time)));
  }

  static double error(RadialMode mode, SurfaceLaw law, int steps, int referenceSteps) {
    Grid grid = Grid.symmetric(mode.exponent(), CELLS, 1.0 / CELLS, 0.1);
    State coarse = integrate(grid, mode, law, steps);
    State fine = integrate(grid, mode, law, referenceSteps);
    return CellAverages.distance(grid, coarse.temperature, fine.temperature);
  }

  private static State integrate(Grid grid, RadialMode mode, SurfaceLaw law, int steps) {
    Stepper stepper = new Stepper(SmoothCooling.problem(grid), 1e-9, new Counters());
    stepper.laws(law, law);
    RobinSeries series = RobinSeries.of(mode, SmoothCooling.BIOT);
    State from = new State(grid.cells(), true);
    State to = new State(grid.cells(), true);
    CellAverages.of(grid, SmoothCooling.exact(grid, series, SmoothCooling.FIRST), from.temperature);
    from.face[State.UPPER] = SmoothCooling.AIR;
    System.arraycopy(from.temperature, 0, from.enthalpy, 0, grid.cells());
    assertTrue(stepper.restart(from));
    for (int i = 0; i < steps; i++) {
      assertTrue(stepper.attempt(from, DURATION / steps, to));
      State former = from;
      from = to;
      to = former;
    }
    return from;
  }
}
