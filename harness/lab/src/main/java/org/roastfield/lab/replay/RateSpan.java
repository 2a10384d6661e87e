package org.roastfield.lab.replay;

/**
 * Two temperatures between which a heating rate is taken.
 *
 * @param low [K]
 * @param high [K], above {@code low}
 */
public record RateSpan(double low, double high) {

  /**
   * @throws IllegalArgumentException if {@code high} is not above {@code low}
   */
  public RateSpan {
    if (!(high > low)) {
      throw new IllegalArgumentException("high must be above " + low + " K, was " + high + " K");
    }
  }
}
