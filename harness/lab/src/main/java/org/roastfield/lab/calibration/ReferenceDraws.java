package org.roastfield.lab.calibration;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Draws of equal weight from a posterior, in chains: neighbours of a chain resemble each other,
 * chains do not, and their differences tell the error of a mean. Immutable.
 */
public final class ReferenceDraws {

  private final Particle[] particles;
  private final int chains;
  private final List<Double> temperatures;
  private final double logEvidence;
  private final long evaluations;

  ReferenceDraws(
      Particle[] particles,
      int chains,
      List<Double> temperatures,
      double logEvidence,
      long evaluations) {
    this.particles = particles;
    this.chains = chains;
    this.temperatures = List.copyOf(temperatures);
    this.logEvidence = logEvidence;
    this.evaluations = evaluations;
  }

  /** How many draws. */
  public int size() {
    return particles.length;
  }

  /** How many chains, one after another in the draws. */
  public int chains() {
    return chains;
  }

  /** Coordinates of a draw; a copy. */
  public double[] draw(int index) {
    return particles[Numbers.inRange("index", index, 0, size() - 1)].coordinates().clone();
  }

  /** Temperatures gone through, rising to 1. */
  public List<Double> temperatures() {
    return temperatures;
  }

  /**
   * Logarithm of the density's integral within the bounds over the prior's share there: of the
   * evidence, if the density was normalised but for the bounds.
   */
  public double logEvidence() {
    return logEvidence;
  }

  /** How often the density was asked. */
  public long evaluations() {
    return evaluations;
  }

  /** Mean of the coordinates. */
  public double[] mean() {
    double[] mean = new double[particles[0].coordinates().length];
    for (int p = 0; p < mean.length; p++) {
      int coordinate = p;
      mean[p] = mean(z -> z[coordinate]);
    }
    return mean;
  }

  /** Mean of a number that follows from the coordinates. */
  public double mean(ToDoubleFunction<double[]> quantity) {
    return mean(quantity, 0, size());
  }

  /** Standard deviation of a number that follows from the coordinates. */
  public double spread(ToDoubleFunction<double[]> quantity) {
    double mean = mean(quantity);
    return Math.sqrt(mean(z -> square(quantity.applyAsDouble(z) - mean)));
  }

  /**
   * Standard error of a mean, from how far the means of the chains lie apart. What went wrong
   * before the last temperature, such as a peak that no chain reached, it cannot see: for that
   * compare runs.
   */
  public double standardError(ToDoubleFunction<double[]> quantity) {
    double mean = mean(quantity);
    int length = size() / chains;
    double squares = 0;
    for (int c = 0; c < chains; c++) {
      squares += square(mean(quantity, c * length, (c + 1) * length) - mean);
    }
    return Math.sqrt(squares / chains / (chains - 1));
  }

  /**
   * How many independent draws would tell a mean as well, by its {@link #standardError}: known to
   * about √(2/chains) of itself.
   */
  public double effectiveSize(ToDoubleFunction<double[]> quantity) {
    return square(spread(quantity) / standardError(quantity));
  }

  /**
   * Draws evenly spaced through all chains; the farther apart, the closer to independent.
   *
   * @param count in [1, {@link #size}]
   * @return coordinates, [count][parameter]
   */
  public double[][] evenly(int count) {
    Numbers.inRange("count", count, 1, size());
    double[][] chosen = new double[count][];
    for (int i = 0; i < count; i++) {
      int last = (int) ((i + 1L) * size() / count) - 1;
      chosen[i] = draw(last);
    }
    return chosen;
  }

  private double mean(ToDoubleFunction<double[]> quantity, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += quantity.applyAsDouble(particles[i].coordinates().clone());
    }
    return sum / (to - from);
  }

  private static double square(double x) {
    return x * x;
  }
}
