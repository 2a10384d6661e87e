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
   * Highest temperature of a face where it holds water in this step [K]: where its law ends, or
   * what it has, boiling a little superheated, at the ends of the step at which it holds water.
   */
  double highest(int face) {
    double highest = faces.highest[face];
    if (!isDry(face, from)) {
      highest = Math.max(highest, faces.surface[Cubic.STAGE_0][face]);
    }
    if (!isDry(face, to)) {
      highest = Math.max(highest, faces.surface[Cubic.STAGE_3][face]);
    }
    return highest;
  }

  /** Whether what a face holds is carried along. */
  boolean remembers(int face) {
    return faces.remembers[face];
  }

  private boolean isDry(int face, State state) {
    return faces.remembers[face] && state.carried.water[face] < 0;
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
          isDry(face, from) || isDry(face, to) ? Double.POSITIVE_INFINITY : highest(face),
          stageFace(Cubic.STAGE_0, face),
          stageFace(Cubic.STAGE_1, face),
          stageFace(Cubic.STAGE_2, face),
          stageFace(Cubic.STAGE_3, face));
    }
  }
}
