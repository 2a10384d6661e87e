package org.roastfield.lab.score;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Differences and skills of resampled cooks. Immutable.
 *
 * <p>Intervals are the expanded percentiles of [Hesterberg2015]: plain ones are too narrow for few
 * groups, by the factor √((n − 1)/n) and for want of Student's longer tails. They cannot reach
 * beyond the extremes of the resamples, so of fewer than five groups they stay too narrow.
 */
public final class PairedBootstrap {

  private final double[] differences;
  private final double[] skills;
  private final int groups;

  /** Takes the arrays over and sorts them. */
  PairedBootstrap(double[] differences, double[] skills, int groups) {
    this.differences = differences;
    this.skills = skills;
    this.groups = groups;
    Arrays.sort(differences);
    Arrays.sort(skills);
  }

  /**
   * Interval of the mean difference of scores, forecaster less reference.
   *
   * @param level in (0, 1)
   */
  public Interval difference(double level) {
    return interval(differences, level);
  }

  /**
   * Interval of the skill.
   *
   * @param level in (0, 1)
   * @throws IllegalStateException if a resample held cooks only on which the reference made no
   *     error
   */
  public Interval skill(double level) {
    if (!Double.isFinite(skills[0]) || Double.isNaN(skills[skills.length - 1])) {
      throw new IllegalStateException("skill needs a reference with errors in every resample");
    }
    return interval(skills, level);
  }

  /** Share of the resamples in which the forecaster was better than the reference, in [0, 1]. */
  public double shareBetter() {
    return (double) Arrays.stream(differences).filter(each -> each < 0).count()
        / differences.length;
  }

  /** Standard error of the mean difference over the groups. */
  public double standardError() {
    double mean = Arrays.stream(differences).average().orElseThrow();
    double squares = Arrays.stream(differences).map(d -> (d - mean) * (d - mean)).sum();
    return Math.sqrt(squares / differences.length * groups / (groups - 1));
  }

  private Interval interval(double[] sorted, double level) {
    Check.inside("level", level, 0, 1);
    double student =
        new TDistribution(null, groups - 1).inverseCumulativeProbability((1 - level) / 2);
    double tail =
        new NormalDistribution(null, 0, 1)
            .cumulativeProbability(student * Math.sqrt(groups / (groups - 1.0)));
    int low = (int) Math.floor(tail * sorted.length);
    return new Interval(level, sorted[low], sorted[sorted.length - 1 - low]);
  }
}
