package org.roastfield.lab.calibration;

import java.util.random.RandomGenerator;
import org.roastfield.core.inference.Normal;

/**
 * The step from one temperature to the next, as far as the weights stay even enough, and what the
 * particles then weigh. Immutable.
 */
final class Reweighting {

  private static final int BISECTIONS = 60;

  private final Particle[] particles;
  private final double temperature;
  private final double[] weights;
  private final double logMeanWeight;

  /**
   * Weights exp(step · log-likelihood) of a step that leaves the given effective size.
   *
   * @param effectiveShare of the particles, in (0, 1)
   */
  Reweighting(Particle[] particles, double from, double effectiveShare) {
    this.particles = particles;
    double step = step(1 - from, effectiveShare * particles.length);
    temperature = step == 1 - from ? 1 : from + step;
    double most = most();
    weights = new double[particles.length];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = StrictMath.exp(step * (particles[i].logLikelihood() - most));
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    logMeanWeight = step * most + StrictMath.log(sum / weights.length);
  }

  /** In (0, 1]. */
  double temperature() {
    return temperature;
  }

  /** Logarithm of the mean of the weights before they are made to sum to one. */
  double logMeanWeight() {
    return logMeanWeight;
  }

  /**
   * The normal distribution of the particles' weighted moments.
   *
   * @throws IllegalStateException if the particles have fallen together on too few places
   */
  Normal shape() {
    int n = particles[0].coordinates().length;
    double[] mean = new double[n];
    for (int i = 0; i < weights.length; i++) {
      for (int p = 0; p < n; p++) {
        mean[p] += weights[i] * particles[i].coordinates()[p];
      }
    }
    double[][] covariance = new double[n][n];
    for (int i = 0; i < weights.length; i++) {
      double[] z = particles[i].coordinates();
      for (int p = 0; p < n; p++) {
        for (int q = 0; q < n; q++) {
          covariance[p][q] += weights[i] * (z[p] - mean[p]) * (z[q] - mean[q]);
        }
      }
    }
    try {
      return Normal.of(mean, covariance);
    } catch (IllegalArgumentException e) {
      throw new IllegalStateException(
          "particles fell together at temperature " + temperature + ": take more or longer chains",
          e);
    }
  }

  /** Particles of equal weight, by systematic resampling. */
  Particle[] resampled(int count, RandomGenerator random) {
    Particle[] chosen = new Particle[count];
    double offset = random.nextDouble();
    double reached = weights[0];
    int i = 0;
    for (int c = 0; c < count; c++) {
      while (reached <= (c + offset) / count && i < weights.length - 1) {
        reached += weights[++i];
      }
      chosen[c] = particles[i];
    }
    return chosen;
  }

  private double step(double longest, double effectiveSize) {
    if (effectiveSize(longest) >= effectiveSize) {
      return longest;
    }
    double low = 0;
    double high = longest;
    for (int b = 0; b < BISECTIONS; b++) {
      double middle = 0.5 * (low + high);
      if (effectiveSize(middle) >= effectiveSize) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private double effectiveSize(double step) {
    double most = most();
    double sum = 0;
    double squares = 0;
    for (Particle each : particles) {
      double weight = StrictMath.exp(step * (each.logLikelihood() - most));
      sum += weight;
      squares += weight * weight;
    }
    return sum * sum / squares;
  }

  private double most() {
    double most = Double.NEGATIVE_INFINITY;
    for (Particle each : particles) {
      most = Math.max(most, each.logLikelihood());
    }
    return most;
  }
}
