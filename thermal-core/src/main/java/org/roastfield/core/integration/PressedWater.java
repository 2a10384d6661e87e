package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.material.Moisture;

/**
 * Water that heat presses out of a cut and that a face does not take, eq. (98): read off the steps
 * of a computed cook, to which it gives nothing back.
 *
 * <p>A moment is the number of a step and a share of it, in (step, step + 1]. The most drip is
 * looked for at the ends of the steps, and between these beside the one that has it.
 */
public final class PressedWater {

  /** In how many parts the steps beside the most drip are looked at. */
  private static final int PARTS = 8;

  private static final double STALE = -1;

  private final Trajectory plain;
  private final Moisture moisture;
  private final double depth;
  private final int face;
  private final int first;
  private final double[] hottest;

  /**
   * By the hottest so far, in a cubic metre of the raw food [kg/m³]; {@link #STALE} to be asked.
   */
  private final double[] pressed;

  /** Moments at which each cell was hottest so far, and as it was at the most drip. */
  private final double[] hottestAt;

  private final double[] counted;
  private double most;
  private double mostAt;

  private PressedWater(
      Trajectory plain, Moisture moisture, double depth, int face, int first, int cells) {
    this.plain = plain;
    this.moisture = moisture;
    this.depth = depth;
    this.face = face;
    this.first = first;
    hottest = new double[cells];
    pressed = new double[cells];
    hottestAt = new double[cells];
    counted = new double[cells];
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
    for (int step = 0; step < plain.steps(); step++) {
      look(step + 1);
    }
    int near = (int) mostAt;
    if (near == 0) {
      return;
    }
    java.util.Arrays.fill(hottest, 0);
    for (int step = 0; step < near - 1; step++) {
      heat(step + 1);
    }
    int last = Math.min(near + 1, plain.steps());
    for (int k = 1; k <= (last - near + 1) * PARTS; k++) {
      look(near - 1 + (double) k / PARTS);
    }
  }

  private void look(double moment) {
    heat(moment);
    double drip = pressedOut() - drawn(plain, moment);
    if (drip > most) {
      most = drip;
      mostAt = moment;
      System.arraycopy(hottestAt, 0, counted, 0, counted.length);
    }
  }

  private void heat(double moment) {
    for (int i = 0; i < hottest.length; i++) {
      double temperature = temperature(plain, moment, i);
      if (temperature > hottest[i]) {
        hottest[i] = temperature;
        hottestAt[i] = moment;
        pressed[i] = STALE;
      }
    }
  }

  private double moved(Trajectory trajectory) {
    if (mostAt == 0) {
      return 0;
    }
    for (int i = 0; i < hottest.length; i++) {
      hottest[i] = temperature(trajectory, counted[i], i);
      pressed[i] = STALE;
    }
    return pressedOut() - drawn(trajectory, mostAt);
  }

  private double temperature(Trajectory trajectory, double moment, int i) {
    int step = step(moment);
    return trajectory.cellIn(step, first + i, moment - step);
  }

  private double drawn(Trajectory trajectory, double moment) {
    int step = step(moment);
    return trajectory.drawn(step, face, moment - step);
  }

  private static int step(double moment) {
    return (int) Math.ceil(moment) - 1;
  }

  /** Mean over the volume behind the face. */
  private double pressedOut() {
    Grid grid = plain.grid();
    double sum = 0;
    double volume = 0;
    for (int i = 0; i < hottest.length; i++) {
      if (pressed[i] == STALE) {
        pressed[i] = moisture.pressedOut(hottest[i]);
      }
      sum += grid.volume(first + i) * pressed[i];
      volume += grid.volume(first + i);
    }
    return depth * sum / volume;
  }
}
