package org.roastfield.core.integration;

import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.grid.Grid;

/** Averages of a function over cells, weighted with the area ξ^m, by five points of Gauss. */
final class CellAverages {

  private static final double[] NODES = {
    -0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640
  };
  private static final double[] WEIGHTS = {
    0.2369268850561891,
    0.4786286704993665,
    0.5688888888888889,
    0.4786286704993665,
    0.2369268850561891
  };

  private CellAverages() {}

  /** Writes the averages of {@code function} of ξ into {@code averages}. */
  static void of(Grid grid, DoubleUnaryOperator function, double[] averages) {
    for (int i = 0; i < grid.cells(); i++) {
      double middle = 0.5 * (grid.face(i) + grid.face(i + 1));
      double half = 0.5 * grid.width(i);
      double sum = 0;
      double volume = 0;
      for (int j = 0; j < NODES.length; j++) {
        double xi = middle + half * NODES[j];
        double weight = WEIGHTS[j] * Math.pow(xi, grid.exponent());
        sum += weight * function.applyAsDouble(xi);
        volume += weight;
      }
      averages[i] = sum / volume;
    }
  }

  static double[] of(Grid grid, DoubleUnaryOperator function) {
    double[] averages = new double[grid.cells()];
    of(grid, function, averages);
    return averages;
  }

  /** Volume-weighted root mean square of the difference of two sets of averages. */
  static double distance(Grid grid, double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < grid.cells(); i++) {
      sum += grid.volume(i) * (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum / grid.totalVolume());
  }
}
