package org.roastfield.core.integration;

/** Derivatives of one restart or one accepted step, from what it left in its {@link Stepper}. */
interface TangentStages {

  /**
   * Sets the enthalpies of one parameter where the cook begins, from its change of temperature.
   *
   * @param start temperature [K]
   */
  default void fill(int parameter, double start, Tangents tangents) {}

  /**
   * Derivative of {@link Stepper#restart}: faces and rates from the cells.
   *
   * @param state after the restart, not modified
   * @param slopes of the laws, with what the parameters change
   */
  void restart(State state, FaceSlopes slopes, Tangents tangents);

  /**
   * Derivative of a stage, 1 … 5 in order; that of the last is the end of the step.
   *
   * @param slopes of the laws in this stage, with what the parameters change
   * @param share of the step's change of length in that of the stage's time
   */
  void stage(int stage, double step, FaceSlopes slopes, double share, Tangents tangents);

  /** Begins a step: its first stage is the state itself. */
  static void begin(int faces, Tangents tangents) {
    for (int f = 0; f < faces; f++) {
      System.arraycopy(tangents.face[f], 0, tangents.stageFace[0][f], 0, tangents.size());
      System.arraycopy(
          tangents.evaporation[f], 0, tangents.stageEvaporation[0][f], 0, tangents.size());
    }
  }

  /** Ends a step of one parameter: its faces and the water that has left them. */
  static void endFaces(int faces, double step, StageFaces plain, int p, Tangents t) {
    int last = Esdirk4.STAGES - 1;
    t.time[p] += t.length[p];
    for (int f = 0; f < faces; f++) {
      double water = 0;
      double lengthened = 0;
      for (int s = 0; s < Esdirk4.STAGES; s++) {
        water += Esdirk4.b(s) * t.stageEvaporation[s][f][p];
        lengthened += Esdirk4.b(s) * plain.evaporation[s][f];
      }
      double more = step * water + t.length[p] * lengthened;
      t.evaporated[f][p] += more;
      if (plain.remembers[f]) {
        t.given[f][p] -= more;
      } else {
        t.aside[f][p] += more;
      }
      t.face[f][p] = t.stageFace[last][f][p];
      t.evaporation[f][p] = t.stageEvaporation[last][f][p];
    }
  }
}
