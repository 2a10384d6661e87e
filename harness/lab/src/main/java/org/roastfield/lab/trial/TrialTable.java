package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The table of a trial, as lines of text. */
public final class TrialTable {

  private static final int RESAMPLES = 2000;

  private final List<PlanTrial.Tried> tried;

  /**
   * @param tried at least two cooks
   */
  public TrialTable(List<PlanTrial.Tried> tried) {
    this.tried = List.copyOf(tried);
  }

  /** All lines. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("cooks " + tried.size() + ", every second truth of another model than the plan's");
    lines.add(
        String.format(
            Locale.ROOT,
            "%-22s %9s %9s %9s %9s   %s",
            "rule",
            "±2 K",
            "mean K",
            "window",
            "mean min",
            "plan less rule, 95 %: K, min outside"));
    row(lines, "plan", PlanTrial.Tried::byPlan);
    row(lines, "oracle", PlanTrial.Tried::byOracle);
    row(lines, "minutes for a weight", PlanTrial.Tried::byWeight);
    row(lines, "carryover of 5 K", PlanTrial.Tried::byCarryover);
    row(lines, "straight line", PlanTrial.Tried::byLine);
    stated(lines, "plan's model", tried.stream().filter(one -> !one.other()).toList());
    stated(lines, "other models", tried.stream().filter(PlanTrial.Tried::other).toList());
    return lines;
  }

  private void row(
      List<String> lines, String name, Function<PlanTrial.Tried, PlanTrial.Result> rule) {
    ToDoubleFunction<PlanTrial.Tried> miss = one -> rule.apply(one).miss(one.wish());
    ToDoubleFunction<PlanTrial.Tried> outside = one -> rule.apply(one).outside() / 60;
    lines.add(
        String.format(
            Locale.ROOT,
            "%-22s %8.1f%% %9.2f %8.1f%% %9.1f   %s, %s",
            name,
            100 * mean(one -> miss.applyAsDouble(one) <= 2 ? 1 : 0),
            mean(miss),
            100 * mean(one -> outside.applyAsDouble(one) == 0 ? 1 : 0),
            mean(outside),
            difference(one -> one.byPlan().miss(one.wish()) - miss.applyAsDouble(one)),
            difference(one -> one.byPlan().outside() / 60 - outside.applyAsDouble(one))));
  }

  private double mean(ToDoubleFunction<PlanTrial.Tried> number) {
    return tried.stream().mapToDouble(number).average().orElseThrow();
  }

  /** Interval of a mean over cooks drawn with replacement. */
  private String difference(ToDoubleFunction<PlanTrial.Tried> number) {
    double[] values = tried.stream().mapToDouble(number).toArray();
    SplittableRandom random = new SplittableRandom(1);
    double[] means = new double[RESAMPLES];
    for (int r = 0; r < RESAMPLES; r++) {
      for (int i = 0; i < values.length; i++) {
        means[r] += values[random.nextInt(values.length)] / values.length;
      }
    }
    Arrays.sort(means);
    return String.format(
        Locale.ROOT, "%+.2f…%+.2f", means[RESAMPLES / 40], means[RESAMPLES - RESAMPLES / 40]);
  }

  /** Stated chances against shares of the cooks. */
  private static void stated(List<String> lines, String name, List<PlanTrial.Tried> cooks) {
    double n = cooks.size();
    double core =
        cooks.stream()
            .filter(
                one ->
                    one.byPlan().cook().finalCore() >= one.plan().finalCore().low()
                        && one.byPlan().cook().finalCore() <= one.plan().finalCore().high())
            .count();
    double below =
        cooks.stream()
            .filter(one -> one.byPlan().cook().finalCore() < one.plan().finalCore().median())
            .count();
    double ready =
        cooks.stream()
            .filter(
                one ->
                    one.byPlan().cook().ready() <= one.plan().lead() + PlanTrial.SERVICE.latest())
            .count();
    double stated =
        cooks.stream().mapToDouble(one -> one.plan().chanceReady()).average().orElseThrow();
    double width =
        cooks.stream()
            .mapToDouble(one -> one.plan().finalCore().high() - one.plan().finalCore().low())
            .average()
            .orElseThrow();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s: core within its 80 %% %.1f%%, below its median %.1f%%, ready in time %.1f%%"
                + " (stated %.1f%%), width %.1f K, n %d",
            name,
            100 * core / n,
            100 * below / n,
            100 * ready / n,
            100 * stated,
            width,
            cooks.size()));
  }
}
