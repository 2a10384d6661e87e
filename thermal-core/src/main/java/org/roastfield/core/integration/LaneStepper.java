package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;

/**
 * One attempt at a step of {@link Esdirk4} for every lane at once, each with a step, a body and a
 * face of its own; constant properties, one heated face.
 *
 * <p>Symbols as in {@link Stepper}; rows are [lanes], arrays of rows [cells][lanes]. Elimination
 * runs one way: lanes hide its latency.
 */
final class LaneStepper {

  /** Newton corrections made for all lanes; one that needs more gets them alone. */
  private static final int SHARED_CORRECTIONS = 2;

  /** Largest last shared correction after which a lane goes on from where it is [K]. */
  private static final double USABLE = 1;

  private static final int LAST = Esdirk4.STAGES - 1;

  private final Grid grid;
  private final int n;
  private final FaceClosure closure;
  private final FaceBalance balance;
  private final double accuracy;
  private final double tolerance;
  private final Reading watchedPlace;
  private final LaneLaws laws;

  final MassMatrix mass;

  /** u at the start of the step [cells][lanes] [K]. */
  double[][] value;

  /** du/dt at the start of the step [cells][lanes] [K/s]. */
  double[][] rate;

  /** u at the end of the attempt [cells][lanes] [K]. */
  double[][] nextValue;

  /** du/dt at the end of the attempt [cells][lanes] [K/s]. */
  double[][] nextRate;

  /** α₀/ℓ² [lanes] [1/s]. */
  final double[] timeScale;

  /** κ [lanes] [m²·K/W]. */
  final double[] kappa;

  /** Start of the step [lanes] [s]. */
  final double[] time;

  /** h [lanes] [s]. */
  final double[] step;

  /** dTs/dt as a step leaves it, 0 after a jump of the surroundings [K/s]. */
  final TurnedRow faceRate;

  /** Inward flow at the start of the step [lanes] [K]. */
  double[] flow;

  /** Evaporation [kg/(m²·s)]. */
  final TurnedRow evaporation;

  /** Face temperatures of the stages [stages][lanes] [K]. */
  final double[][] stageFace;

  /** Inward flow of the stages; that of the first is {@link #flow} [stages][lanes] [K]. */
  final double[][] stageFlow;

  /** Σ b j over the stages [lanes] [kg/(m²·s)]. */
  final double[] meanEvaporation;

  /** Volume-weighted root mean square of the embedded error [lanes] [K]. */
  final double[] error;

  /** {@link StepControl#growth} of the error [lanes]. */
  final double[] growth;

  /** The watched place [K]. */
  final TurnedRow watched;

  /** Its rate [K/s]. */
  final TurnedRow watchedRate;

  /** Whether the face of every stage could be balanced [lanes]. */
  final boolean[] solved;

  /** Factors and increments of the last attempt. */
  final StepFactors factors;

  private final double[][][] z;
  private final double[][] base;
  private final double[][] inverse;
  private final double[][] carry;
  private final double[] lambda;
  private final double[] gammaStep;
  private final double[] inverseGammaStep;
  private final double[] gain;
  private final double[] response;
  private final double[] offset;
  private final double[] zero;
  private final double[] stageTime;
  private final double[] heatFlux;
  private final double[] slope;
  private final double[] correction;
  private final double[] evaporationSlope;
  private final int[] unsettled;
  private final double[] oneFace = new double[2];
  private final double[] oneFlow = new double[2];
  private final double[] oneEvaporation = new double[2];

  LaneStepper(
      Grid grid,
      int width,
      double accuracy,
      Reading watchedPlace,
      FaceBalance balance,
      LaneLaws laws) {
    this.accuracy = accuracy;
    this.watchedPlace = watchedPlace;
    this.grid = grid;
    this.n = grid.cells();
    this.closure = grid.upper();
    this.balance = balance;
    this.tolerance = FaceBalance.tolerance(accuracy);
    this.laws = laws;
    mass = new MassMatrix(grid);
    value = new double[n][width];
    rate = new double[n][width];
    nextValue = new double[n][width];
    nextRate = new double[n][width];
    factors = new StepFactors(n, width);
    z = factors.increments;
    inverse = factors.inverse;
    carry = factors.carry;
    kappa = factors.kappa;
    lambda = factors.lambda;
    gammaStep = factors.gammaStep;
    inverseGammaStep = factors.inverseGammaStep;
    gain = factors.gain;
    response = factors.response;
    base = new double[n][width];
    stageFace = new double[Esdirk4.STAGES][width];
    timeScale = new double[width];
    time = new double[width];
    step = new double[width];
    stageFlow = new double[Esdirk4.STAGES][width];
    flow = stageFlow[0];
    evaporation = new TurnedRow(width);
    meanEvaporation = new double[width];
    error = new double[width];
    growth = new double[width];
    watched = new TurnedRow(width);
    watchedRate = new TurnedRow(width);
    solved = new boolean[width];
    offset = new double[width];
    zero = new double[width];
    faceRate = new TurnedRow(width);
    stageTime = new double[width];
    heatFlux = new double[width];
    slope = new double[width];
    correction = new double[width];
    evaporationSlope = new double[width];
    unsettled = new int[width];
  }

  /** Attempts a step of {@link #step} in each of the first {@code lanes} lanes. */
  void attempt(int lanes) {
    java.util.Arrays.fill(solved, 0, lanes, true);
    Rows.scales(lanes, Esdirk4.GAMMA, step, timeScale, gammaStep, lambda, inverseGammaStep);
    Rows.scaled(lanes, Esdirk4.b(0), evaporation.start, meanEvaporation);
    factor(lanes);
    for (int stage = 1; stage < Esdirk4.STAGES; stage++) {
      eliminate(lanes, stage);
      balanceFaces(lanes, stage);
      for (int i = n - 2; i >= 0; i--) {
        Rows.substitute(lanes, carry[i], z[stage][i + 1], z[stage][i]);
      }
    }
    errors(lanes);
    Rows.endRate(
        lanes,
        Cubic.endSlopeWeights(),
        stageFace[Cubic.STAGE_0],
        stageFace[Cubic.STAGE_1],
        stageFace[Cubic.STAGE_2],
        stageFace[Cubic.STAGE_3],
        inverseGammaStep,
        faceRate.end);
    for (int i = 0; i < n; i++) {
      Rows.finish(lanes, base[i], z[LAST][i], inverseGammaStep, nextValue[i], nextRate[i]);
    }
    watchedPlace.ofRows(lanes, nextValue, watched.end);
    watchedPlace.ofRows(lanes, nextRate, watchedRate.end);
  }

  private void factor(int lanes) {
    Rows.factorFirst(
        lanes, lambda, mass.diagonal[0], mass.above[0], grid.conductance(1), inverse[0], carry[0]);
    for (int i = 1; i < n; i++) {
      boolean last = i == n - 1;
      double below = grid.conductance(i);
      double above = grid.conductance(i + 1);
      Rows.factor(
          lanes,
          lambda,
          mass.diagonal[i],
          last ? below - closure.near() : below + above,
          mass.below[i],
          last ? -below - closure.next() : -below,
          mass.above[i],
          -above,
          carry[i - 1],
          inverse[i],
          carry[i]);
    }
    Rows.gain(
        lanes,
        lambda,
        closure.face(),
        closure.near(),
        closure.next(),
        inverse[n - 1],
        carry[n - 2],
        response,
        gain);
  }

  private void eliminate(int lanes, int stage) {
    double[][] x = z[stage];
    base(lanes, stage, 0);
    base(lanes, stage, 1);
    Rows.eliminateFirst(lanes, lambda, grid.conductance(1), base[0], base[1], inverse[0], x[0]);
    for (int i = 1; i < n - 1; i++) {
      base(lanes, stage, i + 1);
      Rows.eliminate(
          lanes,
          lambda,
          grid.conductance(i),
          grid.conductance(i + 1),
          mass.below[i],
          base[i - 1],
          base[i],
          base[i + 1],
          x[i - 1],
          inverse[i],
          x[i]);
    }
    Rows.eliminateLast(
        lanes,
        lambda,
        grid.conductance(n - 1),
        closure.next(),
        mass.below[n - 1],
        base[n - 2],
        base[n - 1],
        x[n - 2],
        inverse[n - 1],
        x[n - 1]);
  }

  private void base(int lanes, int stage, int i) {
    if (stage == 1) {
      double w = Esdirk4.baseWeights(1)[0];
      StageRows.begin(lanes, gammaStep, rate[i], z[0][i], value[i], w, base[i]);
    } else {
      StageRows.base(stage, lanes, base[i], value[i], z[0][i], z[1][i], z[2][i], z[3][i], z[4][i]);
    }
  }

  private void balanceFaces(int lanes, int stage) {
    double[] last = z[stage][n - 1];
    Rows.baseOffset(lanes, closure.next(), base[n - 1], base[n - 2], offset);
    Rows.addOffset(
        lanes, closure.near(), closure.next(), carry[n - 2], z[stage][n - 2], last, offset);
    double[] face = stageFace[stage];
    predict(lanes, stage, face);
    Rows.stageTime(lanes, Esdirk4.c(stage), time, step, stageTime);
    laws.atTime(lanes, stageTime);
    for (int k = 0; k < SHARED_CORRECTIONS; k++) {
      laws.evaluate(lanes, face, heatFlux, slope, evaporation.end, evaporationSlope);
      Rows.correct(lanes, kappa, heatFlux, slope, offset, gain, base[n - 1], face, correction);
    }
    Rows.addProduct(lanes, correction, evaporationSlope, evaporation.end);
    int count = Rows.unsettled(lanes, correction, tolerance, slope, -FaceBalance.STEEP, unsettled);
    for (int i = 0; i < count; i++) {
      balanceAlone(unsettled[i], stage);
    }
    Rows.close(lanes, offset, gain, response, base[n - 1], face, stageFlow[stage], last);
    Rows.add(lanes, Esdirk4.b(stage), evaporation.end, meanEvaporation);
  }

  private void predict(int lanes, int stage, double[] guess) {
    if (stage == 1) {
      Rows.tangent(lanes, Esdirk4.c(1), stageFace[0], step, faceRate.start, guess);
    } else {
      StageRows.guess(stage, lanes, guess, zero, stageFace);
    }
  }

  /**
   * Balances the face of a lane whose shared corrections have not converged, with step halving:
   * from where they led, or, next to boiling or where they led nowhere, from the start of the step.
   */
  private void balanceAlone(int lane, int stage) {
    balance.kappa(kappa[lane]);
    balance.laws(laws.law(lane), laws.law(lane));
    balance.origin[State.UPPER] = base[n - 1][lane];
    balance.offset[State.UPPER] = offset[lane];
    balance.gain[State.UPPER][State.UPPER] = gain[lane];
    boolean usable = slope[lane] >= -FaceBalance.STEEP && Math.abs(correction[lane]) < USABLE;
    oneFace[State.UPPER] = usable ? stageFace[stage][lane] : stageFace[0][lane];
    if (balance.solve(stageTime[lane], oneFace, oneFlow, oneEvaporation)) {
      stageFace[stage][lane] = oneFace[State.UPPER];
      evaporation.end[lane] = oneEvaporation[State.UPPER];
    } else {
      solved[lane] = false;
    }
  }

  private void errors(int lanes) {
    double[] w = Esdirk4.errorWeights();
    java.util.Arrays.fill(error, 0, lanes, 0);
    for (int i = 0; i < n; i++) {
      Rows.error(lanes, grid.volume(i), w, z[0][i], z[2][i], z[3][i], z[4][i], z[5][i], error);
    }
    Rows.norm(lanes, grid.totalVolume(), accuracy, error, growth);
  }

  /** Makes the ends of the attempt the starts of the next. */
  void swap() {
    double[][] formerValue = value;
    value = nextValue;
    nextValue = formerValue;
    double[][] formerRate = rate;
    rate = nextRate;
    nextRate = formerRate;
    swapEnds(stageFace);
    swapEnds(stageFlow);
    flow = stageFlow[0];
    faceRate.turn();
    evaporation.turn();
    watched.turn();
    watchedRate.turn();
  }

  private static void swapEnds(double[][] stages) {
    double[] former = stages[0];
    stages[0] = stages[LAST];
    stages[LAST] = former;
  }

  /** Undoes the attempt of a lane before {@link #swap()}. */
  void repeat(int lane) {
    for (int i = 0; i < n; i++) {
      nextValue[i][lane] = value[i][lane];
      nextRate[i][lane] = rate[i][lane];
    }
    stageFace[LAST][lane] = stageFace[0][lane];
    stageFlow[LAST][lane] = flow[lane];
    faceRate.repeat(lane);
    evaporation.repeat(lane);
    watched.repeat(lane);
    watchedRate.repeat(lane);
  }

  /** Reads the watched place of a lane whose state has changed without a step. */
  void watch(int lane) {
    watched.start[lane] = watchedPlace.ofLane(value, lane);
    watchedRate.start[lane] = watchedPlace.ofLane(rate, lane);
  }

  /** Copies what a lane's next step starts from into another lane. */
  void move(int from, int to) {
    for (int i = 0; i < n; i++) {
      value[i][to] = value[i][from];
      rate[i][to] = rate[i][from];
    }
    stageFace[0][to] = stageFace[0][from];
    faceRate.move(from, to);
    watched.move(from, to);
    watchedRate.move(from, to);
    flow[to] = flow[from];
    evaporation.move(from, to);
    timeScale[to] = timeScale[from];
    kappa[to] = kappa[from];
    time[to] = time[from];
  }
}
