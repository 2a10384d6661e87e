package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * The tridiagonal system of one implicit stage and its factors, eq. (17): A = M diag(C) + λ 𝓛
 * diag(K).
 *
 * <p>Symbols: M mass matrix of the compact fluxes, 𝓛 minus the discrete Laplacian with the faces'
 * closures, λ = γ h α₀/ℓ², C = du/dT, K = dφ/dT. A·T = right-hand side + λ Σ w_face K_face T_face
 * e_face. Kept beside the factors: the responses v of the cells to each face value.
 */
final class ConductionMatrix {

  private final Grid grid;
  private final int n;
  private final double[] massLower;
  private final double[] massDiagonal;
  private final double[] massUpper;
  private final double[] conductance;
  private final double[] lower;
  private final double[] inverse;
  private final double[] upper;

  /** Response of the cells to φ of the upper face [cells]. */
  final double[] upperResponse;

  /** Response of the cells to φ of the lower face [cells]; empty for a one-sided grid. */
  final double[] lowerResponse;

  ConductionMatrix(Grid grid) {
    this.grid = grid;
    this.n = grid.cells();
    massLower = new double[n];
    massDiagonal = new double[n];
    massUpper = new double[n];
    conductance = new double[n + 1];
    for (int i = 0; i < n; i++) {
      double inner = grid.correction(i);
      double outer = grid.correction(i + 1);
      massLower[i] = -inner;
      massUpper[i] = -outer;
      massDiagonal[i] = grid.volume(i) + inner + outer;
      conductance[i] = grid.conductance(i);
    }
    lower = new double[n];
    inverse = new double[n];
    upper = new double[n];
    upperResponse = new double[n];
    lowerResponse = grid.isTwoSided() ? new double[n] : new double[0];
  }

  /**
   * Assembles and factors A, and finds the responses.
   *
   * @param lambda λ, at least 0
   * @param capacity C of each cell [cells], not modified
   * @param conductivity K of each cell [cells], not modified
   */
  void factor(double lambda, double[] capacity, double[] conductivity) {
    FaceClosure top = grid.upper();
    FaceClosure bottom = grid.lower();
    double pivot = 1;
    double above = 0;
    for (int i = 0; i < n; i++) {
      double gInner = lambda * conductance[i];
      double gOuter = lambda * conductance[i + 1];
      double sub = i == 0 ? 0 : massLower[i] * capacity[i - 1] - gInner * conductivity[i - 1];
      double diagonal = massDiagonal[i] * capacity[i] + (gInner + gOuter) * conductivity[i];
      double sup = i == n - 1 ? 0 : massUpper[i] * capacity[i + 1] - gOuter * conductivity[i + 1];
      if (i == n - 1) {
        diagonal -= lambda * top.near() * conductivity[i];
        sub -= lambda * top.next() * conductivity[i - 1];
      }
      if (i == 0 && lowerResponse.length > 0) {
        diagonal -= lambda * bottom.near() * conductivity[0];
        sup -= lambda * bottom.next() * conductivity[1];
      }
      double multiplier = sub * pivot;
      pivot = 1 / (diagonal - multiplier * above);
      lower[i] = multiplier;
      inverse[i] = pivot;
      upper[i] = sup * pivot;
      above = sup;
    }
    respond(lambda);
  }

  private void respond(double lambda) {
    upperResponse[n - 1] = lambda * grid.upper().face() * inverse[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      upperResponse[i] = -upper[i] * upperResponse[i + 1];
    }
    if (lowerResponse.length > 0) {
      java.util.Arrays.fill(lowerResponse, 0);
      lowerResponse[0] = lambda * grid.lower().face();
      solve(lowerResponse);
    }
  }

  /** Solves A x = r in place. */
  void solve(double[] r) {
    double carried = r[0];
    for (int i = 1; i < n; i++) {
      carried = r[i] - lower[i] * carried;
      r[i] = carried;
    }
    double x = carried * inverse[n - 1];
    r[n - 1] = x;
    for (int i = n - 2; i >= 0; i--) {
      x = r[i] * inverse[i] - upper[i] * x;
      r[i] = x;
    }
  }

  /** result += factor · M x. */
  void addMass(double factor, double[] x, double[] result) {
    double before = 0;
    for (int i = 0; i < n; i++) {
      double after = i < n - 1 ? massUpper[i] * x[i + 1] : 0;
      result[i] += factor * (massLower[i] * before + massDiagonal[i] * x[i] + after);
      before = x[i];
    }
  }

  /** result += λ · (Laplacian of φ between cells, without the faces). */
  void addInterior(double lambda, double[] phi, double[] result) {
    double inner = 0;
    for (int i = 0; i < n - 1; i++) {
      double flux = lambda * conductance[i + 1] * (phi[i + 1] - phi[i]);
      result[i] += flux - inner;
      inner = flux;
    }
    result[n - 1] -= inner;
  }
}
