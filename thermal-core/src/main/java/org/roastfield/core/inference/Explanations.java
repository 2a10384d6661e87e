package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Explanations of the same evidence in order of how probable they are: odds times evidence, the
 * latter by Laplace's approximation of each ({@link MapEstimate#logEvidence}). One that frees more
 * pays for what it could have explained beside. Immutable.
 */
public final class Explanations {

  private final List<Ranked> ranked;

  private Explanations(List<Ranked> ranked) {
    this.ranked = List.copyOf(ranked);
  }

  /**
   * One explanation and what came of it.
   *
   * @param explanation that was tried
   * @param estimate under it
   * @param logWeight logarithm of odds times evidence [nat]; −∞ if nothing was found
   * @param probability share of all weights
   */
  public record Ranked(
      Explanation explanation, MapEstimate estimate, double logWeight, double probability) {}

  /**
   * Compares explanations.
   *
   * @param explanations at least one, of the same readings; how much a single one may be off may be
   *     part of what explains them
   * @throws IllegalArgumentException if there is none, their readings differ, or none of them can
   *     be computed
   */
  public static Explanations of(List<Explanation> explanations) {
    if (explanations.isEmpty()) {
      throw new IllegalArgumentException("explanations must be at least one, were none");
    }
    Evidence evidence = explanations.get(0).calibration().evidence();
    List<Ranked> found = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (Explanation each : explanations) {
      if (!each.calibration().evidence().isOfTheSame(evidence)) {
        throw new IllegalArgumentException(
            "explanations must be of the same readings, those of " + each.name() + " were others");
      }
      MapEstimate estimate = each.estimate();
      double weight = StrictMath.log(each.odds()) + estimate.logEvidence();
      most = Math.max(most, weight);
      found.add(new Ranked(each, estimate, weight, Double.NaN));
    }
    if (most == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("an explanation must be one that can be computed");
    }
    return new Explanations(shared(found, most));
  }

  private static List<Ranked> shared(List<Ranked> found, double most) {
    double sum = 0;
    for (Ranked each : found) {
      sum += StrictMath.exp(each.logWeight() - most);
    }
    List<Ranked> ranked = new ArrayList<>();
    for (Ranked each : found) {
      double share = StrictMath.exp(each.logWeight() - most) / sum;
      ranked.add(new Ranked(each.explanation(), each.estimate(), each.logWeight(), share));
    }
    ranked.sort(Comparator.comparingDouble(Ranked::logWeight).reversed());
    return ranked;
  }

  /** The most probable first. */
  public List<Ranked> ranked() {
    return ranked;
  }

  /** The most probable. */
  public Ranked best() {
    return ranked.get(0);
  }

  /**
   * How much more probable the best is than one of them [nat].
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public double lead(String over) {
    for (Ranked each : ranked) {
      if (each.explanation().name().equals(over)) {
        return best().logWeight() - each.logWeight();
      }
    }
    throw new IllegalArgumentException(
        "over must be the name of an explanation, was \"" + over + "\"");
  }

  /**
   * What is known of one explanation's coordinates when none is taken for granted: mean and
   * covariance over all of them, weighted by their probabilities. Where they disagree it is as wide
   * as they are apart.
   *
   * @param as the explanation whose parameters are wanted; the others must have parameters of the
   *     same ids
   * @throws IllegalArgumentException if another lacks one
   */
  public Prior pooled(Explanation as) {
    Prior wanted = as.calibration().prior();
    int n = wanted.size();
    double[] mean = new double[n];
    for (Ranked each : ranked) {
      for (int p = 0; p < n; p++) {
        mean[p] += each.probability() * each.estimate().mean()[index(each, wanted, p)];
      }
    }
    double[][] covariance = new double[n][n];
    for (Ranked each : ranked) {
      double[] of = each.estimate().mean();
      for (int p = 0; p < n; p++) {
        int i = index(each, wanted, p);
        for (int q = 0; q < n; q++) {
          int j = index(each, wanted, q);
          covariance[p][q] +=
              each.probability()
                  * (each.estimate().covariance(i, j) + (of[i] - mean[p]) * (of[j] - mean[q]));
        }
      }
    }
    return Prior.of(wanted.parameters(), mean, covariance);
  }

  private static int index(Ranked of, Prior wanted, int parameter) {
    return of.estimate().prior().parameters().index(wanted.parameters().get(parameter).id());
  }
}
