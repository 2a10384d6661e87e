package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * Derivatives of one attempt of many lanes by one parameter, from the factors that it left: the
 * plain stages' systems with other right-hand sides, as in {@link TangentStepper}. Scratch memory
 * that parameters share.
 */
final class TangentSweep {

  private static final int LAST = Esdirk4.STAGES - 1;

  private final Grid grid;
  private final int n;
  private final FaceClosure closure;
  private final MassMatrix mass;
  private final double[][][] z;
  private final double[][] base;
  private final double[] offset;
  private final double[] driven;
  private final double[] face;
  private final double[] water;

  TangentSweep(Grid grid, MassMatrix mass, int width) {
    this.grid = grid;
    this.mass = mass;
    n = grid.cells();
    closure = grid.upper();
    z = new double[Esdirk4.STAGES][n][width];
    base = new double[n][width];
    offset = new double[width];
    driven = new double[width];
    face = new double[width];
    water = new double[width];
  }

  /**
   * Differentiates the step of the first {@code lanes} lanes.
   *
   * @param factors of the attempt
   * @param flow inward flow of its stages [stages][lanes] [K]
   * @param laws at its faces
   * @param length derivative of the step's own length: 0, or 1 where that is the parameter
   * @param t what the step starts from; its ends are overwritten
   */
  void step(
      int lanes,
      StepFactors factors,
      double[][] flow,
      LawSlopes laws,
      double length,
      TangentRows t) {
    Rows.scaled(lanes, Esdirk4.b(0), t.evaporation, t.meanEvaporation);
    for (int stage = 1; stage < Esdirk4.STAGES; stage++) {
      bases(lanes, stage, factors, t);
      eliminate(lanes, stage, factors);
      balance(lanes, stage, factors, flow[stage], laws, Esdirk4.c(stage) * length, t);
      substitute(lanes, stage, factors);
      if (stage < LAST) {
        for (int i = 0; i < n; i++) {
          Rows.addProduct(lanes, t.logLambda, factors.increments[stage][i], z[stage][i]);
        }
      }
    }
    for (int i = 0; i < n; i++) {
      finish(
          lanes,
          base[i],
          z[LAST][i],
          factors.inverseGammaStep,
          t.logTimeScale,
          factors.increments[LAST][i],
          t.nextValue[i],
          t.nextRate[i]);
    }
    System.arraycopy(face, 0, t.nextFace, 0, lanes);
    System.arraycopy(water, 0, t.nextEvaporation, 0, lanes);
  }

  private void bases(int lanes, int stage, StepFactors factors, TangentRows t) {
    for (int i = 0; i < n; i++) {
      if (stage == 1) {
        double w = Esdirk4.baseWeights(1)[0];
        StageRows.begin(lanes, factors.gammaStep, t.rate[i], z[0][i], t.value[i], w, base[i]);
      } else {
        StageRows.base(
            stage, lanes, base[i], t.value[i], z[0][i], z[1][i], z[2][i], z[3][i], z[4][i]);
      }
      Rows.addProduct(lanes, t.logLambda, factors.increments[stage][i], base[i]);
    }
  }

  private void eliminate(int lanes, int stage, StepFactors f) {
    double[][] x = z[stage];
    Rows.eliminateFirst(lanes, f.lambda, grid.conductance(1), base[0], base[1], f.inverse[0], x[0]);
    for (int i = 1; i < n - 1; i++) {
      Rows.eliminate(
          lanes,
          f.lambda,
          grid.conductance(i),
          grid.conductance(i + 1),
          mass.below[i],
          base[i - 1],
          base[i],
          base[i + 1],
          x[i - 1],
          f.inverse[i],
          x[i]);
    }
    Rows.eliminateLast(
        lanes,
        f.lambda,
        grid.conductance(n - 1),
        closure.next(),
        mass.below[n - 1],
        base[n - 2],
        base[n - 1],
        x[n - 2],
        f.inverse[n - 1],
        x[n - 1]);
  }

  private void balance(
      int lanes,
      int stage,
      StepFactors f,
      double[] flow,
      LawSlopes laws,
      double lengthened,
      TangentRows t) {
    double[] last = z[stage][n - 1];
    Rows.baseOffset(lanes, closure.next(), base[n - 1], base[n - 2], offset);
    Rows.addOffset(
        lanes, closure.near(), closure.next(), f.carry[n - 2], z[stage][n - 2], last, offset);
    driven(
        lanes,
        f.kappa,
        laws.change[stage],
        laws.trend[stage],
        t.time,
        lengthened,
        t.logResistance,
        flow,
        driven);
    faces(lanes, f.kappa, laws.slope[stage], offset, driven, f.gain, base[n - 1], face);
    Rows.close(lanes, offset, f.gain, f.response, base[n - 1], face, t.nextFlow, last);
    waters(
        lanes,
        laws.evaporationSlope[stage],
        face,
        laws.evaporationChange[stage],
        laws.evaporationTrend[stage],
        t.time,
        lengthened,
        water);
    Rows.add(lanes, Esdirk4.b(stage), water, t.meanEvaporation);
  }

  private void substitute(int lanes, int stage, StepFactors f) {
    for (int i = n - 2; i >= 0; i--) {
      Rows.substitute(lanes, f.carry[i], z[stage][i + 1], z[stage][i]);
    }
  }

  /** What a law's flow changes by besides the face's temperature [K]. */
  private static void driven(
      int lanes,
      double[] kappa,
      double[] change,
      double[] trend,
      double[] time,
      double lengthened,
      double[] logResistance,
      double[] flow,
      double[] driven) {
    for (int l = 0; l < lanes; l++) {
      driven[l] =
          kappa[l] * (change[l] + trend[l] * (time[l] + lengthened)) + logResistance[l] * flow[l];
    }
  }

  /** κ (∂q/∂Ts) Ṫs + driven = offset + gain (Ṫs − here). */
  private static void faces(
      int lanes,
      double[] kappa,
      double[] slope,
      double[] offset,
      double[] driven,
      double[] gain,
      double[] here,
      double[] face) {
    for (int l = 0; l < lanes; l++) {
      face[l] = (offset[l] - driven[l] - gain[l] * here[l]) / (kappa[l] * slope[l] - gain[l]);
    }
  }

  private static void waters(
      int lanes,
      double[] slope,
      double[] face,
      double[] change,
      double[] trend,
      double[] time,
      double lengthened,
      double[] water) {
    for (int l = 0; l < lanes; l++) {
      water[l] = slope[l] * face[l] + change[l] + trend[l] * (time[l] + lengthened);
    }
  }

  private static void finish(
      int lanes,
      double[] base,
      double[] x,
      double[] inverseGammaStep,
      double[] logTimeScale,
      double[] increment,
      double[] value,
      double[] rate) {
    for (int l = 0; l < lanes; l++) {
      value[l] = base[l] + x[l];
      rate[l] = (x[l] + logTimeScale[l] * increment[l]) * inverseGammaStep[l];
    }
  }
}
