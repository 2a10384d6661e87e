package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * Derivatives of one restart or one accepted step with constant properties, from the factors that
 * it left in its {@link Stepper}. Scratch memory of one integration.
 *
 * <p>Symbols as there; a dot is the derivative by the parameter, μ that of ln λ. A stage solves A X
 * = λ 𝓛₀(Ḃ + μ Z) + faces, the plain stage's system with another right-hand side; then Ẏ = (Ḃ + μ
 * Z) + X and Ż = X + μ Z.
 */
final class TangentStepper {

  private static final int LAST = Esdirk4.STAGES - 1;

  private final Stepper stepper;
  private final ConductionMatrix matrix;
  private final int n;
  private final int faces;
  private final FaceClosure[] closures;
  private final double timeScale;
  private final double kappa;

  /** Flow that the cells of each parameter drive through each face [2][parameters]. */
  private final double[][] flows;

  /** Right-hand sides of the faces' balances of one parameter, then the faces' changes [2]. */
  private final double[] side = new double[2];

  /** What the faces' changes exceed those of the cells at them by [2]. */
  private final double[] excess = new double[2];

  /** The same of all parameters in the stage at hand [2][parameters]. */
  private final double[][] excesses;

  private final double[][] inverse = new double[2][2];

  /**
   * @param most largest number of parameters
   */
  TangentStepper(Grid grid, Stepper stepper, double kappa, int most) {
    this.stepper = stepper;
    this.matrix = stepper.matrix();
    this.n = grid.cells();
    this.faces = grid.isTwoSided() ? 2 : 1;
    this.closures = new FaceClosure[] {grid.upper(), grid.lower()};
    this.timeScale = stepper.timeScale();
    this.kappa = kappa;
    this.flows = new double[2][Math.max(1, most)];
    this.excesses = new double[2][Math.max(1, most)];
  }

  /**
   * Derivative of {@link Stepper#restart}: faces and rates from the cells.
   *
   * @param state after the restart, not modified
   * @param slopes of the laws, with what the parameters change
   */
  void restart(State state, FaceSlopes slopes, Tangents tangents) {
    double[][] gain = stepper.faceGain();
    invertFaces(slopes);
    for (int i = 0; i < tangents.moving(); i++) {
      int p = tangents.moving(i);
      double[] u = tangents.temperature[p];
      double[] rate = tangents.newRate(p);
      for (int f = 0; f < faces; f++) {
        side[f] = linkedFlow(closures[f], u);
      }
      double linked0 = side[0];
      double linked1 = side[1];
      balance(slopes, p, tangents.time[p], tangents.logResistance[p], state.flow, u);
      matrix.addInterior(timeScale, u, rate);
      rate[n - 1] += timeScale * (linked0 + gain[0][0] * excess[0]);
      if (faces == 2) {
        rate[0] += timeScale * (linked1 + gain[1][1] * excess[1]);
      }
      matrix.solve(rate);
      Rows.add(rate.length, tangents.logTimeScale[p], state.enthalpyRate, rate);
      keepFaces(slopes, p, tangents.time[p], tangents.face, tangents.evaporation);
    }
  }

  /** Begins a step: its first stage is the state itself. */
  void begin(Tangents tangents) {
    for (int f = 0; f < faces; f++) {
      System.arraycopy(tangents.face[f], 0, tangents.stageFace[0][f], 0, tangents.size());
      System.arraycopy(
          tangents.evaporation[f], 0, tangents.stageEvaporation[0][f], 0, tangents.size());
    }
  }

  /**
   * Derivative of a stage.
   *
   * @param slopes of the laws in this stage, with what the parameters change
   * @param share of the step's change of length in that of the stage's time
   */
  void stage(int stage, double step, FaceSlopes slopes, double share, Tangents tangents) {
    for (int i = 0; i < tangents.moving(); i++) {
      int p = tangents.moving(i);
      accumulate(stage, step, p, tangents);
      for (int f = 0; f < faces; f++) {
        flows[f][p] = linkedFlow(closures[f], tangents.base[p]);
      }
    }
    solve(stage, step, tangents);
    invertFaces(slopes);
    for (int i = 0; i < tangents.moving(); i++) {
      balanceStage(stage, slopes, share, tangents.moving(i), tangents);
    }
    for (int i = 0; i < tangents.moving(); i++) {
      int p = tangents.moving(i);
      if (stage < LAST) {
        respond(stage, p, tangents);
      } else {
        finish(step, p, tangents);
      }
    }
  }

  /** Ḃ + μ Z with Ḃ = u̇_n + Σ_{j<stage} (a_j/γ) Ż_j. */
  private void accumulate(int stage, double step, int p, Tangents t) {
    double[] w = Esdirk4.baseWeights(stage);
    double[] base = t.base[p];
    double[] u = t.temperature[p];
    double[] rate = t.rate[p];
    double[][] z = t.increments[p];
    double mu = t.logLambda[p];
    double w0 = w[0] * Esdirk4.GAMMA * step;
    if (mu != 0) {
      double[] own = stepper.increment(stage);
      switch (stage) {
        case 1 -> StageRows.sum(base.length, base, u, w0, rate, mu, own);
        case 2 -> StageRows.sum(base.length, base, u, w0, rate, w[1], z[1], mu, own);
        case 3 -> StageRows.sum(base.length, base, u, w0, rate, w[1], z[1], w[2], z[2], mu, own);
        case 4 ->
            StageRows.sum(
                base.length, base, u, w0, rate, w[1], z[1], w[2], z[2], w[3], z[3], mu, own);
        default ->
            StageRows.sum(
                base.length, base, u, w0, rate, w[2], z[2], w[3], z[3], w[4], z[4], mu, own);
      }
      return;
    }
    switch (stage) {
      case 1 -> StageRows.sum(base.length, base, u, w0, rate);
      case 2 -> StageRows.sum(base.length, base, u, w0, rate, w[1], z[1]);
      case 3 -> StageRows.sum(base.length, base, u, w0, rate, w[1], z[1], w[2], z[2]);
      case 4 -> StageRows.sum(base.length, base, u, w0, rate, w[1], z[1], w[2], z[2], w[3], z[3]);
      default -> StageRows.sum(base.length, base, u, w0, rate, w[2], z[2], w[3], z[3], w[4], z[4]);
    }
  }

  /** Solves for X as if the change at each face were that of the cell at it. */
  private void solve(int stage, double step, Tangents t) {
    double lambda = Esdirk4.GAMMA * step * timeScale;
    int i = 0;
    for (; i + 2 < t.moving(); i += 3) {
      int p = t.moving(i);
      int q = t.moving(i + 1);
      int r = t.moving(i + 2);
      matrix.solveFlowsOfThree(
          t.base[p],
          lambda * flows[0][p],
          lambda * flows[1][p],
          t.increments[p][stage],
          t.base[q],
          lambda * flows[0][q],
          lambda * flows[1][q],
          t.increments[q][stage],
          t.base[r],
          lambda * flows[0][r],
          lambda * flows[1][r],
          t.increments[r][stage]);
    }
    for (; i < t.moving(); i++) {
      int p = t.moving(i);
      matrix.solveFlows(
          t.base[p], lambda * flows[0][p], lambda * flows[1][p], t.increments[p][stage]);
    }
  }

  private void balanceStage(int stage, FaceSlopes slopes, double share, int p, Tangents t) {
    double[] x = t.increments[p][stage];
    double[] base = t.base[p];
    double time = t.time[p] + share * t.length[p];
    side[0] = flows[0][p] + response(closures[0], x);
    if (faces == 2) {
      side[1] = flows[1][p] + response(closures[1], x);
    }
    balance(slopes, p, time, t.logResistance[p], stepper.stageFaces.flow[stage], base);
    keepFaces(slopes, p, time, t.stageFace[stage], t.stageEvaporation[stage]);
    excesses[0][p] = excess[0];
    excesses[1][p] = excess[1];
  }

  /** Adds the cells' response to the faces and μ Z. */
  private void respond(int stage, int p, Tangents t) {
    double[] x = t.increments[p][stage];
    double mu = t.logLambda[p];
    if (faces == 2) {
      Rows.add(x.length, excesses[1][p], matrix.lowerResponse, x);
    }
    if (mu != 0) {
      StageRows.sum(
          x.length, x, x, excesses[0][p], matrix.upperResponse, mu, stepper.increment(stage));
    } else {
      Rows.add(x.length, excesses[0][p], matrix.upperResponse, x);
    }
  }

  /** Derivative of the end of a step, with the response to the faces of the last stage. */
  private void finish(double step, int p, Tangents t) {
    double[] x = t.increments[p][LAST];
    if (faces == 2) {
      Rows.add(x.length, excesses[1][p], matrix.lowerResponse, x);
    }
    double inverse = 1 / (Esdirk4.GAMMA * step);
    double own = t.logTimeScale[p] * inverse;
    double[] z = stepper.increment(LAST);
    double[] v = matrix.upperResponse;
    double[] u = t.newTemperature(p);
    end(t.base[p], x, excesses[0][p], v, inverse, own, z, u, t.newRate(p));
    t.time[p] += t.length[p];
    for (int f = 0; f < faces; f++) {
      double water = 0;
      double lengthened = 0;
      for (int s = 0; s < Esdirk4.STAGES; s++) {
        water += Esdirk4.b(s) * t.stageEvaporation[s][f][p];
        lengthened += Esdirk4.b(s) * stepper.stageFaces.evaporation[s][f];
      }
      t.evaporated[f][p] += step * water + t.length[p] * lengthened;
      t.face[f][p] = t.stageFace[LAST][f][p];
      t.evaporation[f][p] = t.stageEvaporation[LAST][f][p];
    }
  }

  private static void end(
      double[] base,
      double[] x,
      double excess,
      double[] response,
      double inverse,
      double own,
      double[] z,
      double[] u,
      double[] rate) {
    for (int i = 0; i < u.length; i++) {
      double change = x[i] + excess * response[i];
      u[i] = base[i] + change;
      rate[i] = inverse * change + own * z[i];
    }
  }

  /** Flow through a face if the change there were that of the cell at it. */
  private static double linkedFlow(FaceClosure closure, double[] x) {
    return closure.next() * (x[closure.nextCell()] - x[closure.cell()]);
  }

  private static double response(FaceClosure closure, double[] x) {
    return closure.near() * x[closure.cell()] + closure.next() * x[closure.nextCell()];
  }

  /** Inverts the Jacobian κ ∂q/∂Ts − gain of the faces, which all parameters share. */
  private void invertFaces(FaceSlopes slopes) {
    double[][] gain = stepper.faceGain();
    double j00 = kappa * slopes.slope[0] - gain[0][0];
    if (faces == 1) {
      inverse[0][0] = 1 / j00;
      return;
    }
    double j11 = kappa * slopes.slope[1] - gain[1][1];
    double determinant = j00 * j11 - gain[0][1] * gain[1][0];
    inverse[0][0] = j11 / determinant;
    inverse[0][1] = gain[0][1] / determinant;
    inverse[1][0] = gain[1][0] / determinant;
    inverse[1][1] = j00 / determinant;
  }

  /**
   * Solves κ (∂q/∂Ts Ṫs + ∂q/∂p + ∂q/∂t ṫ) + κ̇ q = ḟ, ḟ = side + gain (Ṫs − Ṫ of the cell at the
   * face): leaves Ṫs in {@code side} and the bracket in {@code excess}.
   */
  private void balance(
      FaceSlopes slopes, int p, double time, double logResistance, double[] flow, double[] cells) {
    double[][] gain = stepper.faceGain();
    double origin0 = cells[n - 1];
    double r0 = side[0] - driven(slopes, 0, p, time) - logResistance * flow[0];
    r0 -= gain[0][0] * origin0;
    if (faces == 1) {
      side[0] = inverse[0][0] * r0;
      excess[0] = side[0] - origin0;
      return;
    }
    double origin1 = cells[0];
    double r1 = side[1] - driven(slopes, 1, p, time) - logResistance * flow[1];
    r0 -= gain[0][1] * origin1;
    r1 -= gain[1][0] * origin0 + gain[1][1] * origin1;
    side[0] = inverse[0][0] * r0 + inverse[0][1] * r1;
    side[1] = inverse[1][0] * r0 + inverse[1][1] * r1;
    excess[0] = side[0] - origin0;
    excess[1] = side[1] - origin1;
  }

  /** Share of a law's change that does not come with the face temperature, times κ [K]. */
  private double driven(FaceSlopes slopes, int face, int p, double time) {
    return kappa * (slopes.change[face][p] + slopes.trend[face] * time);
  }

  private void keepFaces(
      FaceSlopes slopes, int p, double time, double[][] face, double[][] evaporation) {
    for (int f = 0; f < faces; f++) {
      face[f][p] = side[f];
      evaporation[f][p] =
          slopes.evaporationSlope[f] * side[f]
              + slopes.evaporationChange[f][p]
              + slopes.evaporationTrend[f] * time;
    }
  }
}
