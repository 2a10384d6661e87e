package org.roastfield.core.integration;

/**
 * Derivatives of what the next step of each lane starts from, by one parameter; rows as in {@link
 * LaneStepper}, in its units per unit of the parameter. Times move along with the step plan.
 */
final class TangentRows {

  /** u [cells][lanes]. */
  double[][] value;

  /** du/dt [cells][lanes]. */
  double[][] rate;

  /** u at the end of the step [cells][lanes]. */
  double[][] nextValue;

  /** du/dt at the end of the step [cells][lanes]. */
  double[][] nextRate;

  /** Ts [lanes]. */
  final double[] face;

  /** Inward flow [lanes]. */
  final double[] flow;

  /** j [lanes]. */
  final double[] evaporation;

  /** Ts at the end of the step [lanes]. */
  final double[] nextFace;

  /** Inward flow at the end of the step [lanes]. */
  final double[] nextFlow;

  /** j at the end of the step [lanes]. */
  final double[] nextEvaporation;

  /** Σ b j over the stages of the step [lanes]. */
  final double[] meanEvaporation;

  /** Water evaporated so far [lanes]. */
  final double[] evaporated;

  /** Time [lanes]. */
  final double[] time;

  /** d ln λ of the step [lanes]. */
  final double[] logLambda;

  /** d ln(α₀/ℓ²) [lanes]. */
  final double[] logTimeScale;

  /** d ln κ [lanes]. */
  final double[] logResistance;

  TangentRows(int cells, int width) {
    value = new double[cells][width];
    rate = new double[cells][width];
    nextValue = new double[cells][width];
    nextRate = new double[cells][width];
    face = new double[width];
    flow = new double[width];
    evaporation = new double[width];
    nextFace = new double[width];
    nextFlow = new double[width];
    nextEvaporation = new double[width];
    meanEvaporation = new double[width];
    evaporated = new double[width];
    time = new double[width];
    logLambda = new double[width];
    logTimeScale = new double[width];
    logResistance = new double[width];
  }

  /** Begins a lane with a uniform change of temperature. */
  void begin(int lane, double change, double logTimeScale, double logResistance) {
    for (int i = 0; i < value.length; i++) {
      value[i][lane] = change;
      rate[i][lane] = 0;
    }
    face[lane] = change;
    flow[lane] = 0;
    evaporation[lane] = 0;
    evaporated[lane] = 0;
    time[lane] = 0;
    this.logTimeScale[lane] = logTimeScale;
    logLambda[lane] = logTimeScale;
    this.logResistance[lane] = logResistance;
  }

  /** A lane stays where it was before the step; before {@link #swap()}. */
  void repeat(int lane) {
    for (int i = 0; i < value.length; i++) {
      nextValue[i][lane] = value[i][lane];
      nextRate[i][lane] = rate[i][lane];
    }
  }

  /** Keeps what goes with the face at the end of a lane's step. */
  void keepFace(int lane, double step) {
    face[lane] = nextFace[lane];
    flow[lane] = nextFlow[lane];
    evaporation[lane] = nextEvaporation[lane];
    evaporated[lane] += step * meanEvaporation[lane];
  }

  /** The ends of the step become the starts of the next. */
  void swap() {
    double[][] formerValue = value;
    value = nextValue;
    nextValue = formerValue;
    double[][] formerRate = rate;
    rate = nextRate;
    nextRate = formerRate;
  }

  /**
   * A lane's step ends later by {@code factor}; before {@link #swap()}.
   *
   * @param byLength derivatives of the end of the step by its length, in its only lane
   */
  void lengthen(int lane, double factor, TangentRows byLength) {
    for (int i = 0; i < value.length; i++) {
      nextValue[i][lane] += factor * byLength.nextValue[i][0];
      nextRate[i][lane] += factor * byLength.nextRate[i][0];
    }
    face[lane] += factor * byLength.nextFace[0];
    flow[lane] += factor * byLength.nextFlow[0];
    evaporation[lane] += factor * byLength.nextEvaporation[0];
    evaporated[lane] += factor * byLength.evaporated[0];
    time[lane] += factor;
  }

  /** Copies a lane into another. */
  void move(int from, int to) {
    for (int i = 0; i < value.length; i++) {
      value[i][to] = value[i][from];
      rate[i][to] = rate[i][from];
    }
    face[to] = face[from];
    flow[to] = flow[from];
    evaporation[to] = evaporation[from];
    evaporated[to] = evaporated[from];
    time[to] = time[from];
    logLambda[to] = logLambda[from];
    logTimeScale[to] = logTimeScale[from];
    logResistance[to] = logResistance[from];
  }
}
