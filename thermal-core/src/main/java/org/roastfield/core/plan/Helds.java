package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Times that draws are held for in the computations that weigh a pull, before their sear or after
 * their rest, and values between them: straight in 1 − exp(−t/τ), since what a wait does it does
 * soon, with 1 + x + x²/2 + x³/6 for exp x, x = t/τ: weights are asked for at every rule that is
 * tried.
 */
final class Helds {

  /** Beyond that a single time is enough [s]. */
  private static final double LONG = 5400;

  /** Shares of it at which draws are held. */
  private static final double EARLY = 1.0 / 6;

  private static final double LATER = 5.0 / 12;

  /** Of what a wait does, τ [s]; assumed, it only shapes what is between computed times. */
  private static final double TIME = 1200;

  private final double[] times;

  /** What a wait of each of them has done. */
  private final double[] done;

  /**
   * @param longest that is of interest [s], at least 0
   */
  Helds(double longest) {
    double most = Math.min(longest, LONG);
    times = DoubleStream.of(0, EARLY * most, LATER * most, most, longest).distinct().toArray();
    done = Arrays.stream(times).map(Helds::done).toArray();
  }

  /** In order; the first is 0. */
  double[] times() {
    return times.clone();
  }

  /**
   * Weights of values at these times.
   *
   * @param held [s]; beyond the longest as there
   */
  double[] weights(double held) {
    double[] weights = new double[times.length];
    int last = times.length - 1;
    if (held <= 0 || last == 0) {
      weights[0] = 1;
      return weights;
    }
    int above = 1;
    while (above < last && times[above] < held) {
      above++;
    }
    double from = done[above - 1];
    double now = held < times[last] ? done(held) : done[last];
    double share = (now - from) / (done[above] - from);
    weights[above - 1] = 1 - share;
    weights[above] = share;
    return weights;
  }

  private static double done(double held) {
    double x = held / TIME;
    double toThere = x * (1 + x * (1.0 / 2 + x / 6));
    return toThere / (1 + toThere);
  }
}
