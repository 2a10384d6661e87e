package org.roastfield.lab.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.lab.score.Holm;
import org.roastfield.lab.score.Uniformity;

/** Ranks of true quantities among posterior draws, and whether they are uniform. Immutable. */
public final class RankTable {

  /** Bins in which ranks are counted. */
  public static final int BINS = 20;

  private final List<String> names;
  private final double[][] ranks;
  private final List<Integer> failed;

  private RankTable(List<String> names, double[][] ranks, List<Integer> failed) {
    this.names = List.copyOf(names);
    this.ranks = ranks;
    this.failed = List.copyOf(failed);
  }

  /**
   * Gathers simulations.
   *
   * @param names of the quantities
   * @param simulations ranks in [0, 1), one for each name; empty where the inference gave up
   * @throws IllegalArgumentException if fewer than 5 simulations a bin have ranks, or a rank is out
   *     of range
   */
  public static RankTable of(List<String> names, List<Optional<double[]>> simulations) {
    List<double[]> ranked = new ArrayList<>();
    List<Integer> failed = new ArrayList<>();
    for (int s = 0; s < simulations.size(); s++) {
      if (simulations.get(s).isPresent()) {
        ranked.add(simulations.get(s).get());
      } else {
        failed.add(s);
      }
    }
    Numbers.inRange("simulations with ranks", ranked.size(), 5 * BINS, Integer.MAX_VALUE);
    double[][] ranks = new double[names.size()][ranked.size()];
    for (int s = 0; s < ranked.size(); s++) {
      double[] each = ranked.get(s);
      Numbers.inRange("ranks of a simulation", each.length, names.size(), names.size());
      for (int q = 0; q < ranks.length; q++) {
        ranks[q][s] = Numbers.inRange("rank", each[q], 0, Math.nextDown(1.0));
      }
    }
    return new RankTable(names, ranks, failed);
  }

  /** Simulations whose inference gave up, by their index: they have no ranks. */
  public List<Integer> failed() {
    return failed;
  }

  /** How many simulations have ranks. */
  public int size() {
    return ranks[0].length;
  }

  /** How many ranks of a quantity fall in each of {@link #BINS} bins of one width. */
  public List<Integer> counts(int quantity) {
    return Arrays.stream(Uniformity.counts(ranks[quantity], BINS)).boxed().toList();
  }

  /**
   * Tests of every quantity. Either kind sees what the other overlooks: Kolmogorov's and Smirnov's
   * a shift, the χ² test a spread.
   */
  public List<RankVerdict> verdicts() {
    int n = names.size();
    double[] alone = new double[2 * n];
    for (int q = 0; q < n; q++) {
      alone[2 * q] = Uniformity.chiSquared(ranks[q], BINS);
      alone[2 * q + 1] = Uniformity.kolmogorovSmirnov(ranks[q]);
    }
    double[] together = Holm.adjusted(alone);
    List<RankVerdict> verdicts = new ArrayList<>();
    for (int q = 0; q < n; q++) {
      verdicts.add(
          new RankVerdict(
              names.get(q),
              alone[2 * q],
              alone[2 * q + 1],
              Math.min(together[2 * q], together[2 * q + 1]),
              mean(q),
              variance(q)));
    }
    return List.copyOf(verdicts);
  }

  /**
   * Whether no inference gave up and no test of any quantity rejects.
   *
   * @param level chance that calibrated posteriors are rejected, in (0, 1)
   */
  public boolean isCalibrated(double level) {
    Numbers.inRange("level", level, Double.MIN_VALUE, Math.nextDown(1.0));
    return failed.isEmpty() && verdicts().stream().allMatch(verdict -> verdict.together() >= level);
  }

  private double mean(int quantity) {
    return Arrays.stream(ranks[quantity]).average().orElseThrow();
  }

  private double variance(int quantity) {
    return 12
        * Arrays.stream(ranks[quantity]).map(u -> (u - 0.5) * (u - 0.5)).average().orElseThrow();
  }
}
