package org.roastfield.lab.calibration;

/** A point of parameter space with the logarithms of its prior and its likelihood. Immutable. */
final class Particle {

  private final double[] coordinates;
  private final double logPrior;
  private final double logLikelihood;

  /**
   * @param coordinates not copied, and not modified by anyone
   */
  Particle(double[] coordinates, double logPrior, double logLikelihood) {
    this.coordinates = coordinates;
    this.logPrior = logPrior;
    this.logLikelihood = logLikelihood;
  }

  double[] coordinates() {
    return coordinates;
  }

  double logLikelihood() {
    return logLikelihood;
  }

  /** Logarithm of prior · likelihood^temperature. */
  double tempered(double temperature) {
    return logPrior + temperature * logLikelihood;
  }
}
