package org.roastfield.core.integration;

import java.util.List;
import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;

/**
 * Derivatives of one restart or one accepted step where properties depend on temperature. Scratch
 * memory of one integration.
 *
 * <p>What is differentiated is the stage's own equation, M (u(T) − B) = −λ 𝓛 φ(T) + faces: a stage
 * solves (M C + λ 𝓛 K) Ṫ = −λ 𝓛 φ_p − M (u_p − Ḃ − μ Z) + faces with C = du/dT and K = dφ/dT at
 * its own temperatures, factored anew for each stage and shared by all parameters; u_p and φ_p are
 * the changes of the curves at fixed T. Then Ż = C Ṫ + u_p − Ḃ. The plain stage may stop its
 * iteration within the accuracy asked for; these are the derivatives of what it converges to.
 */
final class VaryingTangentStepper implements TangentStages {

  private static final int LAST = Esdirk4.STAGES - 1;

  /** Half the difference of temperatures for the slope of C [K]. */
  private static final double TEMPERATURE_STEP = 1e-2;

  private final Stepper stepper;
  private final ScaledMaterial material;
  private final List<MaterialChange> changes;
  private final ConductionMatrix matrix;
  private final int n;
  private final int faces;
  private final FaceClosure[] closures;
  private final double timeScale;
  private final double[][] gain = new double[2][2];
  private final TangentFaces balance;
  private final TangentFront[] fronts;
  private final double[] capacity;
  private final double[] conductivity;
  private final double[] capacitySlope;
  private final double[] ones;
  private final double[] enthalpyChange;
  private final double[] phiChange;
  private final double[] shifted;
  private final double[] base;
  private final double[] excess;

  /**
   * @param variations of the parameters, in order; those that are missing change no property
   * @param fronts one a face if a face ever carries water along, or else none
   */
  VaryingTangentStepper(
      Grid grid,
      Stepper stepper,
      double kappa,
      List<CookVariation> variations,
      TangentFront[] fronts) {
    this.fronts = fronts;
    this.stepper = stepper;
    material = stepper.material();
    changes = variations.stream().map(MaterialChange::new).toList();
    matrix = new ConductionMatrix(grid);
    n = grid.cells();
    faces = grid.isTwoSided() ? 2 : 1;
    closures =
        faces == 2
            ? new FaceClosure[] {grid.upper(), grid.lower()}
            : new FaceClosure[] {grid.upper()};
    timeScale = stepper.timeScale();
    balance = new TangentFaces(faces, kappa, gain, fronts);
    capacity = new double[n];
    conductivity = new double[n];
    capacitySlope = new double[n];
    ones = new double[n];
    java.util.Arrays.fill(ones, 1);
    enthalpyChange = new double[n];
    phiChange = new double[n];
    shifted = new double[n];
    base = new double[n];
    excess = new double[n];
  }

  @Override
  public void fill(int p, double start, Tangents t) {
    double change =
        material.enthalpySlope(start) * t.temperature[p][0] + changes.get(p).enthalpy(start);
    java.util.Arrays.fill(t.enthalpy[p], change);
  }

  @Override
  public void restart(State state, FaceSlopes slopes, Tangents t) {
    matrix.factor(0, ones, ones);
    material.kirchhoffSlopes(state.temperature, conductivity);
    slopes(state.temperature);
    for (int f = 0; f < faces; f++) {
      gain[f][f] = closures[f].face();
      gain[f][1 - f] = 0;
      balance.phiSlope[f] = material.kirchhoffSlope(state.face[f]);
    }
    for (TangentFront front : fronts) {
      front.fixed();
    }
    linkFronts();
    balance.invert(slopes);
    for (int i = 0; i < t.moving(); i++) {
      restart(state, slopes, t.moving(i), t);
    }
  }

  private void restart(State state, FaceSlopes slopes, int p, Tangents t) {
    change(p, state.temperature);
    double[] phi = phiChange;
    Rows.addProduct(n, conductivity, t.temperature[p], phi);
    for (int f = 0; f < faces; f++) {
      balance.side[f] = linkedFlow(f, phi);
      balance.origin[f] = phi[closures[f].cell()];
      balance.phiChange[f] = kirchhoffChange(p, state.face[f]);
    }
    drive(0, 0, p, t.time[p], t.temperature[p], t);
    double linked0 = balance.side[0];
    double linked1 = balance.side[1];
    balance.balance(slopes, p, t.time[p], t.logResistance[p], state.flow);
    double[] rate = t.enthalpyRate[p];
    java.util.Arrays.fill(rate, 0);
    matrix.addInterior(timeScale, phi, rate);
    rate[n - 1] += timeScale * (linked0 + gain[0][0] * balance.excess[0]);
    if (faces == 2) {
      rate[0] += timeScale * (linked1 + gain[1][1] * balance.excess[1]);
    }
    for (TangentFront front : fronts) {
      if (front.isPresent()) {
        front.addSunk(timeScale, rate);
        front.keepRate(p, t);
      }
    }
    matrix.solve(rate);
    Rows.add(n, t.logTimeScale[p], state.enthalpyRate, rate);
    balance.keep(slopes, p, t.time[p], t.face, t.evaporation);
    temperatureRate(state.temperature, state.temperatureRate, p, t);
  }

  @Override
  public void stage(int stage, double step, FaceSlopes slopes, double share, Tangents t) {
    double[] temperature = stepper.stageTemperature(stage);
    double lambda = Esdirk4.GAMMA * step * timeScale;
    material.kirchhoffSlopes(temperature, conductivity);
    slopes(temperature);
    matrix.factor(lambda, capacity, conductivity);
    for (int f = 0; f < faces; f++) {
      for (int g = 0; g < faces; g++) {
        double[] x = g == State.UPPER ? matrix.upperResponse : matrix.lowerResponse;
        gain[f][g] = (f == g ? closures[f].face() : 0) + response(f, x);
      }
      balance.phiSlope[f] = material.kirchhoffSlope(stepper.stageFaces.temperature[stage][f]);
    }
    for (TangentFront front : fronts) {
      if (front.isPresent()) {
        front.respond(lambda, matrix);
      }
    }
    linkFronts();
    balance.invert(slopes);
    for (int i = 0; i < t.moving(); i++) {
      stage(stage, step, lambda, slopes, share, t.moving(i), t);
    }
  }

  private void linkFronts() {
    for (int b = 0; b < fronts.length; b++) {
      for (int a = 0; a < faces && fronts[b].isPresent(); a++) {
        balance.sunkGain[a][b] = response(a, fronts[b].sink());
        balance.placeGain[a][b] = response(a, fronts[b].moved());
      }
    }
  }

  /** Drives the fronts by a change of the cells. */
  private void drive(int stage, double step, int p, double time, double[] cells, Tangents t) {
    for (int f = 0; f < fronts.length; f++) {
      if (fronts[f].isPresent()) {
        double above = balance.phiChange[f] - balance.origin[f];
        fronts[f].drive(stage, step, p, time, fronts[f].read(cells), above, t);
      }
    }
  }

  private void stage(
      int stage, double step, double lambda, FaceSlopes slopes, double share, int p, Tangents t) {
    double[] temperature = stepper.stageTemperature(stage);
    accumulate(stage, step, p, t);
    change(p, temperature);
    double[] z = stepper.increment(stage);
    for (int i = 0; i < n; i++) {
      excess[i] = enthalpyChange[i] - base[i] - t.logLambda[p] * z[i];
    }
    double[] x = t.increments[p][stage];
    double top = lambda * linkedFlow(State.UPPER, phiChange);
    double bottom = faces == 2 ? lambda * linkedFlow(State.LOWER, phiChange) : 0;
    matrix.solveFlows(phiChange, excess, top, bottom, x);
    double time = t.time[p] + share * t.length[p];
    for (int f = 0; f < faces; f++) {
      balance.side[f] = linkedFlow(f, phiChange) + response(f, x);
      balance.origin[f] = phiChange[closures[f].cell()];
      balance.phiChange[f] = kirchhoffChange(p, stepper.stageFaces.temperature[stage][f]);
    }
    drive(stage, step, p, time, x, t);
    balance.balance(slopes, p, time, t.logResistance[p], stepper.stageFaces.flow[stage]);
    balance.keep(slopes, p, time, t.stageFace[stage], t.stageEvaporation[stage]);
    Rows.add(n, balance.excess[0], matrix.upperResponse, x);
    if (faces == 2) {
      Rows.add(n, balance.excess[1], matrix.lowerResponse, x);
    }
    for (TangentFront front : fronts) {
      if (front.isPresent()) {
        front.addResponse(x);
        front.keep(stage, step, p, t);
      }
    }
    if (stage == LAST) {
      System.arraycopy(x, 0, t.newTemperature(p), 0, n);
    }
    for (int i = 0; i < n; i++) {
      x[i] = capacity[i] * x[i] + enthalpyChange[i] - base[i];
    }
    if (stage == LAST) {
      finish(step, p, t);
    }
  }

  private void finish(double step, int p, Tangents t) {
    double inverse = 1 / (Esdirk4.GAMMA * step);
    double own = t.logTimeScale[p] - t.logLambda[p];
    double[] increment = t.increments[p][LAST];
    double[] z = stepper.increment(LAST);
    for (int i = 0; i < n; i++) {
      t.enthalpy[p][i] = base[i] + increment[i];
      t.enthalpyRate[p][i] = inverse * (increment[i] + own * z[i]);
    }
    double[] end = stepper.stageTemperature(LAST);
    for (int i = 0; i < n; i++) {
      shifted[i] = z[i] * inverse / capacity[i];
    }
    temperatureRate(end, shifted, p, t);
    TangentStages.endFaces(faces, step, stepper.stageFaces, p, t);
  }

  /** Change of dT/dt = (du/dt)/C; needs the slopes and changes at these temperatures. */
  private void temperatureRate(double[] temperature, double[] rate, int p, Tangents t) {
    double[] out = t.newRate(p);
    boolean changes = p < this.changes.size() && this.changes.get(p).isAny();
    for (int i = 0; i < n; i++) {
      double slope = capacitySlope[i] * t.temperature[p][i];
      if (changes) {
        slope += this.changes.get(p).enthalpySlope(temperature[i]);
      }
      out[i] = (t.enthalpyRate[p][i] - slope * rate[i]) / capacity[i];
    }
  }

  /** C and its slope at the cells' temperatures. */
  private void slopes(double[] temperature) {
    shift(temperature, TEMPERATURE_STEP);
    material.enthalpySlopes(shifted, capacitySlope);
    shift(temperature, -TEMPERATURE_STEP);
    material.enthalpySlopes(shifted, capacity);
    for (int i = 0; i < n; i++) {
      capacitySlope[i] = (capacitySlope[i] - capacity[i]) / (2 * TEMPERATURE_STEP);
    }
    material.enthalpySlopes(temperature, capacity);
  }

  private void shift(double[] temperature, double by) {
    for (int i = 0; i < n; i++) {
      shifted[i] = temperature[i] + by;
    }
  }

  /** u_p and φ_p of the cells. */
  private void change(int p, double[] temperature) {
    if (p < changes.size() && changes.get(p).isAny()) {
      changes.get(p).of(temperature, enthalpyChange, phiChange);
    } else {
      java.util.Arrays.fill(enthalpyChange, 0);
      java.util.Arrays.fill(phiChange, 0);
    }
  }

  private double kirchhoffChange(int p, double temperature) {
    return p < changes.size() ? changes.get(p).kirchhoff(temperature) : 0;
  }

  /** Ḃ = u̇_n + Σ_{j<stage} (a_j/γ) Ż_j. */
  private void accumulate(int stage, double step, int p, Tangents t) {
    double[][] z = t.increments[p];
    double gammaStep = Esdirk4.GAMMA * step;
    for (int i = 0; i < n; i++) {
      z[0][i] = gammaStep * t.enthalpyRate[p][i];
    }
    StageRows.base(stage, n, base, t.enthalpy[p], z);
  }

  /** Flow through a face if the change of φ there were that of the cell at it. */
  private double linkedFlow(int face, double[] phi) {
    FaceClosure closure = closures[face];
    return closure.next() * (phi[closure.nextCell()] - phi[closure.cell()]);
  }

  private double response(int face, double[] x) {
    FaceClosure closure = closures[face];
    int a = closure.cell();
    int b = closure.nextCell();
    return closure.near() * conductivity[a] * x[a] + closure.next() * conductivity[b] * x[b];
  }
}
