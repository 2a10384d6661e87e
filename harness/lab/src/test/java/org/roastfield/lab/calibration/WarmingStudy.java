package org.roastfield.lab.calibration;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Normal;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * The library's own calibration on a body that warms exponentially, with errors that drift and of
 * which no more than the prior is known: cheap, and not linear in its coordinates.
 */
final class WarmingStudy implements SimulatedStudy<WarmingStudy.Logged> {

  /** A fitted log. */
  record Logged(Calibration calibration, MapEstimate estimate) {}

  private static final int N = 60;
  static final double STEP = 300;
  private static final double[] TIMES = new double[N];

  static {
    for (int k = 0; k < N; k++) {
      TIMES[k] = STEP * k;
    }
  }

  static final Prior PRIOR =
      Prior.of(
          ParameterSet.of(
              Parameter.multiplier("rate", Owner.COOKER, 0.3, 0.1, 10, "made up"),
              Parameter.multiplier("rise", Owner.CUT, 0.1, 0.3, 3, "made up"),
              Parameter.offset("start", "K", Owner.CUT, 1.5, -20, 20, "made up")));

  private final ImportanceSampler sampler;

  WarmingStudy(ImportanceSampler sampler) {
    this.sampler = sampler;
  }

  static boolean model(double[] z, double[] predicted, double @Nullable [][] derivatives) {
    for (int k = 0; k < N; k++) {
      double exponent = Math.exp(z[0]) * TIMES[k] / 14_400;
      double left = Math.exp(-exponent);
      double rise = 60 * Math.exp(z[1]);
      predicted[k] = rise * (1 - left) + z[2];
      if (derivatives != null) {
        derivatives[0][k] = rise * left * exponent;
        derivatives[1][k] = rise * (1 - left);
        derivatives[2][k] = 1;
      }
    }
    return true;
  }

  @Override
  public double[] truth(RandomGenerator random) {
    double[] truth = PRIOR.mean();
    for (int p = 0; p < truth.length; p++) {
      truth[p] += PRIOR.spread(p) * Normal.standard(random);
    }
    return truth;
  }

  @Override
  public Logged data(double[] truth, RandomGenerator random) {
    ErrorModel usual = ErrorModel.CORE;
    ErrorModel errors =
        new ErrorModel(
            usual.driftSpread() * Math.exp(0.5 * Normal.standard(random)),
            usual.driftTime() * Math.exp(0.5 * Normal.standard(random)),
            usual.noise() * Math.exp(0.3 * Normal.standard(random)),
            0);
    double[] values = new double[N];
    model(truth, values, null);
    double memory = Math.exp(-STEP / errors.driftTime());
    double drift = errors.driftSpread() * Normal.standard(random);
    for (int k = 0; k < N; k++) {
      values[k] += drift + errors.noise() * Normal.standard(random);
      drift =
          memory * drift
              + errors.driftSpread() * Math.sqrt(1 - memory * memory) * Normal.standard(random);
    }
    Series series = Series.of("core", TIMES, values, ErrorModel.CORE);
    Calibration calibration =
        Calibration.of(PRIOR, new Evidence(List.of(series), List.of()), WarmingStudy::model);
    return new Logged(calibration, calibration.map());
  }

  @Override
  public Optional<double[][]> posterior(Logged logged, int count, RandomGenerator random) {
    if (!logged.estimate().isFound()) {
      return Optional.empty();
    }
    return Optional.of(
        sampler
            .sample(logged.estimate(), logged.calibration().density(logged.estimate()), random)
            .resampled(count, random));
  }

  @Override
  public List<String> names() {
    return List.of("rate", "rise", "start", "log-posterior", "core in an hour");
  }

  /** The last is what the log's end reads an hour later. */
  @Override
  public double[] quantities(double[] z, Logged logged) {
    double hour = Math.exp(z[0]) * (TIMES[N - 1] + 3600) / 14_400;
    return new double[] {
      z[0],
      z[1],
      z[2],
      logged.calibration().density(logged.estimate()).at(z),
      60 * Math.exp(z[1]) * (1 - Math.exp(-hour)) + z[2]
    };
  }
}
