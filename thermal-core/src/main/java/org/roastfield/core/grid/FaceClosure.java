package org.roastfield.core.grid;

/**
 * Inward heat flow at a heated face, eq. (15): f = face · A_s + near · A₁ + next · A₂, from the
 * value at the face and the averages of the two cells next to it. Exact for parabolas; the weights
 * sum to zero.
 *
 * @param cell index of the cell at the face
 * @param nextCell index of the cell behind it
 * @param face weight of the face value, greater than 0
 * @param near weight of the average at the face
 * @param next weight of the average behind it
 */
public record FaceClosure(int cell, int nextCell, double face, double near, double next) {

  static FaceClosure upper(Grid grid) {
    return of(grid, grid.cells() - 1, grid.cells() - 2, 1, 1);
  }

  /** The same at the other end of a body of so many cells that is its own mirror image. */
  FaceClosure mirrored(int cells) {
    return new FaceClosure(cells - 1 - cell, cells - 1 - nextCell, face, near, next);
  }

  static FaceClosure lower(Grid grid) {
    return of(grid, 0, 1, 0, -1);
  }

  /**
   * Parabola a + b y + c y², y = ξ − origin, through the face value a and both averages; inward
   * flow is {@code outward} · b.
   */
  private static FaceClosure of(Grid grid, int cell, int nextCell, double origin, int outward) {
    double y1 = grid.centredMean(origin, 1, cell);
    double z1 = grid.centredMean(origin, 2, cell);
    double y2 = grid.centredMean(origin, 1, nextCell);
    double z2 = grid.centredMean(origin, 2, nextCell);
    double determinant = y1 * z2 - y2 * z1;
    double near = outward * z2 / determinant;
    double next = -outward * z1 / determinant;
    return new FaceClosure(cell, nextCell, -(near + next), near, next);
  }
}
