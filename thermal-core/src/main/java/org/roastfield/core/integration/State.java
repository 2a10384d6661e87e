package org.roastfield.core.integration;

/**
 * Temperatures, enthalpies and running totals of one cook at one time; owned by one integration and
 * overwritten in place.
 *
 * <p>Face index 0 is the upper face (ξ = 1), 1 the lower.
 */
final class State {

  static final int UPPER = 0;
  static final int LOWER = 1;

  /** Time since the start of the cook [s]. */
  double time;

  /** u, scaled enthalpy of each cell [K]. */
  final double[] enthalpy;

  /** T of each cell [K]. */
  final double[] temperature;

  /** du/dt of each cell [K/s]. */
  final double[] enthalpyRate;

  /**
   * dT/dt of each cell [K/s]; the same array as {@link #enthalpyRate} when properties are constant.
   */
  final double[] temperatureRate;

  /** Face temperatures [K]. */
  final double[] face = new double[2];

  /** dTs/dt at each face as the last step left it, 0 after a jump of the surroundings [K/s]. */
  final double[] faceRate = new double[2];

  /** Inward flow at each face, ∂φ/∂ξ [K]. */
  final double[] flow = new double[2];

  /** Evaporation at each face [kg/(m²·s)]. */
  final double[] evaporation = new double[2];

  /** ∫ α₀/ℓ² · flow dt at each face [K]: heat taken in for a unit of ℓ ρ c₀ times area. */
  final double[] heatTaken = new double[2];

  /** Heat released inside by a source, in the same unit [K]. */
  double heatReleased;

  /** Water evaporated from each face [kg/m²]. */
  final double[] evaporated = new double[2];

  /** What the faces carry along, if their laws remember. */
  final CarriedFaces carried = new CarriedFaces();

  State(int cells, boolean constantProperties) {
    enthalpy = new double[cells];
    temperature = new double[cells];
    enthalpyRate = new double[cells];
    temperatureRate = constantProperties ? enthalpyRate : new double[cells];
  }

  /** Temperature of a surface: of the face, or of the crust over it [K]. */
  double surface(int side) {
    return face[side] + carried.lift[side];
  }

  /** Time 0 and empty totals. */
  void clear() {
    time = 0;
    heatReleased = 0;
    java.util.Arrays.fill(heatTaken, 0);
    java.util.Arrays.fill(evaporated, 0);
    carried.clear();
  }

  /** The same in memory of its own. */
  State copied() {
    State copy = new State(enthalpy.length, temperatureRate == enthalpyRate);
    copy.copy(this);
    return copy;
  }

  /** Takes all of another's values, which has as many cells. */
  void copy(State other) {
    time = other.time;
    heatReleased = other.heatReleased;
    double[][] from = other.arrays();
    double[][] to = arrays();
    for (int i = 0; i < to.length; i++) {
      System.arraycopy(from[i], 0, to[i], 0, to[i].length);
    }
    carried.copy(other.carried);
  }

  private double[][] arrays() {
    return new double[][] {
      enthalpy,
      temperature,
      enthalpyRate,
      temperatureRate,
      face,
      faceRate,
      flow,
      evaporation,
      heatTaken,
      evaporated
    };
  }

  /** Water that a face drew out of the cut so far, see {@link CarriedWater} [kg/m²]. */
  double drawn(int f) {
    double aside = evaporated[f] - carried.evaporated[f];
    return aside + carried.initial[f] + carried.fed[f] + Math.max(0, -carried.water[f]);
  }
}
