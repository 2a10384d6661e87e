package org.roastfield.core.grid;

/**
 * Temperature at a place as a weighted sum of averages and face values, eq. (16). Immutable.
 *
 * <p>From the averages of three cells: exact for a + b ξ² + c ξ⁴ in a symmetric body, for parabolas
 * in a slab with two faces. In the outer half of the cell at a face, the straight line between the
 * face and the middle of the cell: a parabola through both would swing below its neighbours
 * whenever the face jumps.
 */
public final class Reading {

  /** A place so near to a face between two cells is read from both sides alike. */
  private static final double AT_FACE = 1e-9;

  /** Half the difference of ξ for the weights' derivatives. */
  private static final double SLOPE_STEP = 1e-5;

  private final boolean central;
  private final int first;
  private final double weight0;
  private final double weight1;
  private final double weight2;
  private final double weight3;
  private final double upperWeight;
  private final double lowerWeight;

  private Reading(boolean central, int first, double[] w, double upperWeight, double lowerWeight) {
    this.central = central;
    this.first = first;
    this.weight0 = w[0];
    this.weight1 = w[1];
    this.weight2 = w[2];
    this.weight3 = w[3];
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
    double lastMiddle = middle(grid, n - 1);
    if (position >= lastMiddle) {
      double share = (position - lastMiddle) / (1 - lastMiddle);
      double[] w = interiorWeights(grid, lastMiddle, n - 3);
      return new Reading(false, n - 3, scaled(w, 1 - share), share, 0);
    }
    double firstMiddle = middle(grid, 0);
    if (grid.isTwoSided() && position <= firstMiddle) {
      double share = 1 - position / firstMiddle;
      double[] w = interiorWeights(grid, firstMiddle, 0);
      return new Reading(false, 0, scaled(w, 1 - share), 0, share);
    }
    int nearest = nearestCell(grid, position + AT_FACE);
    double[] w = new double[4];
    boolean betweenCells = Math.abs(position - grid.face(nearest)) <= AT_FACE;
    if (grid.isTwoSided() && betweenCells && nearest >= 2 && nearest <= n - 2) {
      double[] inner = interiorWeights(grid, position, nearest - 2);
      double[] outer = interiorWeights(grid, position, nearest - 1);
      for (int j = 0; j < 3; j++) {
        w[j] += 0.5 * inner[j];
        w[j + 1] += 0.5 * outer[j];
      }
      return new Reading(true, nearest - 2, w, 0, 0);
    }
    int first = Math.max(0, Math.min(nearest - 1, n - 3));
    System.arraycopy(interiorWeights(grid, position, first), 0, w, 0, 3);
    return new Reading(!grid.isTwoSided() && position < grid.face(1), first, w, 0, 0);
  }

  /**
   * Derivative by ξ of the reading at ξ, with the cells that it is made of there.
   *
   * @param position ξ in [0, 1]
   */
  public static Reading slopeAt(Grid grid, double position) {
    int n = grid.cells();
    double lastMiddle = middle(grid, n - 1);
    if (position >= lastMiddle) {
      double perShare = 1 / (1 - lastMiddle);
      double[] w = interiorWeights(grid, lastMiddle, n - 3);
      return new Reading(true, n - 3, scaled(w, -perShare), perShare, 0);
    }
    double firstMiddle = middle(grid, 0);
    if (grid.isTwoSided() && position <= firstMiddle) {
      double perShare = 1 / firstMiddle;
      double[] w = interiorWeights(grid, firstMiddle, 0);
      return new Reading(true, 0, scaled(w, perShare), 0, -perShare);
    }
    int first = Math.max(0, Math.min(nearestCell(grid, position) - 1, n - 3));
    double[] outer = interiorWeights(grid, position + SLOPE_STEP, first);
    double[] inner = interiorWeights(grid, position - SLOPE_STEP, first);
    double[] w = new double[4];
    for (int j = 0; j < 3; j++) {
      w[j] = (outer[j] - inner[j]) / (2 * SLOPE_STEP);
    }
    return new Reading(true, first, w, 0, 0);
  }

  /** The same reading where it is not to be kept from overshooting its neighbours. */
  public Reading unlimited() {
    double[] w = {weight0, weight1, weight2, weight3};
    return new Reading(true, first, w, upperWeight, lowerWeight);
  }

  /**
   * One of the three neighbouring values that {@link #limited} compares with.
   *
   * @param index 0, 1 or 2, in the order of ξ
   */
  public Reading neighbour(int index) {
    int place = first + index + (upperWeight != 0 ? 1 : 0) - (lowerWeight != 0 ? 1 : 0);
    boolean atUpper = upperWeight != 0 && index == 2;
    boolean atLower = lowerWeight != 0 && index == 0;
    if (atUpper || atLower) {
      return new Reading(true, first, new double[4], atUpper ? 1 : 0, atLower ? 1 : 0);
    }
    double[] w = new double[4];
    w[place == 0 ? 0 : 1] = 1;
    return new Reading(true, place == 0 ? 0 : place - 1, w, 0, 0);
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
        + (weight2 == 0 ? 0 : weight2 * averages[i + 2])
        + (weight3 == 0 ? 0 : weight3 * averages[i + 3]);
  }

  /**
   * Share of the cells in the value of one lane.
   *
   * @param averages [cells][lanes], not modified
   */
  public double ofLane(double[][] averages, int lane) {
    return weight0 * averages[first][lane]
        + weight1 * averages[first + 1][lane]
        + (weight2 == 0 ? 0 : weight2 * averages[first + 2][lane])
        + (weight3 == 0 ? 0 : weight3 * averages[first + 3][lane]);
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
    double[] row3 = averages[weight3 == 0 ? first : first + 3];
    for (int l = 0; l < lanes; l++) {
      values[l] = weight0 * row0[l] + weight1 * row1[l] + weight2 * row2[l] + weight3 * row3[l];
    }
  }

  /** Whether it looks beyond its cells, into the mirrored half, or at both sides of the middle. */
  public boolean isCentral() {
    return central;
  }

  /** Index of the first cell in the reading. */
  public int firstCell() {
    return first;
  }

  /**
   * The value of a parabola through neighbouring values a, b, c, kept from overshooting them: where
   * they are monotone it stays among them, at a hump it may leave them by their smaller difference.
   */
  public static double limited(double value, double a, double b, double c) {
    double left = b - a;
    double right = c - b;
    double margin = left * right < 0 ? Math.min(Math.abs(left), Math.abs(right)) : 0;
    double low = Math.min(a, Math.min(b, c)) - margin;
    double high = Math.max(a, Math.max(b, c)) + margin;
    return Math.max(low, Math.min(high, value));
  }

  /** Weight of the value at ξ = 1. */
  public double upperWeight() {
    return upperWeight;
  }

  /** Weight of the value at ξ = 0 of a two-sided grid. */
  public double lowerWeight() {
    return lowerWeight;
  }

  private static double middle(Grid grid, int cell) {
    return 0.5 * (grid.face(cell) + grid.face(cell + 1));
  }

  private static double[] scaled(double[] w, double factor) {
    return new double[] {factor * w[0], factor * w[1], factor * w[2], 0};
  }

  private static int nearestCell(Grid grid, double position) {
    int cell = 0;
    while (cell < grid.cells() - 1 && grid.face(cell + 1) <= position) {
      cell++;
    }
    return cell;
  }

  /**
   * Weights w with Σw = 1, Σ w mean(y) = 0, Σ w mean(y²) = 0, so that the constant term of the
   * parabola in y remains.
   */
  private static double[] interiorWeights(Grid grid, double position, int first) {
    double[] w = new double[3];
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
    return w;
  }
}
