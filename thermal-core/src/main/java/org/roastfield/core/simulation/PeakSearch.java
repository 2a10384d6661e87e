package org.roastfield.core.simulation;

import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.Trajectory;

/**
 * Finds the highest value of a reading: a scan of the steps, then golden-section search around the
 * best sample.
 */
final class PeakSearch {

  private static final int SAMPLES_PER_STEP = 8;
  private static final double GOLDEN = 0.6180339887498949;
  private static final double TIME_TOLERANCE = 1e-3;

  private final Trajectory trajectory;
  private final Reading reading;

  PeakSearch(Trajectory trajectory, Reading reading) {
    this.trajectory = trajectory;
    this.reading = reading;
  }

  Peak between(double from, double to) {
    double bestTime = from;
    double best = trajectory.at(reading, from);
    double spacing = 0;
    for (int step = trajectory.stepAt(from); step < trajectory.steps(); step++) {
      double start = Math.max(from, trajectory.stepStart(step));
      double end = Math.min(to, trajectory.stepEnd(step));
      for (int j = 1; j <= SAMPLES_PER_STEP && end > start; j++) {
        double time = start + (end - start) * j / SAMPLES_PER_STEP;
        double value = trajectory.inStep(reading, step, time);
        if (value > best) {
          best = value;
          bestTime = time;
          spacing = Math.max(spacing, (end - start) / SAMPLES_PER_STEP);
        }
      }
    }
    return refine(from, to, bestTime, best, spacing);
  }

  private Peak refine(double from, double to, double bestTime, double best, double spacing) {
    double a = Math.max(from, bestTime - 2 * spacing);
    double b = Math.min(to, bestTime + 2 * spacing);
    while (b - a > TIME_TOLERANCE) {
      double left = b - GOLDEN * (b - a);
      double right = a + GOLDEN * (b - a);
      if (trajectory.at(reading, left) > trajectory.at(reading, right)) {
        b = right;
      } else {
        a = left;
      }
    }
    double time = 0.5 * (a + b);
    double value = trajectory.at(reading, time);
    double last = trajectory.at(reading, to);
    double first = trajectory.at(reading, from);
    if (last >= Math.max(value, best)) {
      return new Peak(to, last, false);
    }
    if (first >= Math.max(value, best)) {
      return new Peak(from, first, false);
    }
    return value >= best ? new Peak(time, value, true) : new Peak(bestTime, best, true);
  }
}
