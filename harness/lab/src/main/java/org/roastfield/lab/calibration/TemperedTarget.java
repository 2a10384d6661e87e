package org.roastfield.lab.calibration;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterSet;

/** Prior and posterior as the two ends of a path; counts how often the posterior was asked. */
final class TemperedTarget {

  /** More draws than this for one within the bounds mean a prior beyond them; assumed. */
  private static final int MOST_TRIES = 100_000;

  private final Gaussian prior;
  private final ParameterSet parameters;
  private final LogDensity density;
  private long evaluations;

  TemperedTarget(Prior prior, LogDensity density) {
    int n = prior.size();
    double[][] covariance = new double[n][n];
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        covariance[p][q] = prior.covariance(p, q);
      }
    }
    this.prior = Gaussian.of(prior.mean(), covariance);
    this.parameters = prior.parameters();
    this.density = density;
  }

  /** The particle at a place, or none beyond the bounds or where there is no density. */
  @Nullable Particle at(double[] z) {
    return isWithinBounds(z) ? evaluated(z) : null;
  }

  /** A draw from the prior within the bounds, or none if there is no density at it. */
  @Nullable Particle draw(RandomGenerator random) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      double[] z = prior.draw(random);
      if (isWithinBounds(z)) {
        return evaluated(z);
      }
    }
    throw new IllegalArgumentException(
        "prior must lie within its bounds, was beyond them in " + MOST_TRIES + " draws");
  }

  long evaluations() {
    return evaluations;
  }

  private @Nullable Particle evaluated(double[] z) {
    double posterior = density.at(z);
    evaluations++;
    if (!(posterior < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "density must be a number below infinity, was "
              + posterior
              + " at "
              + Arrays.toString(z));
    }
    if (posterior == Double.NEGATIVE_INFINITY) {
      return null;
    }
    double logPrior = prior.logDensity(z);
    return new Particle(z, logPrior, posterior - logPrior);
  }

  private boolean isWithinBounds(double[] z) {
    for (int p = 0; p < z.length; p++) {
      if (!(z[p] >= parameters.get(p).lowest() && z[p] <= parameters.get(p).highest())) {
        return false;
      }
    }
    return true;
  }
}
