package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Times that draws are kept for in the computations that weigh a pull, before their sear or after
 * their rest, and values between them: through three of them by a parabola, straight to a longest.
 */
final class Helds {

  /** The core does little that is new after that [s]. */
  private static final double LONG = 5400;

  private final double[] times;

  /**
   * @param longest that is of interest [s], at least 0
   */
  Helds(double longest) {
    double most = Math.min(longest, LONG);
    this.times = DoubleStream.of(0, most / 3, most, longest).distinct().toArray();
  }

  /** In order; the first is 0. */
  double[] times() {
    return times.clone();
  }

  int size() {
    return times.length;
  }

  /**
   * Weights of values at these times.
   *
   * @param held [s]; beyond the longest as there
   */
  double[] weights(double held) {
    double[] weights = new double[times.length];
    double at = Math.max(0, Math.min(held, times[times.length - 1]));
    if (times.length == 1) {
      weights[0] = 1;
    } else if (at > times[2]) {
      weights[3] = (at - times[2]) / (times[3] - times[2]);
      weights[2] = 1 - weights[3];
    } else {
      for (int k = 0; k < 3; k++) {
        double first = times[(k + 1) % 3];
        double second = times[(k + 2) % 3];
        weights[k] = (at - first) * (at - second) / ((times[k] - first) * (times[k] - second));
      }
    }
    return weights;
  }

  @Override
  public String toString() {
    return Arrays.toString(times);
  }
}
