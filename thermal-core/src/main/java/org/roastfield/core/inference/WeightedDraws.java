package org.roastfield.core.inference;

import java.util.random.RandomGenerator;
import org.roastfield.core.internal.Check;

/** Draws with weights that sum to one. Immutable. */
public final class WeightedDraws {

  private final double[][] draws;
  private final double[] weights;
  private final double tailShape;

  private WeightedDraws(double[][] draws, double[] weights, double tailShape) {
    this.draws = draws;
    this.weights = weights;
    this.tailShape = tailShape;
  }

  static WeightedDraws of(double[][] draws, double[] logWeights) {
    double most = Double.NEGATIVE_INFINITY;
    for (double each : logWeights) {
      most = Math.max(most, each);
    }
    if (most == Double.NEGATIVE_INFINITY) {
      throw new IllegalStateException("no draw has a density");
    }
    double[] weights = new double[logWeights.length];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = StrictMath.exp(logWeights[i] - most);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return new WeightedDraws(draws, weights, ParetoTail.shape(logWeights));
  }

  /** How many draws. */
  public int size() {
    return draws.length;
  }

  /** Coordinates of a draw; a copy. */
  public double[] draw(int index) {
    return draws[Check.inRange("index", index, 0, draws.length - 1)].clone();
  }

  /** Weight of a draw. */
  public double weight(int index) {
    return weights[index];
  }

  /** How many draws of equal weight tell as much. */
  public double effectiveSize() {
    double sum = 0;
    for (double weight : weights) {
      sum += weight * weight;
    }
    return 1 / sum;
  }

  /** Shape of the tail of the weights, Pareto's k. */
  public double tailShape() {
    return tailShape;
  }

  /** Largest tail shape at which this many draws can be trusted, at most 0.7 [Vehtari2024]. */
  public double tailShapeLimit() {
    return Math.min(1 - 1 / StrictMath.log10(draws.length), 0.7);
  }

  /** Whether the draws can be trusted. */
  public boolean isReliable() {
    return tailShape <= tailShapeLimit();
  }

  /** Weighted mean of the coordinates. */
  public double[] mean() {
    double[] mean = new double[draws[0].length];
    for (int i = 0; i < draws.length; i++) {
      for (int p = 0; p < mean.length; p++) {
        mean[p] += weights[i] * draws[i][p];
      }
    }
    return mean;
  }

  /** Weighted covariance of the coordinates. */
  public double[][] covariance() {
    double[] mean = mean();
    double[][] covariance = new double[mean.length][mean.length];
    for (int i = 0; i < draws.length; i++) {
      for (int p = 0; p < mean.length; p++) {
        for (int q = 0; q < mean.length; q++) {
          covariance[p][q] += weights[i] * (draws[i][p] - mean[p]) * (draws[i][q] - mean[q]);
        }
      }
    }
    return covariance;
  }

  /**
   * Draws of equal weight, by systematic resampling.
   *
   * @param count at least 1
   */
  public double[][] resampled(int count, RandomGenerator random) {
    Check.inRange("count", count, 1, Integer.MAX_VALUE);
    double[][] chosen = new double[count][];
    double place = random.nextDouble() / count;
    double reached = 0;
    int i = -1;
    for (int c = 0; c < count; c++) {
      while (reached <= place && i < draws.length - 1) {
        reached += weights[++i];
      }
      chosen[c] = draws[i].clone();
      place += 1.0 / count;
    }
    return chosen;
  }
}
