package org.roastfield.lab.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;

/**
 * Scores of two forecasters on the same cooks, of which less is better. Immutable.
 *
 * <p>Cooks that share something not known, such as a cooker, belong to one group: groups, not
 * cooks, are taken as independent.
 */
public final class PairedScores {

  private final List<Sums> groups;
  private final Sums all;

  private PairedScores(List<Sums> groups) {
    this.groups = List.copyOf(groups);
    this.all = groups.stream().reduce(Sums.NONE, Sums::plus);
  }

  /**
   * CRPS on cooks that are each a group of its own; see {@link #ofCrps(ScoreSummary, ScoreSummary,
   * UnaryOperator)}.
   */
  public static PairedScores ofCrps(ScoreSummary forecaster, ScoreSummary reference) {
    return ofCrps(forecaster, reference, UnaryOperator.identity());
  }

  /**
   * CRPS of two forecasters.
   *
   * @param reference of the same cooks, in any order
   * @param groupOfCook name of the group that a cook belongs to
   * @throws IllegalArgumentException if the cooks are not the same
   */
  public static PairedScores ofCrps(
      ScoreSummary forecaster, ScoreSummary reference, UnaryOperator<String> groupOfCook) {
    Map<String, Double> references = new HashMap<>();
    reference.scores().forEach(score -> references.put(score.cook(), score.crps()));
    Check.sameLength("reference", reference.cooks(), "cooks", forecaster.cooks());
    Map<String, Sums> groups = new LinkedHashMap<>();
    for (CaseScore score : forecaster.scores()) {
      Double other = references.get(score.cook());
      if (other == null) {
        throw new IllegalArgumentException(
            "reference must have a score of each cook, had none of " + score.cook());
      }
      groups.merge(groupOfCook.apply(score.cook()), new Sums(score.crps(), other, 1), Sums::plus);
    }
    return new PairedScores(new ArrayList<>(groups.values()));
  }

  /** How many cooks. */
  public int cooks() {
    return all.cooks;
  }

  /** How many groups. */
  public int groups() {
    return groups.size();
  }

  /** Mean score less that of the reference: below 0 if the forecaster is better. */
  public double difference() {
    return all.difference();
  }

  /**
   * Skill: 1 less the ratio of the mean scores; 1 for a perfect forecaster, 0 for one that is no
   * better than the reference.
   *
   * @throws IllegalStateException if the reference made no error at all
   */
  public double skill() {
    if (!(all.reference > 0)) {
      throw new IllegalStateException("skill needs a reference with errors, its scores are all 0");
    }
    return all.skill();
  }

  /**
   * What difference and skill might have been with other cooks: groups drawn with replacement, both
   * forecasters on the same ones.
   *
   * @param resamples how often, at least 100
   * @throws IllegalStateException if there is one group only
   */
  public PairedBootstrap bootstrap(int resamples, RandomGenerator random) {
    Check.atLeast("resamples", resamples, 100);
    if (groups.size() < 2) {
      throw new IllegalStateException("a bootstrap needs at least 2 groups, has 1");
    }
    double[] differences = new double[resamples];
    double[] skills = new double[resamples];
    for (int i = 0; i < resamples; i++) {
      Sums drawn = Sums.NONE;
      for (int g = 0; g < groups.size(); g++) {
        drawn = drawn.plus(groups.get((int) (random.nextDouble() * groups.size())));
      }
      differences[i] = drawn.difference();
      skills[i] = drawn.skill();
    }
    return new PairedBootstrap(differences, skills, groups.size());
  }

  /** Sums of the scores of some cooks. */
  private record Sums(double forecaster, double reference, int cooks) {

    static final Sums NONE = new Sums(0, 0, 0);

    Sums plus(Sums other) {
      return new Sums(
          forecaster + other.forecaster, reference + other.reference, cooks + other.cooks);
    }

    double difference() {
      return (forecaster - reference) / cooks;
    }

    double skill() {
      return 1 - forecaster / reference;
    }
  }
}
