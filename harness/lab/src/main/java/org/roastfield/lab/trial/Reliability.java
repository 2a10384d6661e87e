package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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

  /** What a statement is of. */
  enum Kind {
    /** The final core. */
    CORE("final core"),
    /** Coming off the gentle heat. */
    PULL("off the heat"),
    /** Having rested. */
    READY("rested");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** Of all statements. */
  static Reliability of(List<Tried> tried, Tried.Rule rule) {
    return of(tried, rule, EnumSet.allOf(Kind.class));
  }

  /** Of the statements of some kinds; without bins if too few fall into any. */
  static Reliability of(List<Tried> tried, Tried.Rule rule, Set<Kind> kinds) {
    Resampling resampling = new Resampling(tried);
    int groups = resampling.cookers();
    double[][] above = new double[groups][ENDS.length];
    double[][] count = new double[groups][ENDS.length];
    double[] stated = new double[ENDS.length];
    double[] total = new double[ENDS.length];
    double[] excess = new double[ENDS.length];
    for (int g = 0; g < groups; g++) {
      for (Tried one : resampling.groups().get(g)) {
        for (Statement each : statements(one, rule)) {
          if (kinds.contains(each.of())) {
            int bin = bin(each.stated());
            double surplus = (each.happened() ? 1 : 0) - each.stated();
            above[g][bin] += surplus;
            count[g][bin]++;
            stated[bin] += each.stated();
            excess[bin] += surplus;
            total[bin]++;
          }
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
    return new Reliability(bins, all > 0 ? pooled / all : 0, tried.size());
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
      // What is certain, such as a window that is kept, is so in every resample.
      for (int r = 0; r < ratios.length && errors[b] > 0; r++) {
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

  /** A stated chance, and whether it took place. */
  private record Statement(Kind of, double stated, boolean happened) {}

  private static List<Statement> statements(Tried one, Tried.Rule rule) {
    Plan plan = one.plan(rule);
    Tried.Result result = one.result(rule);
    double core = result.cook().finalCore();
    List<Statement> all = new ArrayList<>(quantiles(Kind.CORE, plan.finalCore(), core));
    all.add(new Statement(Kind.CORE, plan.chanceUnder(), core < one.wish()));
    double ready = result.late();
    double latest = PlanTrial.SERVICE.latest();
    boolean tooLong = -ready > PlanTrial.SERVICE.longestHold();
    all.add(new Statement(Kind.READY, plan.chanceReady(), ready <= latest));
    all.add(new Statement(Kind.READY, plan.chanceReadyAsWished(), ready <= 0));
    all.add(new Statement(Kind.READY, plan.chanceHeldTooLong(), tooLong));
    Spread pull = plan.milestone(Milestone.Kind.PULL).time();
    all.addAll(quantiles(Kind.PULL, pull, result.cook().pull() - result.lead()));
    return all;
  }

  private static List<Statement> quantiles(Kind of, Spread spread, double value) {
    return List.of(
        new Statement(of, 0.1, value < spread.low()),
        new Statement(of, 0.5, value < spread.median()),
        new Statement(of, 0.9, value < spread.high()));
  }
}
