package org.roastfield.lab.trial;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Spread;
import org.roastfield.lab.result.Json;

/** The table of a trial: as lines of text, and as JSON. */
public final class TrialTable {

  /** The plan, and the same within the window. */
  private static final List<Tried.Rule> PLANS = List.of(Tried.Rule.PLAN, Tried.Rule.KEPT);

  private final String name;
  private final List<Tried> tried;
  private final Resampling resampling;

  /**
   * @param name what plans knew
   * @param tried at least two cooks
   */
  TrialTable(String name, List<Tried> tried) {
    this.name = name;
    this.tried = List.copyOf(tried);
    this.resampling = new Resampling(tried);
  }

  /** A measure of a rule on a cook: 1 if it went well, else 0, or a size where less is better. */
  private record Measure(String name, boolean share, Of of) {

    interface Of {
      double value(Tried one, Tried.Rule rule);
    }

    static Measure share(String name, Predicated of) {
      return new Measure(name, true, (one, rule) -> of.test(one, rule) ? 1 : 0);
    }

    interface Predicated {
      boolean test(Tried one, Tried.Rule rule);
    }
  }

  private static final List<Measure> MEASURES =
      List.of(
          Measure.share("core", Tried::near),
          Measure.share("window", Tried::inWindow),
          Measure.share("both", (one, rule) -> one.near(rule) && one.inWindow(rule)),
          Measure.share("in time", Tried::inTime),
          new Measure("miss K", false, Tried::miss),
          new Measure("high K", false, Tried::high));

  /** All lines. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s: %d cooks on %d cookers, every second truth of another model than the plan's",
            name,
            tried.size(),
            resampling.cookers()));
    lines.add(
        "core: final core within 2 K of the wish; window: rested from 60 min before the wanted"
            + " carving to 15 min after; less the rule: plan's share less the rule's, 95 %");
    StringBuilder head = new StringBuilder(String.format(Locale.ROOT, "%-21s", "rule"));
    MEASURES.forEach(measure -> head.append(String.format(" %8s", measure.name())));
    lines.add(head + "   plan less the rule: core, window, both; the same of the window kept");
    for (Tried.Rule rule : rules()) {
      lines.add(row(rule));
    }
    for (Tried.Rule of : PLANS) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%s, of the oracle's: core %.1f %%, window %.1f %%",
              of.words(),
              100 * ofOracle(MEASURES.get(0), of),
              100 * ofOracle(MEASURES.get(1), of)));
    }
    lines.addAll(byTruth());
    for (Tried.Rule of : PLANS) {
      lines.addAll(stated(of, "plan's model", one -> !one.other()));
      lines.addAll(stated(of, "other models", Tried::other));
    }
    return lines;
  }

  /** Lines of the core of each rule that may know something, by the model of the truth. */
  private List<String> byTruth() {
    List<String> lines = new ArrayList<>();
    for (TrialTruth truth : truths()) {
      List<Tried> some = of(truth);
      StringBuilder line = new StringBuilder("core, truth " + words(truth) + ", n " + some.size());
      for (Tried.Rule rule : knowing()) {
        line.append(
            String.format(
                Locale.ROOT,
                "; %s %.1f %%, %+.1f K",
                rule.words(),
                100 * mean(some, one -> one.near(rule) ? 1 : 0),
                mean(some, one -> one.high(rule))));
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private List<TrialTruth> truths() {
    return tried.stream().map(Tried::truth).distinct().sorted().toList();
  }

  private List<Tried> of(TrialTruth truth) {
    return tried.stream().filter(one -> one.truth() == truth).toList();
  }

  private static String words(TrialTruth truth) {
    return truth.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private List<Tried.Rule> rules() {
    return List.copyOf(tried.get(0).rules());
  }

  /** Rules that know something of the cut or the cooker. */
  private List<Tried.Rule> knowing() {
    return rules().stream().filter(Tried.Rule::knows).toList();
  }

  private String row(Tried.Rule rule) {
    StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-21s", rule.words()));
    for (Measure measure : MEASURES) {
      double mean = mean(one -> measure.of().value(one, rule));
      row.append(
          String.format(
              Locale.ROOT,
              measure.share() ? " %7.1f%%" : " %8.2f",
              measure.share() ? 100 * mean : mean));
    }
    row.append("  ");
    for (Tried.Rule of : PLANS) {
      for (Measure measure : MEASURES.subList(0, 3)) {
        double[] interval = less(measure, of, rule);
        row.append(
            String.format(Locale.ROOT, " %+.1f…%+.1f", 100 * interval[0], 100 * interval[1]));
      }
      row.append(of == Tried.Rule.PLAN ? ";" : "");
    }
    return row.toString();
  }

  private double[] less(Measure measure, Tried.Rule of, Tried.Rule rule) {
    return resampling.interval(one -> measure.of().value(one, of) - measure.of().value(one, rule));
  }

  private double mean(ToDoubleFunction<Tried> number) {
    return mean(tried, number);
  }

  private static double mean(List<Tried> some, ToDoubleFunction<Tried> number) {
    return some.stream().mapToDouble(number).average().orElseThrow();
  }

  /** Share of what an oracle that keeps to the same reaches. */
  private double ofOracle(Measure measure, Tried.Rule of) {
    Tried.Rule oracle = of == Tried.Rule.KEPT ? Tried.Rule.ORACLE_KEPT : Tried.Rule.ORACLE;
    return mean(one -> measure.of().value(one, of)) / mean(one -> measure.of().value(one, oracle));
  }

  private List<String> stated(Tried.Rule rule, String which, Predicate<Tried> of) {
    List<Tried> some = tried.stream().filter(of).toList();
    Reliability reliability = Reliability.of(some, rule);
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "stated chances of %s, %s, n %d: pooled error %.1f points, %s the band; 10 to 90 %% of the"
                + " core %.1f K, of the pull %.0f min",
            rule.words(),
            which,
            some.size(),
            100 * reliability.pooled(),
            reliability.holds() ? "all bins inside" : "a bin OUTSIDE",
            width(some, one -> one.plan(rule).finalCore()),
            width(some, one -> pull(one.plan(rule))) / 60));
    reliability.bins().forEach(bin -> lines.add("  " + line(bin)));
    for (Reliability.Kind kind : Reliability.Kind.values()) {
      Reliability own = Reliability.of(some, rule, Set.of(kind));
      lines.add(String.format(Locale.ROOT, "  %s, %.1f points:", kind.words(), 100 * own.pooled()));
      own.bins().forEach(bin -> lines.add("    " + line(bin)));
    }
    return lines;
  }

  private static String line(Reliability.Bin bin) {
    return String.format(
        Locale.ROOT,
        "stated %5.1f %%  happened %5.1f %%  band ± %4.1f  n %5d%s",
        100 * bin.stated(),
        100 * bin.happened(),
        100 * bin.band(),
        bin.statements(),
        bin.holds() ? "" : "  outside");
  }

  private static Spread pull(Plan plan) {
    return plan.milestone(Milestone.Kind.PULL).time();
  }

  private static double width(List<Tried> some, java.util.function.Function<Tried, Spread> of) {
    return some.stream()
        .map(of)
        .mapToDouble(spread -> spread.high() - spread.low())
        .average()
        .orElseThrow();
  }

  /** Adds the table to a document. */
  public void addTo(ObjectNode root) {
    ObjectNode table = root.putObject(name.replace(' ', '_'));
    table.put("cooks", tried.size()).put("cookers", resampling.cookers());
    ArrayNode rules = table.putArray("rules");
    for (Tried.Rule rule : rules()) {
      ObjectNode one = rules.addObject().put("rule", rule.words());
      for (Measure measure : MEASURES) {
        String key = measure.name().replace(' ', '_');
        one.put(key, Json.rounded(mean(each -> measure.of().value(each, rule)), 1e4));
        less(one.putArray("plan_less_rule_" + key), measure, Tried.Rule.PLAN, rule);
        less(one.putArray("kept_less_rule_" + key), measure, Tried.Rule.KEPT, rule);
      }
    }
    ObjectNode byTruth = table.putObject("core_by_truth");
    for (TrialTruth truth : truths()) {
      List<Tried> some = of(truth);
      ObjectNode one = byTruth.putObject(truth.name().toLowerCase(Locale.ROOT));
      one.put("cooks", some.size());
      for (Tried.Rule rule : knowing()) {
        one.putObject(rule.words().replace(' ', '_'))
            .put("core", Json.rounded(mean(some, each -> each.near(rule) ? 1 : 0), 1e4))
            .put("high_K", Json.rounded(mean(some, each -> each.high(rule)), 1e2));
      }
    }
    stated(table, "stated_chances", Tried.Rule.PLAN);
    stated(table, "stated_chances_window_kept", Tried.Rule.KEPT);
  }

  private void less(ArrayNode ends, Measure measure, Tried.Rule of, Tried.Rule rule) {
    for (double end : less(measure, of, rule)) {
      ends.add(Json.rounded(end, 1e4));
    }
  }

  private void stated(ObjectNode table, String name, Tried.Rule rule) {
    stated(table.putObject(name + "_plans_model"), rule, one -> !one.other());
    stated(table.putObject(name + "_other_models"), rule, Tried::other);
  }

  private void stated(ObjectNode node, Tried.Rule rule, Predicate<Tried> of) {
    List<Tried> some = tried.stream().filter(of).toList();
    Reliability reliability = Reliability.of(some, rule);
    node.put("cooks", some.size()).put("pooled_error", Json.rounded(reliability.pooled(), 1e4));
    node.put("width_core_K", Json.rounded(width(some, one -> one.plan(rule).finalCore()), 1e2));
    node.put("width_pull_s", Json.rounded(width(some, one -> pull(one.plan(rule))), 1));
    bins(node.putArray("bins"), reliability);
    ObjectNode kinds = node.putObject("by_kind");
    for (Reliability.Kind kind : Reliability.Kind.values()) {
      Reliability own = Reliability.of(some, rule, Set.of(kind));
      ObjectNode one = kinds.putObject(kind.words().replace(' ', '_'));
      one.put("pooled_error", Json.rounded(own.pooled(), 1e4));
      bins(one.putArray("bins"), own);
    }
  }

  private static void bins(ArrayNode bins, Reliability reliability) {
    for (Reliability.Bin bin : reliability.bins()) {
      bins.addObject()
          .put("stated", Json.rounded(bin.stated(), 1e4))
          .put("happened", Json.rounded(bin.happened(), 1e4))
          .put("band", Json.rounded(bin.band(), 1e4))
          .put("statements", bin.statements());
    }
  }
}
