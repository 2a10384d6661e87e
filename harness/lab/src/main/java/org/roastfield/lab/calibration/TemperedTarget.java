package org.roastfield.lab.calibration;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;

/** Prior and posterior as the two ends of a path; counts how often the posterior was asked. */
final class TemperedTarget {

  private final Prior prior;
  private final LogDensity density;
  private long evaluations;

  TemperedTarget(Prior prior, LogDensity density) {
    this.prior = prior;
    this.density = density;
  }

  /** The particle at a place, or none beyond the bounds or where there is no density. */
  @Nullable Particle at(double[] z) {
    return prior.allows(z) ? evaluated(z) : null;
  }

  /** A draw from the prior within the bounds, or none if there is no density at it. */
  @Nullable Particle draw(RandomGenerator random) {
    return evaluated(prior.draw(random));
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
}
