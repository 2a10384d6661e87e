package org.roastfield.core.integration;

/**
 * What happened at the faces, and as heat inside, in each stage of an attempt; the weighted sums
 * over a step follow from it.
 */
final class StageFaces {

  /** Highest temperature of each face while it holds water [2] [K]. */
  final double[] highest = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};

  /** Whether that is so while a law remembers water only [2]. */
  final boolean[] remembers = new boolean[2];

  /** Face temperatures [stages][2] [K]. */
  final double[][] temperature = new double[Esdirk4.STAGES][2];

  /** Temperatures of the surfaces: of the faces, or of the crusts over them [stages][2] [K]. */
  final double[][] surface = new double[Esdirk4.STAGES][2];

  /** Flows through the faces [stages][2] [K]. */
  final double[][] flow = new double[Esdirk4.STAGES][2];

  /** Heat that boiling takes below the faces, as a flow [stages][2] [K]. */
  final double[][] sunk = new double[Esdirk4.STAGES][2];

  /** Evaporation from the faces [stages][2] [kg/(m²·s)]. */
  final double[][] evaporation = new double[Esdirk4.STAGES][2];

  /** Heat released inside, summed over the volume [stages] [K/s]. */
  final double[] released = new double[Esdirk4.STAGES];

  /** Takes the explicit first stage from the state at the start of the step. */
  void begin(State from) {
    for (int f = 0; f < 2; f++) {
      temperature[0][f] = from.face[f];
      surface[0][f] = from.surface(f);
      flow[0][f] = from.flow[f];
      sunk[0][f] = from.carried.sunk[f];
      evaporation[0][f] = from.evaporation[f];
    }
  }

  /**
   * Writes the faces and the running totals at the end of a step.
   *
   * @param step h [s]
   * @param timeScale α₀/ℓ² [1/s]
   */
  void finish(State from, double step, double timeScale, State to) {
    int last = Esdirk4.STAGES - 1;
    to.heatReleased = from.heatReleased;
    for (int s = 0; s < Esdirk4.STAGES; s++) {
      to.heatReleased += step * Esdirk4.b(s) * released[s];
    }
    for (int f = 0; f < 2; f++) {
      double heat = 0;
      double water = 0;
      for (int s = 0; s < Esdirk4.STAGES; s++) {
        heat += Esdirk4.b(s) * (flow[s][f] - sunk[s][f]);
        water += Esdirk4.b(s) * evaporation[s][f];
      }
      to.face[f] = temperature[last][f];
      to.faceRate[f] =
          Cubic.slopeAtEnd(
                  temperature[Cubic.STAGE_0][f],
                  temperature[Cubic.STAGE_1][f],
                  temperature[Cubic.STAGE_2][f],
                  temperature[Cubic.STAGE_3][f])
              / step;
      to.flow[f] = flow[last][f];
      to.evaporation[f] = evaporation[last][f];
      to.heatTaken[f] = from.heatTaken[f] + step * timeScale * heat;
      to.evaporated[f] = from.evaporated[f] + step * water;
    }
  }
}
