package org.roastfield.core.integration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.SteadySource;
import org.roastfield.core.reference.SteadyTwoFaceSlab;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;

/** Steady temperatures with a uniform source, which are parabolas, on clustered grids. */
class SteadyStateTest {

  private static final double LENGTH = 0.05;
  private static final double SOURCE = 40_000;
  private static final double AIR = 310;
  private static final double SURFACE_CELL = 0.01;
  private static final double COMPACT_DEPTH = 0.1;
  private static final double ACCURACY = 1e-7;
  private static final double LONG = 2e6;
  private static final Material MATERIAL = Material.constant("constant", 0.5, 1000, 3600);

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void sourceInABodyHeatedAllRound_givesTheExactParabola(RadialMode mode) {
    Grid grid = Grid.symmetric(mode.exponent(), 20, SURFACE_CELL, COMPACT_DEPTH);
    Convection law = new Convection(12, Signal.constant(AIR));
    State state = settle(grid, law, law);
    SteadySource exact = new SteadySource(mode.exponent(), LENGTH, 0.5, 12, SOURCE, AIR);
    for (double xi : new double[] {0, 0.1, 0.5, 0.9, 1}) {
      assertEquals(exact.temperature(xi * LENGTH), read(grid, state, xi), 1e-5);
    }
    assertEquals(exact.meanTemperature(), mean(grid, state), 1e-5);
  }

  @Test
  void slabBetweenDifferentSurroundings_isExactWithoutSource() {
    Grid grid = Grid.twoSided(20, SURFACE_CELL, COMPACT_DEPTH);
    State state = settle(grid, new Convection(40, Signal.constant(380)), lower(), 0);
    SteadyTwoFaceSlab exact = slab(0);
    for (double xi : new double[] {0, 0.1, 0.5, 0.9, 1}) {
      assertEquals(exact.temperature(xi * LENGTH), read(grid, state, xi), 1e-5);
    }
  }

  @Test
  void slabBetweenDifferentSurroundings_isExactWithSource() {
    Grid grid = Grid.twoSided(20, SURFACE_CELL, COMPACT_DEPTH);
    State state = settle(grid, new Convection(40, Signal.constant(380)), lower(), SOURCE);
    SteadyTwoFaceSlab exact = slab(SOURCE);
    for (double xi : new double[] {0, 0.1, 0.5, 0.9, 1}) {
      assertEquals(exact.temperature(xi * LENGTH), read(grid, state, xi), 1e-5);
    }
  }

  @Test
  void heatReleasedLeavesThroughTheFaces() {
    Grid grid = Grid.twoSided(20, SURFACE_CELL, COMPACT_DEPTH);
    State state = settle(grid, new Convection(40, Signal.constant(380)), lower(), SOURCE);
    SteadyTwoFaceSlab exact = slab(SOURCE);
    double fluxUnit = 0.5 / LENGTH;
    assertEquals(exact.fluxIntoFirstFace(), fluxUnit * state.flow[State.LOWER], 1);
    assertEquals(
        -SOURCE * LENGTH, fluxUnit * (state.flow[State.LOWER] + state.flow[State.UPPER]), 1e-3);
    double stored = 0;
    for (int i = 0; i < grid.cells(); i++) {
      stored += grid.volume(i) * (state.enthalpy[i] - AIR);
    }
    double taken = state.heatTaken[State.UPPER] + state.heatTaken[State.LOWER];
    assertEquals(stored, taken + state.heatReleased, 1e-12 * Math.abs(state.heatReleased));
  }

  private static Convection lower() {
    return new Convection(15, Signal.constant(300));
  }

  private static SteadyTwoFaceSlab slab(double source) {
    return new SteadyTwoFaceSlab(
        LENGTH,
        0.5,
        source,
        new SteadyTwoFaceSlab.Face(15, 300),
        new SteadyTwoFaceSlab.Face(40, 380));
  }

  private static State settle(Grid grid, Convection upper, Convection lower) {
    return settle(grid, upper, lower, SOURCE);
  }

  private static State settle(Grid grid, Convection upper, Convection lower, double source) {
    CellSource everywhere = (time, averages) -> java.util.Arrays.fill(averages, source);
    HeatProblem problem = new HeatProblem(grid, LENGTH, MATERIAL, everywhere);
    StageIntegration integration = new StageIntegration(problem, ACCURACY, 100_000, AIR);
    integration.run(upper, lower, LONG, null, step -> {});
    return integration.state();
  }

  private static double read(Grid grid, State state, double xi) {
    return Reading.at(grid, xi)
        .of(state.temperature, state.face[State.UPPER], state.face[State.LOWER]);
  }

  private static double mean(Grid grid, State state) {
    double sum = 0;
    for (int i = 0; i < grid.cells(); i++) {
      sum += grid.volume(i) * state.temperature[i];
    }
    return sum / grid.totalVolume();
  }
}
