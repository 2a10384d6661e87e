package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/** An accepted step: a view of the integration's memory, valid until its next attempt. */
final class DenseStep {

  private final StageFaces faces;
  private final StepReading step = new StepReading();
  private State from;
  private State to;

  DenseStep(State from, State to, StageFaces faces) {
    this.from = from;
    this.to = to;
    this.faces = faces;
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
    return faces.surface[stage][face];
  }

  /**
   * Highest temperature of a face in this step [K]: where its law ends, or what a stage found; not
   * known, so infinite, where it begins without water.
   */
  double highest(int face) {
    double end = faces.highest[face];
    if (end == Double.POSITIVE_INFINITY
        || (faces.remembers[face] && from.carried.water[face] < 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double highest = Math.max(end, faces.surface[Cubic.STAGE_0][face]);
    return driesIn(face)
        ? highest
        : Math.max(
            Math.max(highest, faces.surface[Cubic.STAGE_1][face]),
            Math.max(faces.surface[Cubic.STAGE_2][face], faces.surface[Cubic.STAGE_3][face]));
  }

  /** Whether a face boils dry in this step: then it holds water in a part of it only. */
  private boolean driesIn(int face) {
    return faces.remembers[face] && to.carried.water[face] < 0;
  }

  /** A place inside this step; valid until the next call. */
  StepReading reading(Reading reading) {
    step.cells(
        to.time - from.time,
        reading.ofCells(from.temperature, 0),
        reading.ofCells(from.temperatureRate, 0),
        reading.ofCells(to.temperature, 0),
        reading.ofCells(to.temperatureRate, 0));
    addFace(reading.upperWeight(), State.UPPER);
    addFace(reading.lowerWeight(), State.LOWER);
    return step;
  }

  private void addFace(double weight, int face) {
    if (weight != 0) {
      step.addFace(
          weight,
          driesIn(face) ? Double.POSITIVE_INFINITY : highest(face),
          stageFace(Cubic.STAGE_0, face),
          stageFace(Cubic.STAGE_1, face),
          stageFace(Cubic.STAGE_2, face),
          stageFace(Cubic.STAGE_3, face));
    }
  }
}
