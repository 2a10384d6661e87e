package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;

/**
 * The tridiagonal mass matrix M of the compact fluxes, eq. (12): row i has {@code below[i]}, {@code
 * diagonal[i]}, {@code above[i]}.
 */
final class MassMatrix {

  final double[] below;
  final double[] diagonal;
  final double[] above;

  MassMatrix(Grid grid) {
    int n = grid.cells();
    below = new double[n];
    diagonal = new double[n];
    above = new double[n];
    for (int i = 0; i < n; i++) {
      below[i] = grid.correctionBelow(i);
      diagonal[i] = grid.volume(i) + grid.correctionAbove(i) - grid.correctionBelow(i + 1);
      above[i] = -grid.correctionAbove(i + 1);
    }
  }
}
