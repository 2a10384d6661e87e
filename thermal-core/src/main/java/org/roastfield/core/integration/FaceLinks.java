package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * How the cells at the faces and the balance of the faces depend on each other. Scratch memory of
 * one integration.
 */
final class FaceLinks {

  private final FaceClosure[] closures;
  private final double[] conductivity;
  private final ConductionMatrix matrix;
  private final FaceBalance balance;
  private final FaceLaws laws;

  /**
   * @param conductivity K of each cell, kept and read [cells]
   */
  FaceLinks(
      Grid grid,
      double[] conductivity,
      ConductionMatrix matrix,
      FaceBalance balance,
      FaceLaws laws) {
    this.closures =
        grid.isTwoSided()
            ? new FaceClosure[] {grid.upper(), grid.lower()}
            : new FaceClosure[] {grid.upper()};
    this.conductivity = conductivity;
    this.matrix = matrix;
    this.balance = balance;
    this.laws = laws;
  }

  /**
   * Flow through a face if φ there were that of the cell at it, which becomes the origin of the
   * face's φ.
   */
  double flow(int face, double[] phi) {
    FaceClosure closure = closures[face];
    double near = phi[closure.cell()];
    balance.origin[face] = near;
    return closure.next() * (phi[closure.nextCell()] - near);
  }

  /** Flow that temperature changes x of the two cells at a face drive. */
  double response(int face, double[] x) {
    FaceClosure closure = closures[face];
    int a = closure.cell();
    int b = closure.nextCell();
    return closure.near() * conductivity[a] * x[a] + closure.next() * conductivity[b] * x[b];
  }

  /** Changes of the flows with φ of the faces, with cells that respond or stay. */
  void gains(boolean responding) {
    for (int a = 0; a < closures.length; a++) {
      for (int b = 0; b < closures.length; b++) {
        double[] x = b == State.UPPER ? matrix.upperResponse : matrix.lowerResponse;
        double direct = a == b ? closures[a].face() : 0;
        balance.gain[a][b] = direct + (responding ? response(a, x) : 0);
      }
    }
  }

  /** Changes of the flows with boiling below the faces, whose responses must be known. */
  void sinkGains(FaceStages carried, boolean responding) {
    for (int a = 0; a < closures.length; a++) {
      for (int b = 0; b < closures.length; b++) {
        boolean boils = responding && carried.boilsInside(b);
        laws.sinkGain[a][b] = boils ? response(a, carried.near(b).sink) : 0;
      }
    }
  }
}
