package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Spread;

/**
 * Chances that plans stated beside how often what they are of took place: of the final core, of
 * coming off the heat and of being ready, ten to a cook, in bins of the stated chance. When it has
 * rested is decided by the clock for all that wait, so that no quantiles of it are asked for.
 *
 * @param bins that hold statements
 * @param pooled mean distance of shares from stated chances over all statements, in [0, 1]
 * @param cooks whose plans stated them
 */
record Reliability(List<Bin> bins, double pooled, int cooks) {

  /**
   * Ends of bins: around a tenth, a half and nine tenths, which plans always state, and between.
   */
  private static final double[] ENDS = {0.15, 0.3, 0.45, 0.55, 0.7, 0.85, 1.0000001};

  /** Fewest statements of a bin: with less its band says nothing. */
  private static final int FEWEST = 30;

  /** Copies the list. */
  Reliability {
    bins = List.copyOf(bins);
  }

  /**
   * A bin.
   *
   * @param stated mean of the stated chances
   * @param happened share that took place
   * @param band half width of the 95 % band around the stated chance, over all bins together
   * @param statements how many
   */
  record Bin(double stated, double happened, double band, int statements) {

    boolean holds() {
      return Math.abs(happened - stated) <= band;
    }
  }

  boolean holds() {
    return bins.stream().allMatch(Bin::holds);
  }

  static Reliability of(List<Tried> tried) {
    Resampling resampling = new Resampling(tried);
    int groups = resampling.cookers();
    double[][] above = new double[groups][ENDS.length];
    double[][] count = new double[groups][ENDS.length];
    double[] stated = new double[ENDS.length];
    double[] total = new double[ENDS.length];
    double[] excess = new double[ENDS.length];
    for (int g = 0; g < groups; g++) {
      for (Tried one : resampling.groups().get(g)) {
        for (double[] pair : statements(one)) {
          int bin = bin(pair[0]);
          above[g][bin] += pair[1] - pair[0];
          count[g][bin]++;
          stated[bin] += pair[0];
          excess[bin] += pair[1] - pair[0];
          total[bin]++;
        }
      }
    }
    double[] bands = bands(above, count, excess, total);
    List<Bin> bins = new ArrayList<>();
    double pooled = 0;
    for (int b = 0; b < ENDS.length; b++) {
      if (total[b] >= FEWEST) {
        double mean = stated[b] / total[b];
        bins.add(new Bin(mean, mean + excess[b] / total[b], bands[b], (int) total[b]));
        pooled += Math.abs(excess[b]);
      }
    }
    double all = Arrays.stream(total).filter(each -> each >= FEWEST).sum();
    return new Reliability(bins, pooled / all, tried.size());
  }

  /** Half widths: as many standard errors as the farthest of all bins keeps within in 95 %. */
  private static double[] bands(
      double[][] above, double[][] count, double[] excess, double[] total) {
    double[][] ratios = Resampling.ratios(above, count);
    double[] errors = new double[total.length];
    double[] farthest = new double[ratios.length];
    for (int b = 0; b < total.length; b++) {
      if (total[b] < FEWEST) {
        continue;
      }
      double mean = excess[b] / total[b];
      double squares = 0;
      for (double[] ratio : ratios) {
        squares += (ratio[b] - mean) * (ratio[b] - mean) / ratios.length;
      }
      errors[b] = Math.sqrt(squares);
      for (int r = 0; r < ratios.length; r++) {
        farthest[r] = Math.max(farthest[r], Math.abs(ratios[r][b] - mean) / errors[b]);
      }
    }
    Arrays.sort(farthest);
    double times = farthest[(int) (0.95 * farthest.length)];
    for (int b = 0; b < errors.length; b++) {
      errors[b] *= times;
    }
    return errors;
  }

  private static int bin(double stated) {
    int bin = 0;
    while (stated >= ENDS[bin]) {
      bin++;
    }
    return bin;
  }

  /** Pairs of a stated chance and 1 if it took place, else 0. */
  private static List<double[]> statements(Tried one) {
    Plan plan = one.plan();
    Tried.Result result = one.result(Tried.Rule.PLAN);
    List<double[]> pairs = new ArrayList<>();
    double core = result.cook().finalCore();
    quantiles(pairs, plan.finalCore(), core);
    add(pairs, plan.chanceUnder(), core < one.wish());
    double ready = result.late();
    add(pairs, plan.chanceReady(), ready <= PlanTrial.SERVICE.latest());
    add(pairs, plan.chanceReadyAsWished(), ready <= 0);
    add(pairs, plan.chanceHeldTooLong(), -ready > PlanTrial.SERVICE.longestHold());
    Spread pull = plan.milestone(Milestone.Kind.PULL).time();
    quantiles(pairs, pull, result.cook().pull() - result.lead());
    return pairs;
  }

  private static void quantiles(List<double[]> pairs, Spread spread, double value) {
    add(pairs, 0.1, value < spread.low());
    add(pairs, 0.5, value < spread.median());
    add(pairs, 0.9, value < spread.high());
  }

  private static void add(List<double[]> pairs, double stated, boolean happened) {
    pairs.add(new double[] {stated, happened ? 1 : 0});
  }
}
