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
final class TangentStepper implements TangentStages {

  private static final int LAST = Esdirk4.STAGES - 1;

  private final Stepper stepper;
  private final ConductionMatrix matrix;
  private final int n;
  private final int faces;
  private final FaceClosure[] closures;
  private final double timeScale;
  private final TangentFaces balance;
  private final TangentFront[] fronts;

  /** Flow that the cells of each parameter drive through each face [2][parameters]. */
  private final double[][] flows;

  /** What the faces' changes exceed those of the cells at them by [2][parameters]. */
  private final double[][] excesses;

  /**
   * @param most largest number of parameters
   * @param fronts one a face if a face ever carries water along, or else none
   */
  TangentStepper(Grid grid, Stepper stepper, double kappa, int most, TangentFront[] fronts) {
    this.fronts = fronts;
    this.stepper = stepper;
    this.matrix = stepper.matrix();
    this.n = grid.cells();
    this.faces = grid.isTwoSided() ? 2 : 1;
    this.closures =
        faces == 2
            ? new FaceClosure[] {grid.upper(), grid.lower()}
            : new FaceClosure[] {grid.upper()};
    this.timeScale = stepper.timeScale();
    this.balance = new TangentFaces(faces, kappa, stepper.faceGain(), fronts);
    this.flows = new double[2][Math.max(1, most)];
    this.excesses = new double[2][Math.max(1, most)];
  }

  @Override
  public void restart(State state, FaceSlopes slopes, Tangents tangents) {
    double[][] gain = stepper.faceGain();
    for (TangentFront front : fronts) {
      front.fixed();
    }
    linkFronts();
    balance.invert(slopes);
    for (int i = 0; i < tangents.moving(); i++) {
      int p = tangents.moving(i);
      double[] u = tangents.temperature[p];
      double[] rate = tangents.newRate(p);
      for (int f = 0; f < faces; f++) {
        balance.side[f] = linkedFlow(closures[f], u);
        balance.origin[f] = u[closures[f].cell()];
      }
      for (int f = 0; f < fronts.length; f++) {
        if (fronts[f].isPresent()) {
          double read = fronts[f].read(u);
          fronts[f].drive(0, 0, p, tangents.time[p], read, -balance.origin[f], tangents);
        }
      }
      double linked0 = balance.side[0];
      double linked1 = balance.side[1];
      balance.balance(slopes, p, tangents.time[p], tangents.logResistance[p], state.flow);
      matrix.addInterior(timeScale, u, rate);
      rate[n - 1] += timeScale * (linked0 + gain[0][0] * balance.excess[0]);
      if (faces == 2) {
        rate[0] += timeScale * (linked1 + gain[1][1] * balance.excess[1]);
      }
      for (TangentFront front : fronts) {
        if (front.isPresent()) {
          front.addSunk(timeScale, rate);
          front.keepRate(p, tangents);
        }
      }
      matrix.solve(rate);
      Rows.add(rate.length, tangents.logTimeScale[p], state.enthalpyRate, rate);
      balance.keep(slopes, p, tangents.time[p], tangents.face, tangents.evaporation);
    }
  }

  @Override
  public void stage(int stage, double step, FaceSlopes slopes, double share, Tangents tangents) {
    for (int i = 0; i < tangents.moving(); i++) {
      int p = tangents.moving(i);
      accumulate(stage, step, p, tangents);
      for (int f = 0; f < faces; f++) {
        flows[f][p] = linkedFlow(closures[f], tangents.base[p]);
      }
    }
    solve(stage, step, tangents);
    for (TangentFront front : fronts) {
      if (front.isPresent()) {
        front.respond(Esdirk4.GAMMA * step * timeScale, matrix);
      }
    }
    linkFronts();
    balance.invert(slopes);
    for (int i = 0; i < tangents.moving(); i++) {
      balanceStage(stage, step, slopes, share, tangents.moving(i), tangents);
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

  private void linkFronts() {
    for (int b = 0; b < fronts.length; b++) {
      for (int a = 0; a < faces && fronts[b].isPresent(); a++) {
        balance.sunkGain[a][b] = response(closures[a], fronts[b].sink());
        balance.placeGain[a][b] = response(closures[a], fronts[b].moved());
      }
    }
  }

  private void balanceStage(
      int stage, double step, FaceSlopes slopes, double share, int p, Tangents t) {
    double[] x = t.increments[p][stage];
    double time = t.time[p] + share * t.length[p];
    double[] base = t.base[p];
    balance.side[0] = flows[0][p] + response(closures[0], x);
    balance.origin[0] = base[n - 1];
    if (faces == 2) {
      balance.side[1] = flows[1][p] + response(closures[1], x);
      balance.origin[1] = base[0];
    }
    for (int f = 0; f < fronts.length; f++) {
      if (fronts[f].isPresent()) {
        double read = fronts[f].read(base) + fronts[f].read(x);
        fronts[f].drive(stage, step, p, time, read, -balance.origin[f], t);
      }
    }
    balance.balance(slopes, p, time, t.logResistance[p], stepper.stageFaces.flow[stage]);
    balance.keep(slopes, p, time, t.stageFace[stage], t.stageEvaporation[stage]);
    excesses[0][p] = balance.excess[0];
    excesses[1][p] = balance.excess[1];
    for (TangentFront front : fronts) {
      if (front.isPresent()) {
        front.addResponse(x);
        front.keep(stage, step, p, t);
      }
    }
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
    TangentStages.endFaces(faces, step, stepper.stageFaces, p, t);
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
}
