package org.roastfield.core.integration;

import org.roastfield.core.surface.SurfaceLaw;

/** How the laws of all lanes change with one parameter: differences of the laws next to theirs. */
final class LaneChanges {

  private final LaneLaws above;
  private final LaneLaws below;
  private final boolean[] changes;
  private final double[] perWidth;
  private final double[] otherFlux;
  private final double[] otherEvaporation;
  private final double[] unused;
  private final double[] unusedToo;

  LaneChanges(int width) {
    above = new LaneLaws(width);
    below = new LaneLaws(width);
    changes = new boolean[width];
    perWidth = new double[width];
    otherFlux = new double[width];
    otherEvaporation = new double[width];
    unused = new double[width];
    unusedToo = new double[width];
  }

  /** A lane enters a stage. */
  void set(int lane, int stage, SurfaceLaw law, CookVariation variation) {
    changes[lane] = variation.changesLaw(stage, State.UPPER);
    perWidth[lane] = variation.perWidth();
    above.set(lane, changes[lane] ? variation.lawAbove(stage, State.UPPER) : law);
    below.set(lane, changes[lane] ? variation.lawBelow(stage, State.UPPER) : law);
  }

  /** Prepares for a step; returns whether a law changes at all. */
  boolean begin(int lanes) {
    boolean any = false;
    for (int l = 0; l < lanes; l++) {
      any |= changes[l];
    }
    if (any) {
      above.countOthers(lanes);
      below.countOthers(lanes);
    }
    return any;
  }

  /** Changes of flux and evaporation with the parameter at faces and times. */
  void evaluate(int lanes, double[] time, double[] face, double[] flux, double[] evaporation) {
    above.atTime(lanes, time);
    above.evaluate(lanes, face, flux, unused, evaporation, unusedToo);
    below.atTime(lanes, time);
    below.evaluate(lanes, face, otherFlux, unused, otherEvaporation, unusedToo);
    quotient(lanes, flux, otherFlux, perWidth);
    quotient(lanes, evaporation, otherEvaporation, perWidth);
  }

  private static void quotient(int lanes, double[] above, double[] below, double[] perWidth) {
    for (int l = 0; l < lanes; l++) {
      above[l] = (above[l] - below[l]) * perWidth[l];
    }
  }

  /** Copies a lane into another. */
  void move(int from, int to) {
    changes[to] = changes[from];
    perWidth[to] = perWidth[from];
    above.move(from, to);
    below.move(from, to);
  }
}
