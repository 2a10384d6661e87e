package org.roastfield.lab.calibration;

/**
 * What the ranks of one quantity say.
 *
 * @param quantity its name
 * @param chiSquared probability of counts as uneven as these, if ranks are uniform
 * @param kolmogorovSmirnov probability of a distribution as far from uniform
 * @param together the smaller of the two, after Holm's correction for all tests of all quantities
 * @param mean of the ranks over their number: 0.5 if right, above if posteriors lie too low
 * @param spread mean square of the ranks' distance from the middle over that of a uniform
 *     distribution: 1 if right, above if posteriors are too narrow or off to either side, below if
 *     too wide
 */
public record RankVerdict(
    String quantity,
    double chiSquared,
    double kolmogorovSmirnov,
    double together,
    double mean,
    double spread) {}
