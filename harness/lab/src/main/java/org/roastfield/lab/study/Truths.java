package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.inference.CookerPopulation;
import org.roastfield.core.inference.LogSite;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.lab.synthetic.Noise;

/** Draws of truths and what is believed of them. */
final class Truths {

  /** The parameters' own priors. */
  static final Prior PRIOR = Prior.of(StudyCook.PARAMETERS);

  /** What the air of cookers does by itself. */
  static final Prior HABIT = Prior.of(FireParameters.ofHabit());

  /** What a log says of its cooker, see {@link LogSite}. */
  static final List<List<String>> OF_COOKER =
      StudyCook.PARAMETERS.of(Owner.COOKER).list().stream()
          .map(parameter -> List.of(parameter.id()))
          .toList();

  private static final String GENERATOR = "L64X128MixRandom";
  private static final long SEED_STEP = 0x9E3779B97F4A7C15L;
  private static final int NOISE_STREAM = 7;

  /** Generator of the strata of truths: beyond those of cases. */
  private static final int STRATA = 1_000_000;

  private Truths() {}

  /** Generator of a case of a study: the same in whatever order cases are done. */
  static RandomGenerator random(long seed, int number) {
    return RandomGeneratorFactory.of(GENERATOR).create(seed + number * SEED_STEP);
  }

  /**
   * Truths in opposite pairs, each a draw of the prior, of which every coordinate is spread evenly:
   * as many strata of equal chance as pairs, each with one, in an order of its own. What truths
   * have in common by chance goes out of means, and most of it out of spreads and coverages.
   *
   * @param cases how many, at least 1; of an odd number the last has no partner
   */
  static List<double[]> inPairs(long seed, int cases) {
    int pairs = (cases + 1) / 2;
    RandomGenerator random = random(seed, STRATA);
    double[][] shares = new double[StudyCook.PARAMETERS.size()][];
    for (int p = 0; p < shares.length; p++) {
      shares[p] = strata(pairs, random);
    }
    List<double[]> truths = new ArrayList<>();
    for (int i = 0; i < cases; i++) {
      double[] truth = new double[shares.length];
      for (int p = 0; p < truth.length; p++) {
        truth[p] = quantile(p, shares[p][i / 2]);
      }
      truths.add(i % 2 == 0 ? truth : opposite(truth));
    }
    return truths;
  }

  /** One share in each of as many strata, in any order. */
  private static double[] strata(int count, RandomGenerator random) {
    double[] shares = new double[count];
    for (int i = 0; i < count; i++) {
      int place = random.nextInt(i + 1);
      shares[i] = shares[place];
      shares[place] = (i + random.nextDouble()) / count;
    }
    return shares;
  }

  /** Coordinate below which a share of the prior lies, of what its bounds leave. */
  private static double quantile(int p, double share) {
    NormalDistribution prior = new NormalDistribution(null, PRIOR.mean()[p], PRIOR.spread(p));
    double below = prior.cumulativeProbability(StudyCook.PARAMETERS.get(p).lowest());
    double above = prior.cumulativeProbability(StudyCook.PARAMETERS.get(p).highest());
    return prior.inverseCumulativeProbability(below + share * (above - below));
  }

  /** As far on the other side of each median, by the prior's own chances within its bounds. */
  static double[] opposite(double[] truth) {
    double[] opposite = new double[truth.length];
    for (int p = 0; p < truth.length; p++) {
      opposite[p] = quantile(p, 1 - PRIOR.below(p, truth[p]));
    }
    return opposite;
  }

  /** Errors and fires of a case; independent of {@link #random}. */
  static Noise noise(long seed, int number) {
    return Noise.ofSeed(seed * 1_000_003 + number, NOISE_STREAM);
  }

  /** The same cooker with a new cut and probe. */
  static double[] nextCook(double[] cooker, RandomGenerator random) {
    double[] next = PRIOR.draw(random);
    System.arraycopy(cooker, 0, next, 0, StudyCook.OF_COOKER);
    return next;
  }

  /** What the air of a cooker does in one of its cooks: coordinates of {@link #HABIT}. */
  static double[] habitOfCook(double[] cooker, Noise noise) {
    double[] cook = new double[cooker.length];
    for (int p = 0; p < cook.length; p++) {
      Parameter parameter = HABIT.parameters().get(p);
      double spread = FireParameters.betweenCooks(parameter.id());
      cook[p] = noise.normal(cooker[p], spread, parameter.lowest(), parameter.highest());
    }
    return cook;
  }

  /** A prior of a cook on a cooker of which something is known. */
  static Prior onCooker(Prior cooker) {
    return PRIOR.with(cooker);
  }

  /**
   * Cookers of which nothing was learned yet. What cooks add to convection is the cut's own here.
   */
  static CookerPopulation population() {
    int n = StudyCook.OF_COOKER;
    return CookerPopulation.assumed(
        Prior.of(StudyCook.PARAMETERS.of(Owner.COOKER)), new double[n][n]);
  }
}
