package org.roastfield.core.plan;

import java.util.Arrays;
import org.roastfield.core.internal.Check;

/**
 * A number over all draws: the quantiles 0.1, 0.5 and 0.9. Infinite where so many draws never get
 * there.
 *
 * @param low value that one draw in ten is below
 * @param median value that half are below
 * @param high value that nine in ten are below
 */
public record Spread(double low, double median, double high) {

  /** Of the values of all draws; positive infinity for one that never gets there. Not modified. */
  static Spread of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Spread(quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9));
  }

  /** Quantile of values in any order; not modified. */
  static double quantile(double probability, double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return quantile(sorted, probability);
  }

  /** Definition 7 of [HyndmanFan1996], as {@code Distribution} has it, with infinities. */
  private static double quantile(double[] sorted, double probability) {
    double place = Check.inRange("probability", probability, 0, 1) * (sorted.length - 1);
    int below = (int) Math.floor(place);
    double share = place - below;
    double low = sorted[below];
    return share == 0 || low == sorted[below + 1] ? low : low + share * (sorted[below + 1] - low);
  }

  /** The same, later or hotter by a number. */
  Spread plus(double shift) {
    return new Spread(low + shift, median + shift, high + shift);
  }
}
