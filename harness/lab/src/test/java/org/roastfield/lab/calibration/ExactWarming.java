package org.roastfield.lab.calibration;

import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * The posterior of a {@link WarmingStudy} with nothing approximated: logarithms of drift, its time
 * and noise are coordinates like the others, and errors are normal as they were made.
 */
final class ExactWarming {

  static final Prior PRIOR = Prior.of(parameters());

  private ExactWarming() {}

  private static ParameterSet parameters() {
    return WarmingStudy.PRIOR
        .parameters()
        .with(Parameter.offset("drift", "1", Owner.PROBE, 0.5, -9, 9, "as in the library"))
        .with(Parameter.offset("time", "1", Owner.PROBE, 0.5, -9, 9, "as in the library"))
        .with(Parameter.offset("noise", "1", Owner.PROBE, 0.3, -9, 9, "as in the library"));
  }

  static LogDensity density(Series series) {
    return z -> {
      double sum = 0;
      for (int p = 0; p < z.length; p++) {
        double w = (z[p] - PRIOR.mean()[p]) / PRIOR.spread(p);
        sum -= 0.5 * w * w;
      }
      return sum + logLikelihood(z, series);
    };
  }

  /** By the filter of the drift, written out for even times. */
  private static double logLikelihood(double[] z, Series series) {
    double[] computed = new double[series.size()];
    WarmingStudy.model(z, computed, null);
    double stationary = Math.pow(ErrorModel.CORE.driftSpread() * Math.exp(z[3]), 2);
    double kept = Math.exp(-WarmingStudy.STEP / (ErrorModel.CORE.driftTime() * Math.exp(z[4])));
    double white = Math.pow(ErrorModel.CORE.noise() * Math.exp(z[5]), 2);
    double drift = 0;
    double variance = stationary;
    double sum = 0;
    for (int k = 0; k < computed.length; k++) {
      double error = series.value(k) - computed[k] - drift;
      double total = variance + white;
      sum -= 0.5 * (error * error / total + Math.log(total));
      double share = variance / total;
      drift = kept * (drift + share * error);
      variance = kept * kept * variance * (1 - share) + stationary * (1 - kept * kept);
    }
    return sum;
  }
}
