package org.roastfield.lab.heldout;

/** The forecast of a ruler on the plot: least squares through the last half hour, drawn on. */
final class StraightLine {

  /** How much of the log it goes through [s]. */
  private static final double LENGTH = 1800;

  private StraightLine() {}

  /**
   * When the line gets to a target [s]; the horizon if it does not.
   *
   * @param times of readings up to now, the last one now [s]
   * @param readings as many or more
   */
  static double crossing(double[] times, double[] readings, double target, double horizon) {
    double now = times[times.length - 1];
    double count = 0;
    double sumTime = 0;
    double sumReading = 0;
    for (int k = 0; k < times.length; k++) {
      if (times[k] >= now - LENGTH) {
        count++;
        sumTime += times[k];
        sumReading += readings[k];
      }
    }
    double middle = sumTime / count;
    double level = sumReading / count;
    double rise = 0;
    double length = 0;
    for (int k = 0; k < times.length; k++) {
      if (times[k] >= now - LENGTH) {
        rise += (times[k] - middle) * (readings[k] - level);
        length += (times[k] - middle) * (times[k] - middle);
      }
    }
    if (!(length > 0 && rise > 0)) {
      return horizon;
    }
    double time = middle + (target - level) * length / rise;
    return Math.max(now, Math.min(horizon, time));
  }
}
