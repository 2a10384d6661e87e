package org.roastfield.core.integration;

/**
 * Difference quotients of several numbers next to a kink: the side counts that the kink is not on,
 * which is the one whose quotient is the same over a much smaller step. At the kink itself, and
 * where only the slope changes fast, both count. Scratch memory.
 */
final class KinkedQuotient {

  /** Share of a step in which a kink is looked for. */
  static final double NEAR = 1e-3;

  /** Difference of the two sides of a quotient, over their size, from which there is a kink. */
  private static final double BENT = 0.01;

  /** Share of a number that its rise and fall may differ by for round-off. */
  private static final double ROUND_OFF = 1e-11;

  /** The numbers at {@link #NEAR} of the step up. */
  final double[] high;

  /** The numbers at {@link #NEAR} of the step down. */
  final double[] low;

  KinkedQuotient(int numbers) {
    high = new double[numbers];
    low = new double[numbers];
  }

  /** Whether one of the numbers rises otherwise than it falls. */
  boolean isBent(double[] value, double[] above, double[] below) {
    for (int i = 0; i < value.length; i++) {
      if (isBent(value[i], above[i], below[i])) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBent(double value, double above, double below) {
    double rise = above - value;
    double fall = value - below;
    double apart = Math.abs(rise - fall);
    return apart > BENT * Math.max(Math.abs(rise), Math.abs(fall))
        && apart > ROUND_OFF * Math.abs(value);
  }

  /**
   * Takes the side without the kink for each number that is bent.
   *
   * @param above the numbers a step up
   * @param below the numbers a step down
   * @param slopes quotients over both sides; changed
   */
  void aside(double[] value, double[] above, double[] below, double step, double[] slopes) {
    for (int i = 0; i < value.length; i++) {
      if (!isBent(value[i], above[i], below[i])) {
        continue;
      }
      double rise = (above[i] - value[i]) / step;
      double fall = (value[i] - below[i]) / step;
      double riseChange = Math.abs(rise - (high[i] - value[i]) / (NEAR * step));
      double fallChange = Math.abs(fall - (value[i] - low[i]) / (NEAR * step));
      double least = BENT * Math.abs(rise - fall);
      if (riseChange > least && riseChange > 2 * fallChange) {
        slopes[i] = fall;
      } else if (fallChange > least && fallChange > 2 * riseChange) {
        slopes[i] = rise;
      }
    }
  }
}
