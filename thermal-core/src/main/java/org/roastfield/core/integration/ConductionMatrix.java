package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * The tridiagonal system of one implicit stage and its factors, eq. (17): A = M diag(C) + λ 𝓛
 * diag(K).
 *
 * <p>Symbols: M mass matrix of the compact fluxes, 𝓛 minus the discrete Laplacian with the faces'
 * closures, λ = γ h α₀/ℓ², C = du/dT, K = dφ/dT.
 *
 * <p>Elimination runs from both ends to the middle cell and substitution back outwards: two chains
 * of dependent operations side by side instead of one of twice the length, which is what a single
 * cook waits for.
 */
final class ConductionMatrix {

  private final Grid grid;
  private final int n;
  private final int middle;
  private final double[] massDiagonal;
  private final double[] massBelow;
  private final double[] massAbove;
  private final double[] conductance;

  /** λ G of each face [cells + 1]. */
  private final double[] scaledConductance;

  /** Multiplier of the eliminated neighbour, on the outer side of each cell [cells]. */
  private final double[] multiplier;

  /** Reciprocal pivots [cells]. */
  private final double[] inverse;

  /** Weight of the neighbour on the inner side in the substitution [cells]. */
  private final double[] carry;

  private double middleBelow;
  private double middleAbove;

  /** Response of the cells to φ of the upper face [cells]. */
  final double[] upperResponse;

  /** Response of the cells to φ of the lower face [cells]; empty for a one-sided grid. */
  final double[] lowerResponse;

  ConductionMatrix(Grid grid) {
    this.grid = grid;
    this.n = grid.cells();
    this.middle = n / 2;
    MassMatrix mass = new MassMatrix(grid);
    massDiagonal = mass.diagonal;
    massBelow = mass.below;
    massAbove = mass.above;
    conductance = new double[n + 1];
    for (int f = 0; f < n; f++) {
      conductance[f] = grid.conductance(f);
    }
    scaledConductance = new double[n + 1];
    multiplier = new double[n];
    inverse = new double[n];
    carry = new double[n];
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
    for (int f = 1; f < n; f++) {
      scaledConductance[f] = lambda * conductance[f];
    }
    FaceClosure top = grid.upper();
    FaceClosure bottom = grid.lower();
    double bottomNear = grid.isTwoSided() ? lambda * bottom.near() * conductivity[0] : 0;
    double bottomNext = grid.isTwoSided() ? lambda * bottom.next() * conductivity[1] : 0;
    double topNear = lambda * top.near() * conductivity[n - 1];
    double topNext = lambda * top.next() * conductivity[n - 2];

    double leftPivot = 1 / (diagonal(0, capacity, conductivity) - bottomNear);
    double leftSuper = above(0, capacity, conductivity) - bottomNext;
    double rightPivot = 1 / (diagonal(n - 1, capacity, conductivity) - topNear);
    double rightSub = below(n - 1, capacity, conductivity) - topNext;
    keep(0, 0, leftPivot, leftSuper);
    keep(n - 1, 0, rightPivot, rightSub);
    for (int i = 1, j = n - 2; i < middle; i++, j--) {
      double leftMultiplier = below(i, capacity, conductivity) * leftPivot;
      leftPivot = 1 / Math.fma(-leftMultiplier, leftSuper, diagonal(i, capacity, conductivity));
      leftSuper = above(i, capacity, conductivity);
      keep(i, leftMultiplier, leftPivot, leftSuper);
      if (j > middle) {
        double rightMultiplier = above(j, capacity, conductivity) * rightPivot;
        rightPivot = 1 / Math.fma(-rightMultiplier, rightSub, diagonal(j, capacity, conductivity));
        rightSub = below(j, capacity, conductivity);
        keep(j, rightMultiplier, rightPivot, rightSub);
      }
    }
    middleBelow = below(middle, capacity, conductivity) * leftPivot;
    middleAbove = above(middle, capacity, conductivity) * rightPivot;
    inverse[middle] =
        1
            / (diagonal(middle, capacity, conductivity)
                - middleBelow * leftSuper
                - middleAbove * rightSub);
    respond(lambda);
  }

  private double diagonal(int i, double[] capacity, double[] conductivity) {
    return massDiagonal[i] * capacity[i]
        + (scaledConductance[i] + scaledConductance[i + 1]) * conductivity[i];
  }

  private double below(int i, double[] capacity, double[] conductivity) {
    return massBelow[i] * capacity[i - 1] - scaledConductance[i] * conductivity[i - 1];
  }

  private double above(int i, double[] capacity, double[] conductivity) {
    return massAbove[i] * capacity[i + 1] - scaledConductance[i + 1] * conductivity[i + 1];
  }

  private void keep(int i, double outerMultiplier, double pivot, double inner) {
    multiplier[i] = outerMultiplier;
    inverse[i] = pivot;
    carry[i] = inner * pivot;
  }

  private void respond(double lambda) {
    java.util.Arrays.fill(upperResponse, 0);
    upperResponse[n - 1] = lambda * grid.upper().face();
    solve(upperResponse);
    if (lowerResponse.length > 0) {
      java.util.Arrays.fill(lowerResponse, 0);
      lowerResponse[0] = lambda * grid.lower().face();
      solve(lowerResponse);
    }
  }

  /** Solves A x = r in place. */
  void solve(double[] r) {
    double left = r[0];
    double right = r[n - 1];
    for (int i = 1, j = n - 2; i < middle; i++, j--) {
      left = Math.fma(-multiplier[i], left, r[i]);
      r[i] = left;
      if (j > middle) {
        right = Math.fma(-multiplier[j], right, r[j]);
        r[j] = right;
      }
    }
    substitute(r[middle] - middleBelow * left - middleAbove * right, r);
  }

  /**
   * Solves A x = λ · (Laplacian of φ without the faces) + top and bottom in the outer cells, in one
   * pass.
   *
   * @param phi φ of each cell [cells], not modified
   * @param top added to the last cell
   * @param bottom added to the first cell
   * @param x overwritten [cells]
   */
  void solveFlows(double[] phi, double top, double bottom, double[] x) {
    double leftFlux = scaledConductance[1] * (phi[1] - phi[0]);
    double rightFlux = scaledConductance[n - 1] * (phi[n - 1] - phi[n - 2]);
    double left = leftFlux + bottom;
    double right = top - rightFlux;
    x[0] = left;
    x[n - 1] = right;
    for (int i = 1, j = n - 2; i < middle; i++, j--) {
      double flux = scaledConductance[i + 1] * (phi[i + 1] - phi[i]);
      left = Math.fma(-multiplier[i], left, flux - leftFlux);
      leftFlux = flux;
      x[i] = left;
      if (j > middle) {
        flux = scaledConductance[j] * (phi[j] - phi[j - 1]);
        right = Math.fma(-multiplier[j], right, rightFlux - flux);
        rightFlux = flux;
        x[j] = right;
      }
    }
    substitute(rightFlux - leftFlux - middleBelow * left - middleAbove * right, x);
  }

  /**
   * Solves A x = λ · (Laplacian of φ without the faces) + top and bottom in the outer cells − M
   * excess, in one pass.
   *
   * @param phi φ of each cell [cells], not modified
   * @param excess [cells], not modified
   * @param top added to the last cell
   * @param bottom added to the first cell
   * @param x overwritten [cells]
   */
  void solveFlows(double[] phi, double[] excess, double top, double bottom, double[] x) {
    double leftFlux = scaledConductance[1] * (phi[1] - phi[0]);
    double rightFlux = scaledConductance[n - 1] * (phi[n - 1] - phi[n - 2]);
    double left = leftFlux + bottom - (massDiagonal[0] * excess[0] + massAbove[0] * excess[1]);
    double right =
        top - rightFlux - (massBelow[n - 1] * excess[n - 2] + massDiagonal[n - 1] * excess[n - 1]);
    x[0] = left;
    x[n - 1] = right;
    for (int i = 1, j = n - 2; i < middle; i++, j--) {
      double flux = scaledConductance[i + 1] * (phi[i + 1] - phi[i]);
      left = Math.fma(-multiplier[i], left, flux - leftFlux - mass(excess, i));
      leftFlux = flux;
      x[i] = left;
      if (j > middle) {
        flux = scaledConductance[j] * (phi[j] - phi[j - 1]);
        right = Math.fma(-multiplier[j], right, rightFlux - flux - mass(excess, j));
        rightFlux = flux;
        x[j] = right;
      }
    }
    double middleRight = rightFlux - leftFlux - mass(excess, middle);
    substitute(middleRight - middleBelow * left - middleAbove * right, x);
  }

  private double mass(double[] x, int i) {
    return massBelow[i] * x[i - 1] + massDiagonal[i] * x[i] + massAbove[i] * x[i + 1];
  }

  /**
   * {@link #solveFlows} for three right-hand sides at once: what the cells have in common is read
   * once.
   */
  void solveFlowsOfThree(
      double[] phi0,
      double top0,
      double bottom0,
      double[] x0,
      double[] phi1,
      double top1,
      double bottom1,
      double[] x1,
      double[] phi2,
      double top2,
      double bottom2,
      double[] x2) {
    double conducting = scaledConductance[1];
    double flux0 = conducting * (phi0[1] - phi0[0]);
    double flux1 = conducting * (phi1[1] - phi1[0]);
    double flux2 = conducting * (phi2[1] - phi2[0]);
    double chain0 = flux0 + bottom0;
    double chain1 = flux1 + bottom1;
    double chain2 = flux2 + bottom2;
    x0[0] = chain0;
    x1[0] = chain1;
    x2[0] = chain2;
    for (int i = 1; i < middle; i++) {
      conducting = scaledConductance[i + 1];
      double factor = -multiplier[i];
      double next0 = conducting * (phi0[i + 1] - phi0[i]);
      double next1 = conducting * (phi1[i + 1] - phi1[i]);
      double next2 = conducting * (phi2[i + 1] - phi2[i]);
      chain0 = Math.fma(factor, chain0, next0 - flux0);
      chain1 = Math.fma(factor, chain1, next1 - flux1);
      chain2 = Math.fma(factor, chain2, next2 - flux2);
      flux0 = next0;
      flux1 = next1;
      flux2 = next2;
      x0[i] = chain0;
      x1[i] = chain1;
      x2[i] = chain2;
    }
    x0[middle] = -flux0 - middleBelow * chain0;
    x1[middle] = -flux1 - middleBelow * chain1;
    x2[middle] = -flux2 - middleBelow * chain2;
    conducting = scaledConductance[n - 1];
    flux0 = conducting * (phi0[n - 1] - phi0[n - 2]);
    flux1 = conducting * (phi1[n - 1] - phi1[n - 2]);
    flux2 = conducting * (phi2[n - 1] - phi2[n - 2]);
    chain0 = top0 - flux0;
    chain1 = top1 - flux1;
    chain2 = top2 - flux2;
    x0[n - 1] = chain0;
    x1[n - 1] = chain1;
    x2[n - 1] = chain2;
    for (int j = n - 2; j > middle; j--) {
      conducting = scaledConductance[j];
      double factor = -multiplier[j];
      double next0 = conducting * (phi0[j] - phi0[j - 1]);
      double next1 = conducting * (phi1[j] - phi1[j - 1]);
      double next2 = conducting * (phi2[j] - phi2[j - 1]);
      chain0 = Math.fma(factor, chain0, flux0 - next0);
      chain1 = Math.fma(factor, chain1, flux1 - next1);
      chain2 = Math.fma(factor, chain2, flux2 - next2);
      flux0 = next0;
      flux1 = next1;
      flux2 = next2;
      x0[j] = chain0;
      x1[j] = chain1;
      x2[j] = chain2;
    }
    x0[middle] += flux0 - middleAbove * chain0;
    x1[middle] += flux1 - middleAbove * chain1;
    x2[middle] += flux2 - middleAbove * chain2;
    substituteThree(x0, x1, x2);
  }

  private void substituteThree(double[] x0, double[] x1, double[] x2) {
    double pivot = inverse[middle];
    double chain0 = x0[middle] * pivot;
    double chain1 = x1[middle] * pivot;
    double chain2 = x2[middle] * pivot;
    x0[middle] = chain0;
    x1[middle] = chain1;
    x2[middle] = chain2;
    for (int i = middle - 1; i >= 0; i--) {
      double factor = -carry[i];
      pivot = inverse[i];
      chain0 = Math.fma(factor, chain0, x0[i] * pivot);
      chain1 = Math.fma(factor, chain1, x1[i] * pivot);
      chain2 = Math.fma(factor, chain2, x2[i] * pivot);
      x0[i] = chain0;
      x1[i] = chain1;
      x2[i] = chain2;
    }
    chain0 = x0[middle];
    chain1 = x1[middle];
    chain2 = x2[middle];
    for (int j = middle + 1; j < n; j++) {
      double factor = -carry[j];
      pivot = inverse[j];
      chain0 = Math.fma(factor, chain0, x0[j] * pivot);
      chain1 = Math.fma(factor, chain1, x1[j] * pivot);
      chain2 = Math.fma(factor, chain2, x2[j] * pivot);
      x0[j] = chain0;
      x1[j] = chain1;
      x2[j] = chain2;
    }
  }

  private void substitute(double middleRight, double[] x) {
    double left = middleRight * inverse[middle];
    double right = left;
    x[middle] = left;
    for (int i = middle - 1, j = middle + 1; i >= 0; i--, j++) {
      left = Math.fma(-carry[i], left, x[i] * inverse[i]);
      x[i] = left;
      if (j < n) {
        right = Math.fma(-carry[j], right, x[j] * inverse[j]);
        x[j] = right;
      }
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

  /** M⁻¹ e: how a change of the flow at the face changes the cells' rates at once. */
  static double[] faceRates(Grid grid) {
    double[] ones = new double[grid.cells()];
    java.util.Arrays.fill(ones, 1);
    ConductionMatrix matrix = new ConductionMatrix(grid);
    matrix.factor(0, ones, ones);
    double[] rates = new double[grid.cells()];
    rates[grid.upper().cell()] = 1;
    matrix.solve(rates);
    return rates;
  }
}
