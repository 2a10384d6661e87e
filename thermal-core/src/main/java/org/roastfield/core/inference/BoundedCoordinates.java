package org.roastfield.core.inference;

import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * Coordinates within bounds as smooth functions of free numbers, a logistic curve of slope 1 in the
 * middle: a search never leaves the bounds and is never cut short at one.
 */
final class BoundedCoordinates {

  private final double[] low;
  private final double[] width;

  BoundedCoordinates(ParameterSet parameters) {
    int n = parameters.size();
    low = new double[n];
    width = new double[n];
    for (int p = 0; p < n; p++) {
      Parameter parameter = parameters.get(p);
      low[p] = parameter.lowest();
      width[p] = parameter.highest() - low[p];
    }
  }

  /** Coordinates of free numbers. */
  double[] coordinates(double[] free) {
    double[] z = new double[free.length];
    for (int p = 0; p < z.length; p++) {
      z[p] = width[p] < Double.POSITIVE_INFINITY ? low[p] + width[p] * share(free, p) : free[p];
    }
    return z;
  }

  /** Slopes of the coordinates by the free numbers. */
  double[] slopes(double[] free) {
    double[] slopes = new double[free.length];
    for (int p = 0; p < slopes.length; p++) {
      double share = width[p] < Double.POSITIVE_INFINITY ? share(free, p) : 0.5;
      slopes[p] = 4 * share * (1 - share);
    }
    return slopes;
  }

  /** Free numbers of coordinates strictly within the bounds. */
  double[] free(double[] z) {
    double[] free = new double[z.length];
    for (int p = 0; p < free.length; p++) {
      free[p] = width[p] < Double.POSITIVE_INFINITY ? free(z, p) : z[p];
    }
    return free;
  }

  private double free(double[] z, int p) {
    double share = (z[p] - low[p]) / width[p];
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "coordinate "
              + p
              + " must lie between its bounds "
              + low[p]
              + " and "
              + (low[p] + width[p])
              + ", was "
              + z[p]);
    }
    return middle(p) + 0.25 * width[p] * StrictMath.log(share / (1 - share));
  }

  private double share(double[] free, int p) {
    return 1 / (1 + StrictMath.exp(-4 * (free[p] - middle(p)) / width[p]));
  }

  private double middle(int p) {
    return low[p] + 0.5 * width[p];
  }
}
