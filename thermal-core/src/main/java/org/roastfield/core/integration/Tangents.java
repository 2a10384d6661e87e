package org.roastfield.core.integration;

/**
 * Derivatives of a {@link State} and of a step's stages by some parameters, or by the step's own
 * length, along the step plan: times move with the plan. Memory of one integration, in units of the
 * state's per unit of the parameter.
 *
 * <p>Each parameter's cells have arrays of their own: sums over arrays with one index become vector
 * instructions. Those of a state are never written again once the next state has begun, so that a
 * trajectory can keep them. A parameter that has changed nothing yet rests: its derivatives are 0.
 */
final class Tangents {

  private final int size;
  private final int cells;
  private final int[] moving;
  private int movingCount;

  /** T [parameters][cells]. */
  final double[][] temperature;

  /** dT/dt [parameters][cells]. */
  final double[][] rate;

  /** u [parameters][cells]; empty where properties are constant and it is T. */
  final double[][] enthalpy;

  /** du/dt [parameters][cells]; empty where properties are constant and it is dT/dt. */
  final double[][] enthalpyRate;

  /** Z of each stage [parameters][stages][cells]; that of the first stage stays in the rate. */
  final double[][][] increments;

  /** B of the stage at hand, and its share of Z that comes with the change of λ [][cells]. */
  final double[][] base;

  /** Time [parameters] [s]. */
  final double[] time;

  /** Temperatures of the surfaces: of the faces, or of the crusts over them [2][parameters]. */
  final double[][] face;

  /** Evaporation at each face [2][parameters]. */
  final double[][] evaporation;

  /** Water evaporated from each face [2][parameters]. */
  final double[][] evaporated;

  /** Temperatures of the surfaces in each stage [stages][2][parameters]. */
  final double[][][] stageFace;

  /** Evaporation of each stage [stages][2][parameters]. */
  final double[][][] stageEvaporation;

  /** d ln λ of the step at hand [parameters]. */
  final double[] logLambda;

  /** d ln κ [parameters]. */
  final double[] logResistance;

  /** d ln(α₀/ℓ²) [parameters]. */
  final double[] logTimeScale;

  /** d ln ℓ [parameters]. */
  final double[] logLength;

  /** Water that the faces carry along [2][parameters]. */
  final double[][] water;

  /** Its rate [2][parameters]. */
  final double[][] waterRate;

  /** Its increment in each stage [stages][2][parameters]. */
  final double[][][] waterIncrement;

  /** Humidity ratio of the air around the faces [2][parameters]. */
  final double[][] humidity;

  /** Its rate [2][parameters]. */
  final double[][] humidityRate;

  /** Its increment in each stage [stages][2][parameters]. */
  final double[][][] humidityIncrement;

  /** Change of the length of the step at hand [parameters] [s]. */
  final double[] length;

  Tangents(int size, int cells, boolean constantProperties) {
    this.size = size;
    this.cells = cells;
    this.moving = new int[size];
    temperature = new double[size][cells];
    rate = new double[size][cells];
    enthalpy = new double[size][constantProperties ? 0 : cells];
    enthalpyRate = new double[size][constantProperties ? 0 : cells];
    increments = new double[size][Esdirk4.STAGES][cells];
    base = new double[size][cells];
    time = new double[size];
    face = new double[2][size];
    evaporation = new double[2][size];
    evaporated = new double[2][size];
    stageFace = new double[Esdirk4.STAGES][2][size];
    stageEvaporation = new double[Esdirk4.STAGES][2][size];
    logLambda = new double[size];
    logResistance = new double[size];
    logTimeScale = new double[size];
    logLength = new double[size];
    water = new double[2][size];
    waterRate = new double[2][size];
    waterIncrement = new double[Esdirk4.STAGES][2][size];
    humidity = new double[2][size];
    humidityRate = new double[2][size];
    humidityIncrement = new double[Esdirk4.STAGES][2][size];
    length = new double[size];
  }

  /** Number of parameters. */
  int size() {
    return size;
  }

  /**
   * Takes a parameter out of its rest, with arrays of its own from here on: those of its rest stand
   * for all states before.
   */
  void move(int parameter) {
    if (!isMoving(parameter)) {
      moving[movingCount++] = parameter;
      temperature[parameter] = temperature[parameter].clone();
      rate[parameter] = rate[parameter].clone();
    }
  }

  private boolean isMoving(int parameter) {
    for (int i = 0; i < movingCount; i++) {
      if (moving[i] == parameter) {
        return true;
      }
    }
    return false;
  }

  /** Number of parameters that do not rest. */
  int moving() {
    return movingCount;
  }

  /** A parameter that does not rest. */
  int moving(int i) {
    return moving[i];
  }

  /** A new array for the temperatures of the next state. */
  double[] newTemperature(int parameter) {
    double[] row = new double[cells];
    temperature[parameter] = row;
    return row;
  }

  /** A new array for the rates of the next state. */
  double[] newRate(int parameter) {
    double[] row = new double[cells];
    rate[parameter] = row;
    return row;
  }

  /** Sets the state of one parameter to a uniform change of temperature. */
  void fill(int parameter, double change) {
    java.util.Arrays.fill(temperature[parameter], change);
    face[State.UPPER][parameter] = change;
    face[State.LOWER][parameter] = change;
  }

  /** The step at hand ends later by a multiple of the parameter, of which {@code other} is one. */
  void lengthen(int parameter, double factor, Tangents other) {
    length[parameter] = factor;
    time[parameter] += factor;
    Rows.add(temperature[parameter].length, factor, other.temperature[0], temperature[parameter]);
    Rows.add(rate[parameter].length, factor, other.rate[0], rate[parameter]);
    Rows.add(enthalpy[parameter].length, factor, other.enthalpy[0], enthalpy[parameter]);
    Rows.add(
        enthalpyRate[parameter].length, factor, other.enthalpyRate[0], enthalpyRate[parameter]);
    for (int f = 0; f < 2; f++) {
      face[f][parameter] += factor * other.face[f][0];
      evaporation[f][parameter] += factor * other.evaporation[f][0];
      evaporated[f][parameter] += factor * other.evaporated[f][0];
      water[f][parameter] += factor * other.water[f][0];
      waterRate[f][parameter] += factor * other.waterRate[f][0];
      humidity[f][parameter] += factor * other.humidity[f][0];
      humidityRate[f][parameter] += factor * other.humidityRate[f][0];
      for (int s = 1; s < Esdirk4.STAGES; s++) {
        stageFace[s][f][parameter] += factor * other.stageFace[s][f][0];
      }
    }
  }
}
