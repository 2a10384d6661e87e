package org.roastfield.core.integration;

/**
 * Kernels over lanes, or over the cells of one cook: element l of every row belongs to lane l and
 * meets only elements l of other rows, so a lane's numbers do not depend on its neighbours.
 *
 * <p>Each loop is short and runs over distinct arrays, so that the just-in-time compiler makes
 * vector instructions of it; no method here has a second loop.
 */
final class Rows {

  private Rows() {}

  /** z0 = γ h u̇. */
  static void scaled(int lanes, double[] gammaStep, double[] rate, double[] z0) {
    for (int l = 0; l < lanes; l++) {
      z0[l] = gammaStep[l] * rate[l];
    }
  }

  static void sum(int lanes, double[] base, double[] u, double w0, double[] z0) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + w0 * z0[l];
    }
  }

  static void sum(
      int lanes, double[] base, double[] u, double w0, double[] z0, double w1, double[] z1) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + (w0 * z0[l] + w1 * z1[l]);
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + (w0 * z0[l] + w1 * z1[l] + w2 * z2[l]);
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2,
      double w3,
      double[] z3) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + ((w0 * z0[l] + w1 * z1[l]) + (w2 * z2[l] + w3 * z3[l]));
    }
  }

  static void sum(
      int lanes,
      double[] base,
      double[] u,
      double w0,
      double[] z0,
      double w1,
      double[] z1,
      double w2,
      double[] z2,
      double w3,
      double[] z3,
      double w4,
      double[] z4) {
    for (int l = 0; l < lanes; l++) {
      base[l] = u[l] + ((w0 * z0[l] + w1 * z1[l]) + (w2 * z2[l] + w3 * z3[l]) + w4 * z4[l]);
    }
  }

  /** First cell of the factors: no neighbour below. */
  static void factorFirst(
      int lanes,
      double[] lambda,
      double massDiagonal,
      double massAbove,
      double g,
      double[] inverse,
      double[] carry) {
    for (int l = 0; l < lanes; l++) {
      double pivot = 1 / (massDiagonal + lambda[l] * g);
      inverse[l] = pivot;
      carry[l] = (massAbove - lambda[l] * g) * pivot;
    }
  }

  /**
   * A cell of the factors.
   *
   * @param diagonal factor of λ in the diagonal
   * @param below factor of λ in the entry below, negative
   * @param above factor of λ in the entry above, negative
   */
  static void factor(
      int lanes,
      double[] lambda,
      double massDiagonal,
      double diagonal,
      double massBelow,
      double below,
      double massAbove,
      double above,
      double[] inverseBefore,
      double[] carryBefore,
      double[] multiplier,
      double[] inverse,
      double[] carry) {
    for (int l = 0; l < lanes; l++) {
      double x = lambda[l];
      double entry = massBelow + x * below;
      double pivot = 1 / (massDiagonal + x * diagonal - entry * carryBefore[l]);
      multiplier[l] = entry * inverseBefore[l];
      inverse[l] = pivot;
      carry[l] = (massAbove + x * above) * pivot;
    }
  }

  /** Elimination of the first cell: flux to the next. */
  static void eliminateFirst(
      int lanes,
      double[] lambda,
      double g,
      double[] here,
      double[] next,
      double[] flux,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      double f = lambda[l] * g * (next[l] - here[l]);
      flux[l] = f;
      r[l] = f;
    }
  }

  /** Elimination of an inner cell: flux in, flux out, and the cell before. */
  static void eliminate(
      int lanes,
      double[] lambda,
      double g,
      double[] here,
      double[] next,
      double[] flux,
      double[] multiplier,
      double[] before,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      double f = lambda[l] * g * (next[l] - here[l]);
      r[l] = f - flux[l] - multiplier[l] * before[l];
      flux[l] = f;
    }
  }

  /** Elimination of the cell at the face: the flow that the closure's second cell drives. */
  static void eliminateLast(
      int lanes,
      double[] lambda,
      double closureNext,
      double[] here,
      double[] inner,
      double[] flux,
      double[] multiplier,
      double[] before,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      double top = lambda[l] * closureNext * (inner[l] - here[l]);
      r[l] = top - flux[l] - multiplier[l] * before[l];
    }
  }

  /** x = r/pivot − carry x₊. */
  static void substitute(int lanes, double[] inverse, double[] carry, double[] after, double[] x) {
    for (int l = 0; l < lanes; l++) {
      x[l] = x[l] * inverse[l] - carry[l] * after[l];
    }
  }

  /** Responses of the last two cells to the face, and the gain of the flow. */
  static void gain(
      int lanes,
      double[] lambda,
      double face,
      double near,
      double next,
      double[] inverse,
      double[] carryBefore,
      double[] response,
      double[] gain) {
    for (int l = 0; l < lanes; l++) {
      double last = lambda[l] * face * inverse[l];
      response[l] = last;
      gain[l] = face + near * last - next * carryBefore[l] * last;
    }
  }

  /**
   * Flow at the face without the face's own part, and the last cell's x.
   *
   * @param last r of the last cell, overwritten with its x
   * @param lastButOne r of the cell before, not modified
   */
  static void offset(
      int lanes,
      double near,
      double next,
      double[] here,
      double[] inner,
      double[] inverse,
      double[] inverseBefore,
      double[] carryBefore,
      double[] lastButOne,
      double[] last,
      double[] offset) {
    for (int l = 0; l < lanes; l++) {
      double x = last[l] * inverse[l];
      double y = lastButOne[l] * inverseBefore[l] - carryBefore[l] * x;
      last[l] = x;
      offset[l] = next * (inner[l] - here[l]) + (near * x + next * y);
    }
  }

  /** One Newton correction of the face temperature. */
  static void correct(
      int lanes,
      double[] kappa,
      double[] heatFlux,
      double[] slope,
      double[] offset,
      double[] gain,
      double[] here,
      double[] face,
      double[] correction) {
    for (int l = 0; l < lanes; l++) {
      double excess = kappa[l] * heatFlux[l] - (offset[l] + gain[l] * (face[l] - here[l]));
      double change = -excess / (kappa[l] * slope[l] - gain[l]);
      correction[l] = change;
      face[l] += change;
    }
  }

  /** Flow from the face temperature, and the last cell's response. */
  static void close(
      int lanes,
      double[] offset,
      double[] gain,
      double[] response,
      double[] here,
      double[] face,
      double[] flow,
      double[] last) {
    for (int l = 0; l < lanes; l++) {
      double difference = face[l] - here[l];
      flow[l] = offset[l] + gain[l] * difference;
      last[l] += response[l] * difference;
    }
  }

  /** total += weight · row. */
  static void add(int lanes, double weight, double[] row, double[] total) {
    for (int l = 0; l < lanes; l++) {
      total[l] += weight * row[l];
    }
  }

  /** total += a · b. */
  static void addProduct(int lanes, double[] a, double[] b, double[] total) {
    for (int l = 0; l < lanes; l++) {
      total[l] += a[l] * b[l];
    }
  }

  /** time = start + c · h. */
  static void stageTime(int lanes, double c, double[] start, double[] step, double[] time) {
    for (int l = 0; l < lanes; l++) {
      time[l] = start[l] + c * step[l];
    }
  }

  /** sum += volume · (error of the cell)². */
  static void error(
      int lanes,
      double volume,
      double[] w,
      double[] z0,
      double[] z2,
      double[] z3,
      double[] z4,
      double[] z5,
      double[] sum) {
    double w0 = w[0];
    double w2 = w[2];
    double w3 = w[3];
    double w4 = w[4];
    double w5 = w[5];
    for (int l = 0; l < lanes; l++) {
      double e = (w0 * z0[l] + w2 * z2[l]) + (w3 * z3[l] + w4 * z4[l] + w5 * z5[l]);
      sum[l] += volume * e * e;
    }
  }

  /** Root mean square from the sum, in place, and the growth of the step that follows from it. */
  static void norm(int lanes, double volume, double tolerance, double[] error, double[] growth) {
    for (int l = 0; l < lanes; l++) {
      double e = Math.sqrt(error[l] / volume) / Esdirk4.GAMMA;
      error[l] = e;
      growth[l] = StepControl.growth(e, tolerance);
    }
  }

  /** State at the end of the step. */
  static void finish(
      int lanes,
      double[] base,
      double[] z,
      double[] inverseGammaStep,
      double[] value,
      double[] rate) {
    for (int l = 0; l < lanes; l++) {
      value[l] = base[l] + z[l];
      rate[l] = z[l] * inverseGammaStep[l];
    }
  }
}
