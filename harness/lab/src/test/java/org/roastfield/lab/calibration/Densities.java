package org.roastfield.lab.calibration;

import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Densities whose moments and integrals are known, and wide priors to start from. */
final class Densities {

  private Densities() {}

  /** Two offsets around 0 whose bounds do not matter. */
  static Prior wide(double spread) {
    return within(spread, 1000);
  }

  /** Two offsets around 0, cut off at ± a bound. */
  static Prior within(double spread, double bound) {
    return Prior.of(
        ParameterSet.of(
            Parameter.offset("first", "K", Owner.COOKER, spread, -bound, bound, "made up"),
            Parameter.offset("second", "K", Owner.CUT, spread, -bound, bound, "made up")));
  }

  /** Mean (1, −2), variances 4 and 0.25, correlation 0.8; its integral is 2π 0.6. */
  static double normal(double[] z) {
    double a = (z[0] - 1) / 2;
    double b = (z[1] + 2) / 0.5;
    return -0.5 * (a * a - 1.6 * a * b + b * b) / 0.36;
  }

  /** The first is standard normal, the second normal around half its square; integral 2π. */
  static double bent(double[] z) {
    double b = z[1] - 0.5 * z[0] * z[0];
    return -0.5 * (z[0] * z[0] + b * b);
  }

  /**
   * The first is at −4 ± 0.4 with weight 0.3 and at 4 ± 0.6 with 0.7, the second standard normal;
   * integral 1.
   */
  static double twoPeaks(double[] z) {
    double left = 0.3 / 0.4 * Math.exp(-0.5 * (z[0] + 4) * (z[0] + 4) / 0.16);
    double right = 0.7 / 0.6 * Math.exp(-0.5 * (z[0] - 4) * (z[0] - 4) / 0.36);
    return Math.log(left + right) - 0.5 * z[1] * z[1] - Math.log(2 * Math.PI);
  }

  /** That of a prior of {@link #wide} or {@link #within}, not cut off. */
  static double logPrior(double spread, double[] z) {
    return -0.5 * (z[0] * z[0] + z[1] * z[1]) / (spread * spread)
        - Math.log(2 * Math.PI * spread * spread);
  }
}
