package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/**
 * Temperatures anywhere inside one step, eq. (19): cells by the cubic Hermite polynomial of values
 * and rates at both ends, faces by the cubic through the values of four stages.
 *
 * <p>A view of the integration's memory, valid until its next attempt.
 */
final class DenseStep {

  private final double[][] stageFace;
  private State from;
  private State to;

  DenseStep(State from, State to, double[][] stageFace) {
    this.from = from;
    this.to = to;
    this.stageFace = stageFace;
  }

  /** The view of another step, so that steps do not allocate. */
  DenseStep between(State from, State to) {
    this.from = from;
    this.to = to;
    return this;
  }

  double start() {
    return from.time;
  }

  double end() {
    return to.time;
  }

  State from() {
    return from;
  }

  State to() {
    return to;
  }

  /** Face temperature of a stage [K]. */
  double stageFace(int stage, int face) {
    return stageFace[stage][face];
  }

  /** Temperature of a reading at the share θ in [0, 1] of the step [K]. */
  double at(Reading reading, double theta) {
    double value =
        Cubic.hermite(
            theta,
            to.time - from.time,
            reading.ofCells(from.temperature, 0),
            reading.ofCells(from.temperatureRate, 0),
            reading.ofCells(to.temperature, 0),
            reading.ofCells(to.temperatureRate, 0));
    if (reading.upperWeight() != 0) {
      value += reading.upperWeight() * face(State.UPPER, theta);
    }
    if (reading.lowerWeight() != 0) {
      value += reading.lowerWeight() * face(State.LOWER, theta);
    }
    return value;
  }

  private double face(int face, double theta) {
    return Cubic.throughStages(
        theta,
        stageFace[Cubic.STAGE_0][face],
        stageFace[Cubic.STAGE_1][face],
        stageFace[Cubic.STAGE_2][face],
        stageFace[Cubic.STAGE_3][face]);
  }
}
