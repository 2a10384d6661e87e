package org.roastfield.lab.score;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * How often intervals held what came, and how wide they were.
 *
 * @param level that they were said to hold with, in (0, 1)
 * @param covered how many did
 * @param cooks of how many, at least 1
 * @param width mean of their widths, in the unit of the outcome
 */
public record Coverage(double level, int covered, int cooks, double width) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public Coverage {
    Check.inside("level", level, 0, 1);
    Check.atLeast("cooks", cooks, 1);
    Check.inRange("covered", covered, 0, cooks);
    Check.notNegative("width", width);
  }

  /** Share of the cooks that were covered. */
  public double share() {
    return (double) covered / cooks;
  }

  /**
   * What the share might be over ever more such cooks: the exact binomial interval, which holds it
   * with at least its confidence, of independent cooks [ClopperPearson1934].
   *
   * @param confidence in (0, 1)
   */
  public Interval shareInterval(double confidence) {
    Check.inside("confidence", confidence, 0, 1);
    double tail = (1 - confidence) / 2;
    int missed = cooks - covered;
    double low = covered == 0 ? 0 : beta(covered, missed + 1.0, tail);
    double high = missed == 0 ? 1 : 1 - beta(missed, covered + 1.0, tail);
    return new Interval(confidence, low, high);
  }

  private static double beta(double a, double b, double probability) {
    return new BetaDistribution(null, a, b, 1e-12).inverseCumulativeProbability(probability);
  }
}
