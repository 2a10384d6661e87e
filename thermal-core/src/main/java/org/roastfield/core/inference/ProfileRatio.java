package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;

/**
 * How much more probable logs are with a cooker's profile than with what is believed of cookers in
 * general, as logarithms [nat]. Of all flags that are up as seldom for the right cooker, the one by
 * this ratio is up most often for another: that is what it is compared with.
 *
 * @param cores by what the cuts' probes and scales show
 * @param chambers by what the chambers' probes show
 */
public record ProfileRatio(double cores, double chambers) {

  /**
   * From so many times more probable without the profile the logs are taken to be of another
   * cooker. Set on made-up cookers of three seeds, at half of a cook: one in 30 of the right
   * profiles is flagged so and 57 in 100 of the wrong ones. With two seeds, run after it was set,
   * it is 7 and 42 in 100.
   */
  public static final double TIMES = 4;

  /**
   * @throws IllegalArgumentException if a number is not finite
   */
  public ProfileRatio {
    Check.finite("cores", cores);
    Check.finite("chambers", chambers);
  }

  /**
   * Of the same logs, found with the profile and without.
   *
   * @param chambers see {@link ChamberEstimate#logRatio}
   * @throws IllegalArgumentException if one was not found
   */
  public static ProfileRatio of(MapEstimate with, MapEstimate without, double chambers) {
    return new ProfileRatio(with.logEvidence() - without.logEvidence(), chambers);
  }

  /** By everything [nat]. */
  public double all() {
    return cores + chambers;
  }

  /** Whether the logs are taken to be of another cooker. */
  public boolean isAnother() {
    return all() < -StrictMath.log(TIMES);
  }
}
