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

  /**
   * Water that the faces drew out of the cut beside what is fed: what they held at first, and what
   * evaporated under laws that carry none along [2][parameters].
   */
  final double[][] aside;

  /** What the faces held at first and what was poured on them, less what evaporated from it. */
  final double[][] given;

  /** Water that was poured on the faces [2][parameters]. */
  final double[][] poured;

  /** Water that the faces carry along [kg/m²]. */
  final TangentScalar water;

  /** Humidity ratio of the air around the faces [kg/kg]. */
  final TangentScalar humidity;

  /** Water that came to the faces from inside [kg/m²]. */
  final TangentScalar fed;

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
    aside = new double[2][size];
    given = new double[2][size];
    poured = new double[2][size];
    water = new TangentScalar(size);
    humidity = new TangentScalar(size);
    fed = new TangentScalar(size);
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

  /** Change of the water that a face drew out of the cut, see {@link CarriedWater}. */
  double drawn(int face, int parameter, boolean crusted) {
    double missed = crusted ? water.now[face][parameter] : 0;
    return aside[face][parameter] + fed.now[face][parameter] - missed;
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
      aside[f][parameter] += factor * other.aside[f][0];
      given[f][parameter] += factor * other.given[f][0];
      water.add(f, parameter, factor, other.water);
      humidity.add(f, parameter, factor, other.humidity);
      fed.add(f, parameter, factor, other.fed);
      for (int s = 1; s < Esdirk4.STAGES; s++) {
        stageFace[s][f][parameter] += factor * other.stageFace[s][f][0];
      }
    }
  }
}
