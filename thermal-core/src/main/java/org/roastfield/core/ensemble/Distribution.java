package org.roastfield.core.ensemble;

import org.roastfield.core.internal.Check;

/** One outcome over the members that reached it. Immutable. */
public final class Distribution {

  private final double[] sorted;

  private Distribution(double[] sorted) {
    this.sorted = sorted;
  }

  /** Distribution of the finite ones among values; not modified. */
  public static Distribution of(double[] values) {
    double[] finite = new double[values.length];
    int count = 0;
    for (double value : values) {
      if (Math.abs(value) <= Double.MAX_VALUE) {
        finite[count++] = value;
      }
    }
    double[] sorted = java.util.Arrays.copyOf(finite, count);
    java.util.Arrays.sort(sorted);
    return new Distribution(sorted);
  }

  /** How many members reached the outcome. */
  public int size() {
    return sorted.length;
  }

  /**
   * Value below which a share of the members lies, by linear interpolation between order
   * statistics, definition 7 of [HyndmanFan1996].
   *
   * @param probability in [0, 1]
   * @throws IllegalStateException if no member reached the outcome
   */
  public double quantile(double probability) {
    Check.inRange("probability", probability, 0, 1);
    if (sorted.length == 0) {
      throw new IllegalStateException("no member reached this outcome");
    }
    double place = probability * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /** Quantile of one half. */
  public double median() {
    return quantile(0.5);
  }

  /** Share of the members at or below a value, in [0, 1]; NaN if there is none. */
  public double shareUpTo(double value) {
    int count = 0;
    while (count < sorted.length && sorted[count] <= value) {
      count++;
    }
    return (double) count / sorted.length;
  }
}
