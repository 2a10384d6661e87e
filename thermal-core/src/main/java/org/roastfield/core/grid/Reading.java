package org.roastfield.core.grid;

/**
 * Temperature at a place as a weighted sum of three averages, or of a face value and two averages,
 * eq. (16). Immutable.
 *
 * <p>In a symmetric body away from the face: exact for a + b ξ² + c ξ⁴. Elsewhere: exact for
 * parabolas.
 */
public final class Reading {

  private final int first;
  private final double weight0;
  private final double weight1;
  private final double weight2;
  private final double upperWeight;
  private final double lowerWeight;

  private Reading(
      int first, double w0, double w1, double w2, double upperWeight, double lowerWeight) {
    this.first = first;
    this.weight0 = w0;
    this.weight1 = w1;
    this.weight2 = w2;
    this.upperWeight = upperWeight;
    this.lowerWeight = lowerWeight;
  }

  /**
   * Reading at ξ.
   *
   * @param position ξ in [0, 1]
   */
  public static Reading at(Grid grid, double position) {
    int n = grid.cells();
    if (position >= grid.face(n - 2)) {
      double[] w = faceWeights(grid, 1, position, n - 1, n - 2);
      return new Reading(n - 2, w[2], w[1], 0, w[0], 0);
    }
    if (grid.isTwoSided() && position <= grid.face(2)) {
      double[] w = faceWeights(grid, 0, position, 0, 1);
      return new Reading(0, w[1], w[2], 0, 0, w[0]);
    }
    int first = Math.max(0, Math.min(nearestCell(grid, position) - 1, n - 3));
    double[] w = new double[3];
    interiorWeights(grid, position, first, w);
    return new Reading(first, w[0], w[1], w[2], 0, 0);
  }

  /**
   * Value from cell averages and face values.
   *
   * @param averages [cells], not modified
   * @param upper value at ξ = 1
   * @param lower value at ξ = 0; ignored by a one-sided grid
   */
  public double of(double[] averages, double upper, double lower) {
    return ofCells(averages, 0) + upperWeight * upper + lowerWeight * lower;
  }

  /**
   * Share of the cells in the value.
   *
   * @param averages holds the averages from {@code start} on, not modified
   */
  public double ofCells(double[] averages, int start) {
    int i = start + first;
    return weight0 * averages[i]
        + weight1 * averages[i + 1]
        + (weight2 == 0 ? 0 : weight2 * averages[i + 2]);
  }

  /**
   * Share of the cells in the value of one lane.
   *
   * @param averages [cells][lanes], not modified
   */
  public double ofLane(double[][] averages, int lane) {
    return weight0 * averages[first][lane]
        + weight1 * averages[first + 1][lane]
        + (weight2 == 0 ? 0 : weight2 * averages[first + 2][lane]);
  }

  /**
   * Share of the cells in the value of every lane.
   *
   * @param averages [cells][lanes], not modified
   * @param values [lanes], overwritten
   */
  public void ofRows(int lanes, double[][] averages, double[] values) {
    double[] row0 = averages[first];
    double[] row1 = averages[first + 1];
    double[] row2 = averages[weight2 == 0 ? first : first + 2];
    for (int l = 0; l < lanes; l++) {
      values[l] = weight0 * row0[l] + weight1 * row1[l] + weight2 * row2[l];
    }
  }

  /** Weight of the value at ξ = 1. */
  public double upperWeight() {
    return upperWeight;
  }

  /** Weight of the value at ξ = 0 of a two-sided grid. */
  public double lowerWeight() {
    return lowerWeight;
  }

  private static int nearestCell(Grid grid, double position) {
    int cell = 0;
    while (cell < grid.cells() - 1 && grid.face(cell + 1) <= position) {
      cell++;
    }
    return cell;
  }

  /** Weights of face, near and next value for the parabola through them at {@code position}. */
  private static double[] faceWeights(
      Grid grid, double origin, double position, int cell, int nextCell) {
    double y = position - origin;
    double y1 = grid.centredMean(origin, 1, cell);
    double z1 = grid.centredMean(origin, 2, cell);
    double y2 = grid.centredMean(origin, 1, nextCell);
    double z2 = grid.centredMean(origin, 2, nextCell);
    double determinant = y1 * z2 - y2 * z1;
    double near = (y * z2 - y * y * y2) / determinant;
    double next = (y * y * y1 - y * z1) / determinant;
    return new double[] {1 - near - next, near, next};
  }

  /**
   * Weights w with Σw = 1, Σ w mean(y) = 0, Σ w mean(y²) = 0, so that the constant term of the
   * parabola in y remains.
   */
  private static void interiorWeights(Grid grid, double position, int first, double[] w) {
    double[] y = new double[3];
    double[] z = new double[3];
    for (int j = 0; j < 3; j++) {
      if (grid.isTwoSided()) {
        y[j] = grid.centredMean(position, 1, first + j);
        z[j] = grid.centredMean(position, 2, first + j);
      } else {
        double s = position * position;
        double mean = grid.mean(2, first + j);
        y[j] = mean - s;
        z[j] = grid.mean(4, first + j) - 2 * s * mean + s * s;
      }
    }
    for (int j = 0; j < 3; j++) {
      int a = (j + 1) % 3;
      int b = (j + 2) % 3;
      w[j] = y[a] * z[b] - y[b] * z[a];
    }
    double sum = w[0] + w[1] + w[2];
    for (int j = 0; j < 3; j++) {
      w[j] /= sum;
    }
  }
}
