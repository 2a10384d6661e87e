package org.roastfield.lab.score;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Distributions whose scores are known in closed form. */
final class Laws {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final double[] PROBABILITIES =
      IntStream.range(0, 999).mapToDouble(i -> (i + 0.5) / 999).toArray();
  private static final double[] QUANTILES =
      Arrays.stream(PROBABILITIES).map(Laws::normalQuantile).toArray();

  private Laws() {}

  static double normalQuantile(double probability) {
    return NORMAL.inverseCumulativeProbability(probability);
  }

  static double normalShare(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  static double exponentialQuantile(double probability) {
    return -Math.log1p(-probability);
  }

  /** CRPS of a normal distribution [GneitingRaftery2007]. */
  static double normalCrps(double mean, double deviation, double outcome) {
    double z = (outcome - mean) / deviation;
    double share = NORMAL.cumulativeProbability(z);
    return deviation * (z * (2 * share - 1) + 2 * NORMAL.density(z) - 1 / Math.sqrt(Math.PI));
  }

  /** Even quantiles of a law, at the middles of {@code count} steps of probability. */
  static Predictive quantiles(int count, DoubleUnaryOperator quantile) {
    double[] probabilities = new double[count];
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      probabilities[i] = (i + 0.5) / count;
      values[i] = quantile.applyAsDouble(probabilities[i]);
    }
    return Predictive.ofQuantiles(probabilities, values);
  }

  /** Normal forecast by 999 of its quantiles. */
  static Predictive normal(double mean, double deviation) {
    double[] values = new double[PROBABILITIES.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = mean + deviation * QUANTILES[i];
    }
    return Predictive.ofQuantiles(PROBABILITIES, values);
  }
}
