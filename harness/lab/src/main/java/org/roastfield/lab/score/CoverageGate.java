package org.roastfield.lab.score;

import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * A bar for coverage: the share of covered cooks has to lie between two numbers. What true coverage
 * it lets pass, and how often, is the measure of its worth.
 *
 * @param low least share, in [0, 1]
 * @param high greatest share, in [{@code low}, 1]
 */
public record CoverageGate(double low, double high) {

  private static final double ROUNDING = 1e-9;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is outside its range
   */
  public CoverageGate {
    Check.inRange("high", high, 0, 1);
    Check.inRange("low", low, 0, high);
  }

  /** Whether a coverage is inside; the ends are. */
  public boolean passes(Coverage coverage) {
    return coverage.covered() >= least(coverage.cooks())
        && coverage.covered() <= greatest(coverage.cooks());
  }

  /**
   * How probable it is that independent cooks pass.
   *
   * @param cooks how many, at least 1
   * @param coverage the probability that each is covered, in [0, 1]
   */
  public double chanceOfPassing(int cooks, double coverage) {
    Check.atLeast("cooks", cooks, 1);
    Check.inRange("coverage", coverage, 0, 1);
    BinomialDistribution binomial = new BinomialDistribution(null, cooks, coverage);
    return binomial.cumulativeProbability(least(cooks) - 1, greatest(cooks));
  }

  private int least(int cooks) {
    return (int) Math.ceil(low * cooks - ROUNDING);
  }

  private int greatest(int cooks) {
    return (int) Math.floor(high * cooks + ROUNDING);
  }
}
