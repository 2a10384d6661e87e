package org.roastfield.lab.score;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;

/** Scores of one forecast for each of several cooks. Immutable. */
public final class ScoreSummary {

  private final List<CaseScore> scores;

  private ScoreSummary(List<CaseScore> scores) {
    this.scores = scores;
  }

  /**
   * Scores cases.
   *
   * @param cases of at least one cook, and of none twice
   * @param random for ties of the probability integral transform, one number a case in their order
   * @throws IllegalArgumentException if cases are too few, of one cook, or not finite
   */
  public static ScoreSummary of(List<ForecastCase> cases, RandomGenerator random) {
    return of(cases.stream().map(each -> each.scored(random.nextDouble())).toList());
  }

  /**
   * Summary of scores.
   *
   * @param scores of at least one cook, and of none twice
   * @throws IllegalArgumentException if they are not
   */
  public static ScoreSummary of(List<CaseScore> scores) {
    Check.atLeast("scores", scores.size(), 1);
    Set<String> cooks = new HashSet<>();
    for (CaseScore score : scores) {
      if (!cooks.add(score.cook())) {
        throw new IllegalArgumentException(
            "scores must be of one forecast a cook, two were of " + score.cook());
      }
    }
    return new ScoreSummary(List.copyOf(scores));
  }

  /** The scores, in the order they were given. */
  public List<CaseScore> scores() {
    return scores;
  }

  /** How many cooks. */
  public int cooks() {
    return scores.size();
  }

  /** Mean continuous ranked probability score. */
  public double crps() {
    return mean(CaseScore::crps);
  }

  /** Mean weighted interval score. */
  public double weightedIntervalScore() {
    return mean(CaseScore::weightedIntervalScore);
  }

  /** Mean of median less outcome: above 0 where forecasts are late. */
  public double bias() {
    return mean(CaseScore::error);
  }

  /** Mean absolute error of the medians. */
  public double meanAbsoluteError() {
    return mean(score -> Math.abs(score.error()));
  }

  /** Root mean square error of the medians. */
  public double rootMeanSquareError() {
    return Math.sqrt(mean(score -> score.error() * score.error()));
  }

  /**
   * Share of the cooks whose median was off by no more than a share of the outcome: of a time to
   * the target, α-λ accuracy [Saxena2010].
   *
   * @param tolerance share α of the outcome, finite, at least 0
   */
  public double shareWithin(double tolerance) {
    Check.notNegative("tolerance", tolerance);
    return mean(s -> Math.abs(s.error()) <= tolerance * Math.abs(s.outcome()) ? 1 : 0);
  }

  /**
   * How often the intervals of a level held what came.
   *
   * @throws IllegalArgumentException if intervals of that level were not scored
   */
  public Coverage coverage(double level) {
    double covered = sum(score -> score.interval(level).covers(score.outcome()) ? 1 : 0);
    double width = mean(score -> score.interval(level).width());
    return new Coverage(level, (int) covered, cooks(), width);
  }

  /** Where in their forecasts the outcomes fell, in [0, 1]: even if forecasts are right; a copy. */
  public double[] pits() {
    return scores.stream().mapToDouble(CaseScore::pit).toArray();
  }

  private double mean(ToDoubleFunction<CaseScore> of) {
    return sum(of) / cooks();
  }

  private double sum(ToDoubleFunction<CaseScore> of) {
    double sum = 0;
    for (CaseScore score : scores) {
      sum += of.applyAsDouble(score);
    }
    return sum;
  }
}
