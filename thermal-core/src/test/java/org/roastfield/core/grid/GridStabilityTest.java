package org.roastfield.core.grid;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every mode of du/dt = M⁻¹ 𝓛 u with faces held at 0 decays, on coarse, fine, clustered and even
 * grids.
 */
class GridStabilityTest {

  @ParameterizedTest
  @ValueSource(ints = {6, 7, 8, 10, 12, 16, 20, 33, 40})
  void everyModeDecays_inSymmetricBodies(int cells) {
    for (double exponent : new double[] {0, 0.1, 0.5, 1, 1.5, 2, 2.5, 3.2, Grid.HIGHEST_EXPONENT}) {
      for (double surfaceCell : new double[] {1e-3, 4e-3, 0.01, 0.02, 0.05, 0.2}) {
        for (double depth : new double[] {0, 0.05, 0.1, 0.3, 1}) {
          assertDecay(Grid.symmetric(exponent, cells, surfaceCell, depth));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 8, 12, 20, 40})
  void everyModeDecays_inSlabsWithTwoFaces(int cells) {
    for (double surfaceCell : new double[] {5e-4, 2e-3, 5e-3, 0.01, 0.025, 0.1}) {
      for (double depth : new double[] {0, 0.05, 0.1, 0.3, 0.5}) {
        assertDecay(Grid.twoSided(cells, surfaceCell, depth));
      }
    }
  }

  private static void assertDecay(Grid grid) {
    RealMatrix rates = new LUDecomposition(mass(grid)).getSolver().solve(laplacian(grid));
    EigenDecomposition modes = new EigenDecomposition(rates);
    double slowest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < grid.cells(); i++) {
      slowest = Math.max(slowest, modes.getRealEigenvalue(i));
    }
    double found = slowest;
    assertTrue(
        found < -1,
        () ->
            "slowest mode "
                + found
                + " for m "
                + grid.exponent()
                + ", two-sided "
                + grid.isTwoSided()
                + ", cells "
                + grid.cells()
                + ", first width "
                + grid.width(grid.cells() - 1));
  }

  private static RealMatrix mass(Grid grid) {
    int n = grid.cells();
    RealMatrix mass = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      mass.addToEntry(i, i, grid.volume(i) + grid.correctionAbove(i) - grid.correctionBelow(i + 1));
      if (i > 0) {
        mass.addToEntry(i, i - 1, grid.correctionBelow(i));
      }
      if (i < n - 1) {
        mass.addToEntry(i, i + 1, -grid.correctionAbove(i + 1));
      }
    }
    return mass;
  }

  private static RealMatrix laplacian(Grid grid) {
    int n = grid.cells();
    RealMatrix laplacian = new Array2DRowRealMatrix(n, n);
    for (int f = 1; f < n; f++) {
      double g = grid.conductance(f);
      laplacian.addToEntry(f - 1, f - 1, -g);
      laplacian.addToEntry(f - 1, f, g);
      laplacian.addToEntry(f, f, -g);
      laplacian.addToEntry(f, f - 1, g);
    }
    addClosure(laplacian, grid.upper());
    if (grid.isTwoSided()) {
      addClosure(laplacian, grid.lower());
    }
    return laplacian;
  }

  private static void addClosure(RealMatrix laplacian, FaceClosure closure) {
    laplacian.addToEntry(closure.cell(), closure.cell(), closure.near());
    laplacian.addToEntry(closure.cell(), closure.nextCell(), closure.next());
  }
}
