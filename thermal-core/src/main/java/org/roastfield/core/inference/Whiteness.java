package org.roastfield.core.inference;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.roastfield.core.internal.Check;

/**
 * Whether numbers look like independent draws of unit variance, as whitened residuals do where
 * model and errors are right.
 *
 * @param count how many numbers
 * @param mean of them: 0 but for a spread of 1/√count
 * @param squares their sum of squares: count but for a spread of √(2 count)
 * @param lags how many autocorrelations are tested, at most {@link #LAGS}, a quarter of the count
 * @param portmanteau statistic of [LjungBox1978] over these lags, 0 without any
 */
public record Whiteness(int count, double mean, double squares, int lags, double portmanteau) {

  /** Lags that are tested where there are numbers enough: assumed. */
  public static final int LAGS = 12;

  /**
   * Looks at numbers in order of time.
   *
   * @param numbers finite, at least one
   * @throws IllegalArgumentException if there are none or one is not finite
   */
  public static Whiteness of(double... numbers) {
    Check.inRange("count of numbers", numbers.length, 1, Integer.MAX_VALUE);
    double sum = 0;
    double squares = 0;
    for (double each : numbers) {
      sum += Check.finite("number", each);
      squares += each * each;
    }
    int n = numbers.length;
    double mean = sum / n;
    int lags = Math.min(LAGS, n / 4);
    return new Whiteness(n, mean, squares, lags, portmanteau(numbers, mean, lags));
  }

  private static double portmanteau(double[] numbers, double mean, int lags) {
    int n = numbers.length;
    double variance = lagged(numbers, mean, 0);
    double sum = 0;
    for (int lag = 1; lag <= lags && variance > 0; lag++) {
      double correlation = lagged(numbers, mean, lag) / variance;
      sum += correlation * correlation / (n - lag);
    }
    return n * (n + 2.0) * sum;
  }

  private static double lagged(double[] numbers, double mean, int lag) {
    double sum = 0;
    for (int k = lag; k < numbers.length; k++) {
      sum += (numbers[k] - mean) * (numbers[k - lag] - mean);
    }
    return sum;
  }

  /** Chance that independent numbers are as correlated as these; 1 without lags. */
  public double chanceOfCorrelation() {
    return lags == 0 ? 1 : chance(lags, portmanteau);
  }

  /** Chance that numbers of unit variance have as large a sum of squares. */
  public double chanceOfSquares() {
    return chance(count, squares);
  }

  /** Chance that χ² of some degrees of freedom is at least a value. */
  static double chance(int degrees, double value) {
    return 1 - new ChiSquaredDistribution(null, degrees).cumulativeProbability(value);
  }
}
