package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.material.Material;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * One attempt at a step of {@link Esdirk4} from a {@link State}; scratch memory of one integration.
 *
 * <p>Symbols: B = u_n + Σ_{j<s} (a_sj/γ) Z_j base of stage s; Z = u − B its increment, γ h du/dt;
 * T̂ temperature about which u and φ are linearised with C = du/dT, K = dφ/dT; X = T − T̂. Each
 * stage solves (M C + λ 𝓛 K) X = −λ 𝓛 φ(T̂) − M (u(T̂) − B) + faces, eq. (17), and Z = u(T̂) − B
 * + C X. With constant properties T̂ = B and one solve is exact; otherwise T̂ is the last iterate.
 * Only differences of temperatures enter, and Z comes from the linear system, so heat is conserved
 * to round-off whatever the iteration's error.
 */
final class Stepper {

  private static final int MOST_ITERATIONS = 12;

  private final Grid grid;
  private final int n;
  private final int faces;
  private final ScaledMaterial material;
  private final boolean constant;
  private final ConductionMatrix matrix;
  private final FaceBalance balance;
  private final FaceLinks links;
  private final FaceStages carried;
  private final Counters counters;
  private final InnerHeat innerHeat;
  private double timeScale;
  private final Linearisation linearisation;

  private final double[] volumes;
  private final double[] capacity;
  private final double[] conductivity;
  private final double[][] increments;
  private final double[] base;
  private final double[] excessOverSource;
  private final double[] excess;
  private final double[] phi;
  private final double[] iterate;
  private final double[] zero;
  private final double[][] stageTemperature;
  private final double[] guess = new double[2];

  /** What happened at the faces in each stage of the last attempt. */
  final StageFaces stageFaces = new StageFaces();

  Stepper(HeatProblem problem, double accuracy, Counters counters) {
    this.grid = problem.grid();
    this.n = grid.cells();
    this.faces = grid.isTwoSided() ? 2 : 1;
    this.material = new ScaledMaterial(problem.material());
    this.constant = material.isConstant();
    this.matrix = new ConductionMatrix(grid);
    this.counters = counters;
    this.carried = new FaceStages(grid, material, accuracy);
    FaceLaws laws = new FaceLaws(carried, counters);
    this.balance =
        new FaceBalance(
            material, problem.length() / material.conductivity(), faces, accuracy, laws);
    this.innerHeat = new InnerHeat(grid, material, problem.source());
    this.timeScale = material.diffusivity() / (problem.length() * problem.length());
    volumes = new double[n];
    for (int i = 0; i < n; i++) {
      volumes[i] = grid.volume(i);
    }
    capacity = new double[n];
    conductivity = new double[n];
    increments = new double[Esdirk4.STAGES][n];
    base = new double[n];
    excessOverSource = new double[n];
    excess = new double[n];
    phi = constant ? base : new double[n];
    iterate = new double[n];
    linearisation = new Linearisation(constant ? 0 : n, accuracy);
    zero = new double[constant ? 0 : n];
    stageTemperature = new double[Esdirk4.STAGES][constant ? 0 : n];
    java.util.Arrays.fill(capacity, 1);
    java.util.Arrays.fill(conductivity, 1);
    this.links = new FaceLinks(grid, conductivity, matrix, balance, laws);
    carried.body(material, problem.length(), problem.depth());
  }

  /**
   * Takes another body on the same grid.
   *
   * @param next constant if and only if the material so far is
   * @param length what ξ = 1 stands for [m]
   * @param depth of the body behind each square metre of face [m]
   */
  void bind(Material next, double length, double depth) {
    material.set(next);
    timeScale = material.diffusivity() / (length * length);
    balance.kappa(length / material.conductivity());
    carried.body(material, length, depth);
  }

  ScaledMaterial material() {
    return material;
  }

  /** α₀/ℓ² [1/s]. */
  double timeScale() {
    return timeScale;
  }

  void laws(SurfaceLaw upper, SurfaceLaw lower) {
    balance.laws(upper, lower);
    stageFaces.highest[State.UPPER] = upper.highestTemperature();
    stageFaces.highest[State.LOWER] = lower.highestTemperature();
    for (int f = 0; f < 2; f++) {
      stageFaces.remembers[f] = carried.law(f) != null;
    }
  }

  /** What the faces carry along, and how it went in the last attempt. */
  FaceStages carried() {
    return carried;
  }

  /** Factors of the last attempt or restart. */
  ConductionMatrix matrix() {
    return matrix;
  }

  /** Change of the flow at face a with φ of face b, [a][b], of the last attempt or restart. */
  double[][] faceGain() {
    return balance.gain;
  }

  /** T of a stage of the last attempt; empty if properties are constant [cells] [K]. */
  double[] stageTemperature(int stage) {
    return stageTemperature[stage];
  }

  /** Z of a stage of the last attempt [cells] [K]. */
  double[] increment(int stage) {
    return increments[stage];
  }

  /**
   * Balances the faces at once and sets du/dt; called where surface conditions jump.
   *
   * @return whether the faces could be balanced
   */
  boolean restart(State state) {
    double[] rate = state.enthalpyRate;
    java.util.Arrays.fill(state.faceRate, 0);
    for (int i = 0; i < n; i++) {
      phi[i] = material.kirchhoff(state.temperature[i]);
      rate[i] = 0;
    }
    java.util.Arrays.fill(capacity, 1);
    matrix.factor(0, capacity, conductivity);
    counters.factorisations++;
    links.gains(false);
    balance.offset[State.UPPER] = links.flow(State.UPPER, phi);
    if (faces == 2) {
      balance.offset[State.LOWER] = links.flow(State.LOWER, phi);
    }
    if (!balanceNow(state)) {
      return false;
    }
    matrix.addInterior(timeScale, phi, rate);
    rate[grid.upper().cell()] += timeScale * state.flow[State.UPPER];
    if (faces == 2) {
      rate[grid.lower().cell()] += timeScale * state.flow[State.LOWER];
    }
    for (int f = 0; f < faces; f++) {
      if (carried.boilsInside(f)) {
        carried.near(f).addShares(-timeScale * state.carried.sunk[f], rate);
      }
    }
    matrix.solve(rate);
    counters.solves++;
    innerHeat.add(state.time, 1, rate);
    temperatureRates(state);
    return true;
  }

  private boolean balanceNow(State state) {
    carried.beginRestart(state);
    links.sinkGains(carried, false);
    balance.begin();
    boolean balanced = balance.solve(state.time, state.face, state.flow, state.evaporation);
    carried.endRestart(state);
    return balanced;
  }

  /**
   * Attempts a step.
   *
   * @param from state at the start, not modified
   * @param step h [s]
   * @param to overwritten with the state at the end
   * @return whether all stages converged, and no face took more water than there is
   */
  boolean attempt(State from, double step, State to) {
    double lambda = Esdirk4.GAMMA * step * timeScale;
    prepare(from, lambda);
    firstStage(from, step);
    for (int stage = 1; stage < Esdirk4.STAGES; stage++) {
      StageRows.base(stage, n, base, from.enthalpy, increments);
      carried.beginStage(from, stage, step);
      double time = from.time + Esdirk4.c(stage) * step;
      if (!solveStage(from, stage, time, lambda, step)) {
        return false;
      }
    }
    finish(from, step, to);
    return !carried.isFedTooMuch();
  }

  /** Factors with the properties at the start of the step. */
  private void prepare(State from, double lambda) {
    if (!constant) {
      material.enthalpySlopes(from.temperature, capacity);
      material.kirchhoffSlopes(from.temperature, conductivity);
    }
    matrix.factor(lambda, capacity, conductivity);
    counters.factorisations++;
    links.gains(true);
  }

  private void firstStage(State from, double step) {
    double[] z = increments[0];
    for (int i = 0; i < n; i++) {
      z[i] = Esdirk4.GAMMA * step * from.enthalpyRate[i];
    }
    if (!constant) {
      System.arraycopy(from.temperature, 0, stageTemperature[0], 0, n);
      linearisation.begin(material, from);
    }
    stageFaces.released[0] = innerHeat.released(from.time);
    stageFaces.begin(from);
    carried.firstStage(from, step);
  }

  private boolean solveStage(State from, int stage, double time, double lambda, double step) {
    double[] x = increments[stage];
    stageFaces.released[stage] = innerHeat.released(time);
    predict(from, stage, step);
    balance.begin();
    for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      evaluateProperties();
      solveCells(time, lambda, step, x);
      if (!balanceFaces(stage, time, lambda, x)) {
        return false;
      }
      boolean settled = !carried.isActive() || carried.isSettled();
      if (constant) {
        if (settled) {
          return true;
        }
        continue;
      }
      boolean close =
          linearisation.settles(from, iterate, excess, base, capacity, phi, conductivity, x);
      Rows.add(n, 1, x, iterate);
      if (close && settled) {
        System.arraycopy(iterate, 0, stageTemperature[stage], 0, n);
        Linearisation.increment(n, excess, capacity, x);
        return true;
      }
    }
    return false;
  }

  /** φ and u − B of the cells at the iterate. */
  private void evaluateProperties() {
    if (!constant) {
      material.kirchhoffs(iterate, phi);
      material.enthalpies(iterate, excess);
      Linearisation.subtract(n, base, excess);
    }
  }

  /**
   * Guess of the temperatures of a stage: the polynomial through the stages before it, and for the
   * first implicit stage the tangent at the start.
   */
  private void predict(State from, int stage, double step) {
    double[] w = Esdirk4.guessWeights(stage);
    for (int f = 0; f < faces; f++) {
      double sum = 0;
      for (int j = 0; j < stage; j++) {
        sum += w[j] * stageFaces.temperature[j][f];
      }
      guess[f] = stage == 1 ? sum + Esdirk4.c(1) * step * from.faceRate[f] : sum;
    }
    if (!constant) {
      guessCells(from, stage, step);
    }
  }

  private void guessCells(State from, int stage, double step) {
    double[][] t = stageTemperature;
    if (stage == 1) {
      StageRows.tangent(n, Esdirk4.c(1) * step, t[0], from.temperatureRate, iterate);
    } else {
      StageRows.guess(stage, n, iterate, zero, t);
    }
  }

  /** Solves for X as if each face had φ of the cell at it. */
  private void solveCells(double time, double lambda, double step, double[] x) {
    double top = lambda * links.flow(State.UPPER, phi);
    double bottom = faces == 2 ? lambda * links.flow(State.LOWER, phi) : 0;
    if (innerHeat.isPresent()) {
      System.arraycopy(excess, 0, excessOverSource, 0, n);
      innerHeat.add(time, -Esdirk4.GAMMA * step, excessOverSource);
      matrix.solveFlows(phi, excessOverSource, top, bottom, x);
    } else if (constant) {
      matrix.solveFlows(phi, top, bottom, x);
    } else {
      matrix.solveFlows(phi, excess, top, bottom, x);
    }
    counters.solves++;
  }

  /** Finds the faces of a stage and adds the cells' response to them. */
  private boolean balanceFaces(int stage, double time, double lambda, double[] x) {
    balance.offset[State.UPPER] = links.flow(State.UPPER, phi) + links.response(State.UPPER, x);
    if (faces == 2) {
      balance.offset[State.LOWER] = links.flow(State.LOWER, phi) + links.response(State.LOWER, x);
    }
    if (carried.isActive()) {
      carried.respond(lambda, matrix);
      carried.over(constant ? base : iterate, x, balance.origin, matrix);
      links.sinkGains(carried, true);
    }
    if (!balance.solve(time, guess, stageFaces.flow[stage], stageFaces.evaporation[stage])) {
      return false;
    }
    carried.endStage(stage, guess);
    for (int f = 0; f < faces; f++) {
      stageFaces.sunk[stage][f] = 0;
      if (carried.boilsInside(f)) {
        stageFaces.sunk[stage][f] = carried.kappa() * carried.memory[f].sunk;
        Rows.add(n, stageFaces.sunk[stage][f], carried.near(f).sink, x);
      }
    }
    Rows.add(n, difference(State.UPPER), matrix.upperResponse, x);
    if (faces == 2) {
      Rows.add(n, difference(State.LOWER), matrix.lowerResponse, x);
    }
    for (int f = 0; f < 2; f++) {
      stageFaces.temperature[stage][f] = guess[f];
      stageFaces.surface[stage][f] = guess[f] + carried.lift[stage][f];
    }
    return true;
  }

  private double difference(int face) {
    return balance.phi[face] - balance.origin[face];
  }

  private void finish(State from, double step, State to) {
    int last = Esdirk4.STAGES - 1;
    double[] z = increments[last];
    double inverse = 1 / (Esdirk4.GAMMA * step);
    to.time = from.time + step;
    for (int i = 0; i < n; i++) {
      to.enthalpy[i] = base[i] + z[i];
      to.enthalpyRate[i] = z[i] * inverse;
    }
    System.arraycopy(constant ? to.enthalpy : iterate, 0, to.temperature, 0, n);
    temperatureRates(to);
    stageFaces.finish(from, step, timeScale, to);
    carried.finish(from, step, to);
  }

  /** Volume-weighted root mean square of the embedded error of the last attempt [K]. */
  double error() {
    double sum = Esdirk4.squaredErrors(volumes, increments);
    double cells = Math.sqrt(sum / grid.totalVolume()) / Esdirk4.GAMMA;
    return carried.isActive() ? cells + carried.error() : cells;
  }

  private void temperatureRates(State state) {
    if (!constant) {
      material.enthalpySlopes(state.temperature, state.temperatureRate);
      for (int i = 0; i < n; i++) {
        state.temperatureRate[i] = state.enthalpyRate[i] / state.temperatureRate[i];
      }
    }
  }
}
