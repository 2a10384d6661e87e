package org.roastfield.core.grid;

/**
 * Flow between two neighbouring cells, eqs. (13)-(14): F = G (A₊ − A₋) + below · S₋ + above · S₊,
 * with A the cell averages of φ and S those of its Laplacian.
 *
 * @param conductance G
 * @param below weight of the Laplacian of the cell at smaller ξ
 * @param above weight of the Laplacian of the cell at larger ξ
 */
record Flux(double conductance, double below, double above) {

  /** Nothing flows. */
  static final Flux NONE = new Flux(0, 0, 0);

  /** Between the cells at the other end of a slab that is its own mirror image. */
  Flux mirrored() {
    return new Flux(conductance, -above, -below);
  }

  /** Between flat cells: exact for straight lines. */
  static Flux plain(Grid grid, int f) {
    return new Flux(2 / (grid.width(f) + grid.width(f - 1)), 0, 0);
  }

  /** In a symmetric body: exact for a + b ξ² whatever the widths. */
  static Flux squareExact(Grid grid, int f) {
    double r = grid.face(f);
    double ds = grid.mean(2, f) - grid.mean(2, f - 1);
    return new Flux(Grid.power(r, grid.exponent()) * 2 * r / ds, 0, 0);
  }

  /** In a symmetric body: exact for a + b ξ² + c ξ⁴. */
  static Flux fourthPowerExact(Grid grid, int f) {
    double m = grid.exponent();
    double r = grid.face(f);
    double ds = grid.mean(2, f) - grid.mean(2, f - 1);
    double dq = grid.mean(4, f) - grid.mean(4, f - 1);
    double h = Grid.power(r, m) * (4 * r * r * r - 2 * r * dq / ds) / (4 * (m + 3) * ds);
    return new Flux(squareExact(grid, f).conductance, -h, h);
  }

  /**
   * Exact for a + b ξ + c ξ² in any geometry. The correction stands on the cell nearer to a heated
   * face, where cells are smaller: there it keeps the signs of a monotone scheme when conditions
   * jump.
   */
  static Flux parabolaExact(Grid grid, int f) {
    boolean lowerHalf = grid.isTwoSided() && grid.face(f) < 0.5;
    int outer = lowerHalf ? f - 1 : f;
    double d1 = difference(grid, 1, f);
    double d2 = difference(grid, 2, f);
    double l1 = laplacian(grid, 1, outer);
    double l2 = laplacian(grid, 2, outer);
    double determinant = d1 * l2 - d2 * l1;
    double conductance = (slope(grid, 1, f) * l2 - slope(grid, 2, f) * l1) / determinant;
    double correction = (d1 * slope(grid, 2, f) - d2 * slope(grid, 1, f)) / determinant;
    return lowerHalf ? new Flux(conductance, correction, 0) : new Flux(conductance, 0, correction);
  }

  /** Exact for a + b ξ + c ξ² + d ξ³ in any geometry. */
  static Flux cubicExact(Grid grid, int f) {
    double[][] rows = new double[3][];
    for (int power = 1; power <= 3; power++) {
      rows[power - 1] =
          new double[] {
            difference(grid, power, f),
            laplacian(grid, power, f - 1),
            laplacian(grid, power, f),
            slope(grid, power, f)
          };
    }
    double determinant = determinant(rows, 0, 1, 2);
    return new Flux(
        determinant(rows, 3, 1, 2) / determinant,
        determinant(rows, 0, 3, 2) / determinant,
        determinant(rows, 0, 1, 3) / determinant);
  }

  private static double determinant(double[][] r, int a, int b, int c) {
    return r[0][a] * (r[1][b] * r[2][c] - r[1][c] * r[2][b])
        - r[0][b] * (r[1][a] * r[2][c] - r[1][c] * r[2][a])
        + r[0][c] * (r[1][a] * r[2][b] - r[1][b] * r[2][a]);
  }

  /** Difference of the averages of ξ^power between the cells at face f. */
  private static double difference(Grid grid, int power, int f) {
    return grid.mean(power, f) - grid.mean(power, f - 1);
  }

  /** Average of the Laplacian of ξ^power, p (p − 1 + m) ξ^(p − 2). */
  private static double laplacian(Grid grid, int power, int cell) {
    double factor = power * (power - 1 + grid.exponent());
    return factor == 0 ? 0 : factor * grid.mean(power - 2, cell);
  }

  /** Area times the slope of ξ^power at face f. */
  private static double slope(Grid grid, int power, int f) {
    return power * Grid.power(grid.face(f), grid.exponent() + power - 1);
  }
}
