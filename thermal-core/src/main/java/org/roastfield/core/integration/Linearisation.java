package org.roastfield.core.integration;

/**
 * What linearising u and φ about an iterate T̂ leaves in a stage whose properties depend on
 * temperature; scratch memory of one integration.
 *
 * <p>The linear system takes the slopes C and K of the start of the step. How far u and φ at T̂
 * have bent from their tangents there says how far a change X from T̂ bends them further, without
 * another evaluation.
 */
final class Linearisation {

  /** Share of the accuracy that may be left in a cell. */
  private static final double SHARE = 0.3;

  /** Largest last change of a cell, so that no bend of a property is jumped [K]. */
  private static final double LARGEST_LAST_CHANGE = 2;

  private final int n;
  private final double tolerance;
  private final double[] startPhi;
  private final double[] bend;

  Linearisation(int cells, double accuracy) {
    n = cells;
    tolerance = SHARE * accuracy;
    startPhi = new double[n];
    bend = new double[n];
  }

  /** Takes φ at the start of a step. */
  void begin(ScaledMaterial material, State from) {
    material.kirchhoffs(from.temperature, startPhi);
  }

  /**
   * Whether what is left is small in every cell.
   *
   * @param from start of the step
   * @param iterate T̂ [cells] [K]
   * @param excess u(T̂) − B [cells] [K]
   * @param base B [cells] [K]
   * @param capacity C [cells]
   * @param phi φ(T̂) [cells] [K]
   * @param conductivity K [cells]
   * @param x X [cells] [K]
   */
  boolean settles(
      State from,
      double[] iterate,
      double[] excess,
      double[] base,
      double[] capacity,
      double[] phi,
      double[] conductivity,
      double[] x) {
    double[] start = from.temperature;
    bend(n, iterate, start, excess, base, from.enthalpy, capacity, bend);
    addBend(n, iterate, start, phi, startPhi, conductivity, bend);
    left(n, x, iterate, start, bend);
    boolean settled = true;
    for (int i = 0; i < n; i++) {
      settled &= bend[i] <= tolerance && Math.abs(x[i]) <= LARGEST_LAST_CHANGE;
    }
    return settled;
  }

  /** total −= row. */
  static void subtract(int lanes, double[] row, double[] total) {
    for (int l = 0; l < lanes; l++) {
      total[l] -= row[l];
    }
  }

  /** Z = u(T̂) − B + C X, in place of X. */
  static void increment(int lanes, double[] excess, double[] capacity, double[] x) {
    for (int l = 0; l < lanes; l++) {
      x[l] = excess[l] + capacity[l] * x[l];
    }
  }

  /** How far u at T̂ is from its tangent at the start of the step. */
  private static void bend(
      int lanes,
      double[] iterate,
      double[] start,
      double[] excess,
      double[] base,
      double[] startEnthalpy,
      double[] capacity,
      double[] bend) {
    for (int l = 0; l < lanes; l++) {
      double u = excess[l] + base[l] - startEnthalpy[l];
      bend[l] = Math.abs(u - capacity[l] * (iterate[l] - start[l]));
    }
  }

  /** Adds the same of φ. */
  private static void addBend(
      int lanes,
      double[] iterate,
      double[] start,
      double[] phi,
      double[] startPhi,
      double[] conductivity,
      double[] bend) {
    for (int l = 0; l < lanes; l++) {
      double change = iterate[l] - start[l];
      bend[l] += Math.abs(phi[l] - startPhi[l] - conductivity[l] * change);
    }
  }

  /**
   * What a change X from T̂ leaves of a curve that has bent so far from its tangent at the start: a
   * parabola's tangent at the start leaves bend (2|X|/|ΔT| + X²/ΔT²).
   */
  private static void left(int lanes, double[] x, double[] iterate, double[] start, double[] bend) {
    for (int l = 0; l < lanes; l++) {
      double way = Math.abs(iterate[l] - start[l]);
      double change = Math.abs(x[l]);
      bend[l] *= change * (2 * way + change) / (way * way + 1e-6);
    }
  }
}
