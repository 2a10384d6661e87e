package org.roastfield.core.chamber;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * Steps a fire through time: an explicit pair of orders 3 and 2 [BogackiShampine1989] with its
 * cubic between steps. The gas is in balance, so nothing faster than minutes is left to step over;
 * steps end where something is done.
 */
final class FireRun {

  static final int WALL = 0;
  static final int STRENGTH = 1;
  static final int RELEASED = 2;
  static final int WALL_LOSS = 3;
  static final int FLUE_LOSS = 4;
  static final int LOAD = 5;
  static final int SIZE = 6;

  /** Error of a step that is let pass: of the wall [K], of the strength as a share of the bed's. */
  private static final double WALL_ERROR = 2e-3;

  private static final double STRENGTH_ERROR = 1e-5;
  private static final double LONGEST = 900;
  private static final double SHORTEST = 1e-6;
  private static final double FIRST = 1;
  private static final int MOST_STEPS = 1_000_000;

  private final FirePit pit;
  private final Outside outside;
  private final FireMoment moment;
  private double initialFuel;

  FireRun(FirePit pit, Outside outside) {
    this.pit = pit;
    this.outside = outside;
    moment = new FireMoment(pit, outside);
  }

  FireCourse run(FireState start, List<Tending> tending, double until) {
    Check.inRange("number of tending steps", tending.size(), 1, 10_000);
    for (int k = 0; k < tending.size(); k++) {
      double next = k + 1 < tending.size() ? tending.get(k + 1).start() : until;
      if (!(next > tending.get(k).start() && next <= Double.MAX_VALUE)) {
        throw new IllegalArgumentException(
            "tending must go on in time, but step "
                + k
                + " from "
                + tending.get(k).start()
                + " s ends at "
                + next
                + " s");
      }
    }
    initialFuel = start.fuel();
    List<FireStep> steps = new ArrayList<>();
    double[] y = new double[SIZE];
    y[WALL] = start.wallTemperature();
    y[STRENGTH] = start.strength();
    for (int k = 0; k < tending.size(); k++) {
      double end = k + 1 < tending.size() ? tending.get(k + 1).start() : until;
      y = pass(steps, tending.get(k), y, end);
    }
    return new FireCourse(pit, outside, start, steps);
  }

  private double[] pass(List<FireStep> steps, Tending step, double[] begin, double end) {
    moment.tend(step);
    double t = step.start();
    double[] y = begin;
    double[] slope = slope(y);
    double h = FIRST;
    while (t < end) {
      Check.inRange("number of steps", steps.size(), 0, MOST_STEPS);
      boolean last = t + 1.001 * h >= end;
      double size = last ? end - t : h;
      double[] second = slope(moved(y, size / 2, slope));
      double[] third = slope(moved(y, 3 * size / 4, second));
      double[] next = new double[SIZE];
      for (int i = 0; i < SIZE; i++) {
        next[i] = y[i] + size * (2 * slope[i] + 3 * second[i] + 4 * third[i]) / 9;
      }
      double[] nextSlope = slope(next);
      double error = 0;
      for (int i = 0; i <= STRENGTH; i++) {
        double e = size * (-5 * slope[i] + 6 * second[i] + 8 * third[i] - 9 * nextSlope[i]) / 72;
        double scale = i == WALL ? WALL_ERROR : STRENGTH_ERROR * pit.bed().power();
        error = Math.max(error, Math.abs(e) / scale);
      }
      if (error <= 1 || size <= SHORTEST) {
        steps.add(new FireStep(t, last ? end : t + size, step, y, next, slope, nextSlope));
        t = last ? end : t + size;
        y = next;
        slope = nextSlope;
      }
      double factor = error > 0 ? 0.9 / StrictMath.cbrt(error) : 5;
      h = Math.min(LONGEST, size * Math.max(0.2, Math.min(5, factor)));
    }
    return y;
  }

  private static double[] moved(double[] y, double size, double[] slope) {
    double[] moved = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      moved[i] = y[i] + size * slope[i];
    }
    return moved;
  }

  private double[] slope(double[] y) {
    double fuel = initialFuel - y[RELEASED] / pit.bed().heatingValue();
    moment.at(y[WALL], y[STRENGTH], fuel);
    return new double[] {
      moment.wallGain() / pit.walls().capacity(),
      moment.spread(),
      moment.power(),
      moment.wallLoss(),
      moment.flueLoss(),
      moment.load()
    };
  }
}
