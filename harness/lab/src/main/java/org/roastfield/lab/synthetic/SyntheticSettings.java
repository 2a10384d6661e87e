package org.roastfield.lab.synthetic;

/**
 * How a made-up log departs from its computation. All of it is assumed, from the ranges that the
 * project's physics page gives for a charcoal pit.
 *
 * @param interval between rows [s]
 * @param chamberDeviation standard deviation of the chamber's drift [K]
 * @param chamberCorrelation its correlation time [s]
 * @param lidInterval mean time between lid openings [s]
 * @param probeDeviation standard deviation of the probes' error [K]
 * @param probeCorrelation correlation time of the core probe's error [s]
 * @param resolution last digit of the readings [K]
 * @param lost share of core readings that are missing
 */
public record SyntheticSettings(
    double interval,
    double chamberDeviation,
    double chamberCorrelation,
    double lidInterval,
    double probeDeviation,
    double probeCorrelation,
    double resolution,
    double lost) {

  /**
   * One row a minute; drift of 6 K over 30 min; the lid opened once an hour; probe error of 0.3 K
   * over 7 min; tenths; one reading in 200 lost.
   */
  public static SyntheticSettings withDefaults() {
    return new SyntheticSettings(60, 6, 1800, 3600, 0.3, 420, 0.1, 0.005);
  }

  /** The fire of these settings; it does not sag. */
  Fire fire() {
    return new Fire(chamberDeviation, chamberCorrelation, lidInterval, Double.POSITIVE_INFINITY);
  }
}
