package org.roastfield.core.inference;

import java.util.Arrays;
import java.util.Objects;
import java.util.random.RandomGenerator;
import org.roastfield.core.internal.Check;

/**
 * Adaptive multiple importance sampling [Cornuet2012]: rounds of draws from Student distributions,
 * each around the weighted draws so far, all weighted by the mixture of all rounds. Immutable.
 */
public final class ImportanceSampler {

  private static final double WIDENED = 1.1;

  private final int rounds;
  private final int draws;

  private ImportanceSampler(int rounds, int draws) {
    this.rounds = rounds;
    this.draws = draws;
  }

  /** Three rounds of 200 draws. */
  public static ImportanceSampler standard() {
    return of(3, 200);
  }

  /**
   * Other numbers.
   *
   * @param rounds at least 1
   * @param draws in each round, at least 20
   */
  public static ImportanceSampler of(int rounds, int draws) {
    return new ImportanceSampler(
        Check.inRange("rounds", rounds, 1, 100), Check.inRange("draws", draws, 20, 1_000_000));
  }

  /**
   * Draws from the density around an estimate.
   *
   * @throws IllegalArgumentException if the estimate was not found
   */
  public WeightedDraws sample(MapEstimate estimate, LogDensity density, RandomGenerator random) {
    if (!estimate.isFound()) {
      throw new IllegalArgumentException("estimate must be found, was " + estimate.status());
    }
    return sample(estimate.mean(), estimate.covariance(), density, random);
  }

  WeightedDraws sample(
      double[] centre, double[][] covariance, LogDensity density, RandomGenerator random) {
    int all = rounds * draws;
    double[][] z = new double[all][];
    double[] target = new double[all];
    StudentProposal[] proposals = new StudentProposal[rounds];
    double[] middle = centre;
    double[][] spread = covariance;
    WeightedDraws weighted = null;
    for (int round = 0; round < rounds; round++) {
      proposals[round] = new StudentProposal(middle, spread);
      for (int i = round * draws; i < (round + 1) * draws; i++) {
        z[i] = proposals[round].draw(random);
        target[i] = density.at(z[i]);
      }
      int count = (round + 1) * draws;
      weighted = WeightedDraws.of(Arrays.copyOf(z, count), logWeights(z, target, proposals, round));
      if (weighted.effectiveSize() > 2 * centre.length) {
        middle = weighted.mean();
        spread = widened(weighted.covariance());
      }
    }
    return Objects.requireNonNull(weighted);
  }

  private double[] logWeights(
      double[][] z, double[] target, StudentProposal[] proposals, int last) {
    double[] logs = new double[(last + 1) * draws];
    for (int i = 0; i < logs.length; i++) {
      double[] parts = new double[last + 1];
      double most = Double.NEGATIVE_INFINITY;
      for (int r = 0; r <= last; r++) {
        parts[r] = proposals[r].logDensity(z[i]);
        most = Math.max(most, parts[r]);
      }
      double sum = 0;
      for (double part : parts) {
        sum += StrictMath.exp(part - most);
      }
      logs[i] = target[i] - most - StrictMath.log(sum / parts.length);
    }
    return logs;
  }

  private static double[][] widened(double[][] covariance) {
    for (double[] row : covariance) {
      for (int q = 0; q < row.length; q++) {
        row[q] *= WIDENED;
      }
    }
    return covariance;
  }
}
