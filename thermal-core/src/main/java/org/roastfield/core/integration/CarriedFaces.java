package org.roastfield.core.integration;

import org.roastfield.core.surface.FaceWater;

/** Water and crust of both faces at one time, and running totals; index as in {@link State}. */
final class CarriedFaces {

  /** Whether a face has had a law that remembers. */
  final boolean[] begun = new boolean[2];

  /** Water of the faces, below 0 what a crust misses [kg/m²]. */
  final double[] water = new double[2];

  /** Its rate [kg/(m²·s)]. */
  final double[] waterRate = new double[2];

  /** Heat that boiling takes below the faces, as a flow ∂φ/∂ξ [K]. */
  final double[] sunk = new double[2];

  /** How much warmer the surface is than the face of the cells [K]. */
  final double[] lift = new double[2];

  /** Water that came from inside, now [kg/(m²·s)]. */
  final double[] feeding = new double[2];

  /** Water that runs off, now [kg/(m²·s)]. */
  final double[] dripping = new double[2];

  /** Water held before the first stage with memory [kg/m²]. */
  final double[] initial = new double[2];

  /** Most that the inside can feed in all [kg/m²]; infinite where its water is not known. */
  final double[] mostFed = new double[2];

  /** Water that came from inside so far [kg/m²]. */
  final double[] fed = new double[2];

  /** Water that is put on when the next stage begins [kg/m²]. */
  final double[] pouring = new double[2];

  /** Water that was put on so far [kg/m²]. */
  final double[] poured = new double[2];

  /** Water that ran off so far [kg/m²]. */
  final double[] dripped = new double[2];

  /** Water that evaporated while laws remembered [kg/m²]. */
  final double[] evaporated = new double[2];

  /**
   * Humidity ratio of the air around each face, as its vapour makes it [kg/kg]; 0 if it does not.
   */
  final double[] humidity = new double[2];

  /** Its rate, of air that fills [1/s]. */
  final double[] humidityRate = new double[2];

  /** Thickness of the crusts [m]. */
  final double[] crust = new double[2];

  FaceWater water(int face) {
    return new FaceWater(
        initial[face],
        fed[face],
        poured[face],
        evaporated[face],
        dripped[face],
        water[face],
        crust[face]);
  }

  /** Puts on what is to be poured. */
  void pour(int face) {
    water[face] += pouring[face];
    poured[face] += pouring[face];
    pouring[face] = 0;
  }

  /** A dry, bare start. */
  void clear() {
    java.util.Arrays.fill(begun, false);
    for (double[] array : arrays()) {
      java.util.Arrays.fill(array, 0);
    }
  }

  /** Takes all of another's values. */
  void copy(CarriedFaces other) {
    System.arraycopy(other.begun, 0, begun, 0, 2);
    double[][] from = other.arrays;
    for (int i = 0; i < from.length; i++) {
      System.arraycopy(from[i], 0, arrays[i], 0, 2);
    }
  }

  private double[][] arrays() {
    return arrays;
  }

  private final double[][] arrays = {
    water,
    waterRate,
    sunk,
    lift,
    feeding,
    dripping,
    initial,
    mostFed,
    fed,
    pouring,
    poured,
    dripped,
    evaporated,
    humidity,
    humidityRate,
    crust
  };
}
