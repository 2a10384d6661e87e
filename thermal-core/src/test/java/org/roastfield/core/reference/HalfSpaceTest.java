package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HalfSpaceTest {
  @Test
  void robin_agreesWithIndependentValues() {
    for (List<String> row : ReferenceFiles.rows("/exact/half-space.csv")) {
      double distance = Double.parseDouble(row.get(0));
      double time = Double.parseDouble(row.get(1));
      assertEquals(
          Double.parseDouble(row.get(2)), HalfSpace.robin(distance, time), 1e-14, row.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.3", "1, 1", "3, 5", "0.5, 40"})
  void robin_satisfiesTheHeatEquation(double distance, double time) {
    double rate = Differences.first(t -> HalfSpace.robin(distance, t), time, 1e-3 * time);
    double curvature = Differences.second(x -> HalfSpace.robin(x, time), distance, 5e-3);
    assertEquals(curvature, rate, 1e-8);
  }

  @ParameterizedTest
  @CsvSource({"0.01", "1", "100"})
  void robin_conductsAtTheSurfaceWhatTheSurroundingsGive(double time) {
    double given = HalfSpace.robinSurfaceFlux(time);
    assertEquals(1 - HalfSpace.robin(0, time), given, 1e-13);
    // One-sided: the solution is not even in the distance. Second order in the step.
    double h = 1e-4 * Math.sqrt(time);
    double conducted =
        (3 * HalfSpace.robin(0, time) - 4 * HalfSpace.robin(h, time) + HalfSpace.robin(2 * h, time))
            / (2 * h);
    assertEquals(given, conducted, 1e-6 * given);
  }

  @Test
  void robin_tendsToDirichlet_withStrongHeating() {
    double strength = 1e7;
    double distance = 0.3;
    double time = 0.2;
    double expected = HalfSpace.dirichlet(distance, time);
    double robin = HalfSpace.robin(strength * distance, strength * strength * time);
    assertEquals(expected, robin, 2 / strength);
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.3", "1, 1", "3, 5"})
  void dirichlet_satisfiesTheHeatEquation(double distance, double time) {
    double rate = Differences.first(t -> HalfSpace.dirichlet(distance, t), time, 1e-3 * time);
    double curvature = Differences.second(x -> HalfSpace.dirichlet(x, time), distance, 5e-3);
    assertEquals(curvature, rate, 1e-8);
    assertEquals(1, HalfSpace.dirichlet(0, time));
  }

  @Test
  void dirichlet_conductsItsSurfaceFlux() {
    double time = 0.7;
    double h = 1e-4;
    double conducted =
        (3 * HalfSpace.dirichlet(0, time)
                - 4 * HalfSpace.dirichlet(h, time)
                + HalfSpace.dirichlet(2 * h, time))
            / (2 * h);
    assertEquals(HalfSpace.dirichletSurfaceFlux(time), conducted, 1e-7);
  }

  @Test
  void timeZeroAndNegativeDistanceAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> HalfSpace.robin(0, 0));
    assertThrows(IllegalArgumentException.class, () -> HalfSpace.robin(-1, 1));
    assertThrows(IllegalArgumentException.class, () -> HalfSpace.dirichlet(1, Double.NaN));
  }
}
