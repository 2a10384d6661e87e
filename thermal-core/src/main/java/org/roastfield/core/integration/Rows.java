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
      double[] carryBefore,
      double[] inverse,
      double[] carry) {
    for (int l = 0; l < lanes; l++) {
      double x = lambda[l];
      double pivot = 1 / (massDiagonal + x * diagonal - (massBelow + x * below) * carryBefore[l]);
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
      double[] inverse,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      r[l] = lambda[l] * (g * (next[l] - here[l])) * inverse[l];
    }
  }

  /**
   * Elimination of an inner cell: flux in, flux out, and the cell before.
   *
   * @param before r of the cell before
   * @param r overwritten with the right-hand side over the pivot
   */
  static void eliminate(
      int lanes,
      double[] lambda,
      double gBelow,
      double gAbove,
      double massBelow,
      double[] below,
      double[] here,
      double[] above,
      double[] before,
      double[] inverse,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      double b = here[l];
      double y = before[l];
      double balance = gAbove * (above[l] - b) - gBelow * (b - below[l] - y);
      r[l] = (lambda[l] * balance - massBelow * y) * inverse[l];
    }
  }

  /** Elimination of the cell at the face: the flow that the closure's second cell drives. */
  static void eliminateLast(
      int lanes,
      double[] lambda,
      double gBelow,
      double closureNext,
      double massBelow,
      double[] below,
      double[] here,
      double[] before,
      double[] inverse,
      double[] r) {
    for (int l = 0; l < lanes; l++) {
      double y = before[l];
      double difference = here[l] - below[l] - y;
      double balance = -closureNext * difference - gBelow * difference;
      r[l] = (lambda[l] * balance - massBelow * y) * inverse[l];
    }
  }

  /** x = r − carry x₊. */
  static void substitute(int lanes, double[] carry, double[] after, double[] x) {
    for (int l = 0; l < lanes; l++) {
      x[l] -= carry[l] * after[l];
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

  /** Flow at the face that differences of the bases drive. */
  static void baseOffset(int lanes, double next, double[] here, double[] inner, double[] offset) {
    for (int l = 0; l < lanes; l++) {
      offset[l] = next * (inner[l] - here[l]);
    }
  }

  /** Adds the flow at the face that the last cells' x drive, still without the face's own part. */
  static void addOffset(
      int lanes,
      double near,
      double next,
      double[] carryBefore,
      double[] lastButOne,
      double[] last,
      double[] offset) {
    for (int l = 0; l < lanes; l++) {
      double x = last[l];
      offset[l] += near * x + next * (lastButOne[l] - carryBefore[l] * x);
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

  /**
   * Lists the lanes whose last correction is too large, or no number, or whose law is too steep to
   * be trusted beyond it.
   *
   * @param list overwritten from its start [lanes]
   * @return how many they are
   */
  static int unsettled(
      int lanes,
      double[] correction,
      double tolerance,
      double[] slope,
      double steepest,
      int[] list) {
    int count = 0;
    for (int l = 0; l < lanes; l++) {
      list[count] = l;
      boolean settled =
          slope[l] >= steepest && FaceBalance.isSettled(correction[l], slope[l], tolerance);
      count += settled ? 0 : 1;
    }
    return count;
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

  /** γ h, λ = γ h α/ℓ² and 1/(γ h). */
  static void scales(
      int lanes,
      double gamma,
      double[] step,
      double[] timeScale,
      double[] gammaStep,
      double[] lambda,
      double[] inverse) {
    for (int l = 0; l < lanes; l++) {
      double g = gamma * step[l];
      gammaStep[l] = g;
      lambda[l] = g * timeScale[l];
      inverse[l] = 1 / g;
    }
  }

  /** total = weight · row. */
  static void scaled(int lanes, double weight, double[] row, double[] total) {
    for (int l = 0; l < lanes; l++) {
      total[l] = weight * row[l];
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

  /** guess = start + c h · rate. */
  static void tangent(
      int lanes, double c, double[] start, double[] step, double[] rate, double[] guess) {
    for (int l = 0; l < lanes; l++) {
      guess[l] = start[l] + c * step[l] * rate[l];
    }
  }

  /** Derivative at the end of a step of the cubic through four stages. */
  static void endRate(
      int lanes,
      double[] w,
      double[] y0,
      double[] y1,
      double[] y2,
      double[] y3,
      double[] inverseGammaStep,
      double[] rate) {
    double w0 = Esdirk4.GAMMA * w[0];
    double w1 = Esdirk4.GAMMA * w[1];
    double w2 = Esdirk4.GAMMA * w[2];
    double w3 = Esdirk4.GAMMA * w[3];
    for (int l = 0; l < lanes; l++) {
      rate[l] = (w0 * y0[l] + w1 * y1[l] + w2 * y2[l] + w3 * y3[l]) * inverseGammaStep[l];
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
