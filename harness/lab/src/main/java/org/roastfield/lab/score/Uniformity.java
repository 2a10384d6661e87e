package org.roastfield.lab.score;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;

/**
 * Whether numbers in [0, 1], such as probability integral transforms or ranks over their number,
 * are drawn evenly. The two tests see different faults: χ² a wrong width, Kolmogorov's a bias.
 */
public final class Uniformity {

  /** Numbers that each bin has to expect: with fewer χ² is a bad stand-in, by Cochran's rule. */
  public static final int LEAST_EXPECTED = 5;

  /** What a probability may miss [0, 1] by: Commons Math adds up a series. */
  private static final double ROUNDING = 1e-9;

  private Uniformity() {}

  /**
   * How many numbers fall in each of equal bins; 1 into the last.
   *
   * @param numbers in [0, 1]; not modified
   * @param bins at least 2
   * @return counts, [bins]
   */
  public static int[] counts(double[] numbers, int bins) {
    Check.atLeast("bins", bins, 2);
    int[] counts = new int[bins];
    for (double number : numbers) {
      Check.inRange("numbers", number, 0, 1);
      counts[Math.min(bins - 1, (int) (number * bins))]++;
    }
    return counts;
  }

  /**
   * How many of some numbers a bin holds if they are drawn evenly: the exact binomial's central
   * range, which holds a count with at least its level.
   *
   * @param numbers how many, at least 1
   * @param bins at least 2
   * @param level in (0, 1)
   */
  public static Interval expectedCount(int numbers, int bins, double level) {
    Check.atLeast("numbers", numbers, 1);
    Check.atLeast("bins", bins, 2);
    Check.inside("level", level, 0, 1);
    BinomialDistribution count = new BinomialDistribution(null, numbers, 1.0 / bins);
    return new Interval(
        level,
        count.inverseCumulativeProbability((1 - level) / 2),
        count.inverseCumulativeProbability((1 + level) / 2));
  }

  /**
   * Pearson's χ² test.
   *
   * @param numbers in [0, 1], independent, at least five times as many as {@code bins}; not
   *     modified
   * @param bins at least 2
   * @return probability that even numbers differ at least as much, in [0, 1]
   */
  public static double chiSquared(double[] numbers, int bins) {
    int[] counts = counts(numbers, bins);
    Check.atLeast("numbers", numbers.length, LEAST_EXPECTED * bins);
    double expected = (double) numbers.length / bins;
    double sum = 0;
    for (int count : counts) {
      sum += (count - expected) * (count - expected) / expected;
    }
    return 1 - new ChiSquaredDistribution(null, bins - 1).cumulativeProbability(sum);
  }

  /**
   * The Kolmogorov-Smirnov test.
   *
   * @param numbers in [0, 1], independent, at least 2; not modified
   * @return probability that even numbers stray at least as far, in [0, 1]
   */
  public static double kolmogorovSmirnov(double[] numbers) {
    Check.atLeast("numbers", numbers.length, 2);
    for (double number : numbers) {
      Check.inRange("numbers", number, 0, 1);
    }
    double probability =
        new KolmogorovSmirnovTest()
            .kolmogorovSmirnovTest(new UniformRealDistribution(null, 0, 1), numbers);
    return Math.max(0, Math.min(1, Check.inRange("p", probability, -ROUNDING, 1 + ROUNDING)));
  }
}
