package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.material.Moisture;

/**
 * Water that heat presses out of a cut and that a face does not take, eqs. (98) and (100): read off
 * the steps of a computed cook, to which it gives nothing back.
 *
 * <p>What drains lags behind what is set free by the same time everywhere, so that the means over
 * the volume obey one equation. Steps are cut into pieces no longer than that time, and into
 * shorter ones beside the most drip; in each, what is set free is the parabola through its start,
 * middle and end, and drip is looked at in the middle and at the end.
 */
public final class PressedWater {

  /** Into how many times as many pieces steps are cut beside the most drip. */
  private static final int FINER = 8;

  private static final int NOWHERE = -2;

  private final Trajectory plain;
  private final Moisture moisture;
  private final double depth;
  private final double drainTime;
  private final int face;
  private final int first;
  private final double[] hottest;

  /** By the hottest so far, in a cubic metre of the raw food [kg/m³]. */
  private final double[] pressed;

  /** Set free by the end of the last piece [kg/m²]. */
  private double free;

  private double most;
  private int mostStep = NOWHERE;

  /** Number of half pieces up to the most drip. */
  private int mostAt;

  /** The step beside which pieces are shorter. */
  private int near = NOWHERE;

  private PressedWater(
      Trajectory plain, Moisture moisture, double depth, int face, int first, int cells) {
    this.plain = plain;
    this.moisture = moisture;
    this.depth = depth;
    this.drainTime = moisture.holding().orElseThrow().drainTime();
    this.face = face;
    this.first = first;
    hottest = new double[cells];
    pressed = new double[cells];
  }

  /**
   * Drip of both faces [2] [kg/m²]. Steps that were moved along derivatives are read where those
   * they were moved from are hottest and drip most, which is what moves to first order.
   *
   * @param moisture of the food
   * @param depth of the cut behind a square metre of each face [m]
   */
  public static double[] dripped(Trajectory trajectory, Moisture moisture, double depth) {
    double[] dripped = new double[2];
    if (moisture.holding().isEmpty()) {
      return dripped;
    }
    Trajectory plain = trajectory.plain();
    int faces = trajectory.grid().isTwoSided() ? 2 : 1;
    int half = trajectory.grid().cells() / faces;
    for (int f = 0; f < faces; f++) {
      int first = f == State.UPPER ? (faces - 1) * half : 0;
      PressedWater water = new PressedWater(plain, moisture, depth, f, first, half);
      water.search();
      dripped[f] = plain.equals(trajectory) ? water.most : water.moved(trajectory);
    }
    return dripped;
  }

  private void search() {
    double atTheEnd = go(plain, Integer.MAX_VALUE);
    if (atTheEnd < most) {
      near = mostStep;
      most = 0;
      go(plain, Integer.MAX_VALUE);
    }
  }

  /** The same moments of steps that were moved, each cell where it was hottest. */
  private double moved(Trajectory trajectory) {
    return go(trajectory, mostAt);
  }

  /** Drip after a number of half pieces; at the end if there are fewer. */
  private double go(Trajectory trajectory, int halves) {
    java.util.Arrays.fill(hottest, 0);
    free = 0;
    double drained = 0;
    double drip = 0;
    int at = 0;
    for (int step = 0; step < plain.steps(); step++) {
      int pieces = pieces(step);
      double length = (trajectory.stepEnd(step) - trajectory.stepStart(step)) / pieces;
      for (int k = 0; k < pieces; k++) {
        double before = free;
        double middle = freed(trajectory, step, (k + 0.5) / pieces);
        free = freed(trajectory, step, (k + 1.0) / pieces);
        double atStart = drained;
        for (double share = 0.5; share <= 1; share += 0.5) {
          if (at == halves) {
            return drip;
          }
          drained = drained(atStart, length, share, before, middle);
          drip = drained - trajectory.drawn(step, face, (k + share) / pieces);
          keep(step, ++at, drip);
        }
      }
    }
    return drip;
  }

  private int pieces(int step) {
    int pieces = 1 + (int) ((plain.stepEnd(step) - plain.stepStart(step)) / drainTime);
    return Math.abs(step - near) <= 1 ? FINER * pieces : pieces;
  }

  private void keep(int step, int halves, double drip) {
    if (drip > most) {
      most = drip;
      mostStep = step;
      mostAt = halves;
    }
  }

  /** Eq. (100) from the start of a piece to a share of it. */
  private double drained(
      double atStart, double length, double share, double before, double middle) {
    double lags = share * length / drainTime;
    double phi1 = (1 - StrictMath.exp(-lags)) / lags;
    double phi2 = (1 - phi1) / lags;
    double phi3 = (0.5 - phi2) / lags;
    double slope = share * (4 * middle - 3 * before - free);
    double bend = share * share * 2 * (before - 2 * middle + free);
    return atStart + lags * (phi1 * (before - atStart) + phi2 * slope + 2 * phi3 * bend);
  }

  /** Set free by a moment of a step, or before it [kg/m²]. */
  private double freed(Trajectory trajectory, int step, double share) {
    for (int i = 0; i < hottest.length; i++) {
      double temperature = plain.cellIn(step, first + i, share);
      if (temperature > hottest[i]) {
        hottest[i] = temperature;
        pressed[i] = moisture.pressedOut(trajectory.cellIn(step, first + i, share));
      }
    }
    return pressedOut();
  }

  /** Mean over the volume behind the face. */
  private double pressedOut() {
    Grid grid = plain.grid();
    double sum = 0;
    double volume = 0;
    for (int i = 0; i < hottest.length; i++) {
      sum += grid.volume(first + i) * pressed[i];
      volume += grid.volume(first + i);
    }
    return depth * sum / volume;
  }
}
