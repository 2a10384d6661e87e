package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterSet;

/**
 * How cookers differ, and how the cooks on one cooker do, eqs. (90)-(92): the numbers of a cook are
 * those of its cooker, drawn once from a normal distribution over cookers, plus what the cook adds,
 * drawn from another around 0. Immutable.
 *
 * <p>From the {@link LogSite}s of many logs it learns both distributions; with one cooker's sites
 * it says what is known of that cooker, and what its next cook gets: the second is wider by what
 * cooks add. Both spreads are taken as known there, as usual for an empirical prior.
 */
public final class CookerPopulation {

  /** Cookers whose number makes a spread over cookers worth publishing; assumed. */
  public static final int LEAST_COOKERS = 8;

  private static final int MOST_ROUNDS = 5000;
  private static final double SETTLED = 1e-7;

  private final ParameterSet parameters;
  private final RealVector mean;
  private final RealMatrix betweenCookers;
  private final RealMatrix betweenCooks;
  private final int cookers;
  private final double weight;

  private CookerPopulation(
      ParameterSet parameters,
      RealVector mean,
      RealMatrix betweenCookers,
      RealMatrix betweenCooks,
      int cookers,
      double weight) {
    this.parameters = parameters;
    this.mean = mean;
    this.betweenCookers = betweenCookers;
    this.betweenCooks = betweenCooks;
    this.cookers = cookers;
    this.weight = weight;
  }

  /**
   * A population that nobody has learned from logs yet.
   *
   * @param cookers distribution over cookers of the coordinates that they own
   * @param betweenCooks covariance of what a cook adds to each, symmetric, not negative; 0 where
   *     cooks on one cooker do not differ
   * @throws IllegalArgumentException if the sizes differ or a variance is negative
   */
  public static CookerPopulation assumed(Prior cookers, double[][] betweenCooks) {
    int n = cookers.size();
    Check.inRange("rows of betweenCooks", betweenCooks.length, n, n);
    for (int p = 0; p < n; p++) {
      Check.inRange("length of row " + p, betweenCooks[p].length, n, n);
      Check.notNegative("variance " + p + " of betweenCooks", betweenCooks[p][p]);
    }
    return new CookerPopulation(
        cookers.parameters(),
        Matrices.vector(cookers.mean()),
        Matrices.matrix(cookers.covariance()).copy(),
        Matrices.matrix(betweenCooks).copy(),
        0,
        Double.POSITIVE_INFINITY);
  }

  /** The coordinates that cookers own. */
  public ParameterSet parameters() {
    return parameters;
  }

  /** How many cookers it was learned from. */
  public int cookers() {
    return cookers;
  }

  /** Whether enough cookers stand behind it to show its spreads as something learned. */
  public boolean isPublishable() {
    return cookers >= LEAST_COOKERS;
  }

  /** Covariance of what cooks add; a copy. */
  public double[][] betweenCooks() {
    return betweenCooks.getData();
  }

  /** Covariance over cookers; a copy. */
  public double[][] betweenCookers() {
    return betweenCookers.getData();
  }

  /** What is believed of a cooker without a log, with what is not known of the mean of all. */
  public Prior newCooker() {
    return prior(mean, betweenCookers.scalarMultiply(1 + 1 / (weight + cookers)));
  }

  /** What is known of a cooker by its logs. */
  public Prior cooker(List<LogSite> logs) {
    Effect effect = effect(logs);
    return prior(effect.mean(), effect.covariance());
  }

  /** What a cook on a cooker without a log gets. */
  public Prior nextCook() {
    return widened(newCooker());
  }

  /** What the next cook on a cooker gets, from the logs of that cooker. */
  public Prior nextCook(List<LogSite> logs) {
    return widened(cooker(logs));
  }

  private Prior widened(Prior cooker) {
    RealMatrix wide = Matrices.matrix(cooker.covariance()).add(betweenCooks);
    return prior(Matrices.vector(cooker.mean()), wide);
  }

  private Prior prior(RealVector middle, RealMatrix covariance) {
    return Prior.of(parameters, middle.toArray(), Matrices.symmetric(covariance).getData());
  }

  /** Mean and covariance of one cooker's numbers. */
  private record Effect(RealVector mean, RealMatrix covariance) {}

  private Effect effect(List<LogSite> logs) {
    RealMatrix without = Matrices.inverse(betweenCookers);
    RealMatrix precision = without;
    RealVector weighted = without.operate(mean);
    for (LogSite log : logs) {
      Check.inRange("numbers of a log", log.size(), mean.getDimension(), mean.getDimension());
      LogSite blurred = log.blurred(betweenCooks);
      precision = precision.add(blurred.precision());
      weighted = weighted.add(blurred.weighted());
    }
    RealMatrix covariance = Matrices.symmetric(Matrices.inverse(precision));
    return new Effect(covariance.operate(weighted), covariance);
  }

  /**
   * The most probable population, by expectation and maximisation from this one.
   *
   * @param logs sites of each cooker's logs, one cooker a list
   * @param weight of this population, in cookers and in cooks: as if so many had been seen with its
   *     mean and covariances; at least 0. With 0 logs alone count, and a spread may go to 0
   * @throws IllegalArgumentException if there is no cooker, or one without a log
   * @throws IllegalStateException if it does not settle
   */
  public CookerPopulation learned(List<List<LogSite>> logs, double weight) {
    Check.inRange("cookers", logs.size(), 1, Integer.MAX_VALUE);
    Check.notNegative("weight", weight);
    for (List<LogSite> each : logs) {
      Check.inRange("logs of a cooker", each.size(), 1, Integer.MAX_VALUE);
    }
    CookerPopulation now = this;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      CookerPopulation next = now.improved(logs, this, weight);
      if (next.isNear(now)) {
        return next;
      }
      now = next;
    }
    throw new IllegalStateException(
        "the population did not settle in " + MOST_ROUNDS + " rounds: give this one more weight");
  }

  private CookerPopulation improved(
      List<List<LogSite>> logs, CookerPopulation first, double weight) {
    List<Effect> effects = new ArrayList<>();
    RealVector middle = first.mean.mapMultiply(weight);
    RealMatrix cooks = first.betweenCooks.scalarMultiply(weight);
    int seen = 0;
    for (List<LogSite> each : logs) {
      Effect effect = effect(each);
      effects.add(effect);
      middle = middle.add(effect.mean());
      for (LogSite log : each) {
        cooks = cooks.add(added(log, effect));
        seen++;
      }
    }
    int groups = logs.size();
    middle = middle.mapDivide(weight + groups);
    RealMatrix over =
        first.betweenCookers.add(square(first.mean.subtract(middle))).scalarMultiply(weight);
    for (Effect effect : effects) {
      over = over.add(effect.covariance()).add(square(effect.mean().subtract(middle)));
    }
    return new CookerPopulation(
        parameters,
        middle,
        Matrices.symmetric(over.scalarMultiply(1 / (weight + groups))),
        Matrices.symmetric(cooks.scalarMultiply(1 / (weight + seen))),
        groups,
        weight);
  }

  /** Expected square of what a cook adds: that of its mean, and its variance with the cooker's. */
  private RealMatrix added(LogSite log, Effect cooker) {
    RealMatrix own =
        Matrices.inverse(Matrices.identity(log.size()).add(betweenCooks.multiply(log.precision())))
            .multiply(betweenCooks);
    RealVector expected =
        own.operate(log.weighted().subtract(log.precision().operate(cooker.mean())));
    RealMatrix follows = own.multiply(log.precision());
    return own.add(Matrices.sandwich(follows, cooker.covariance())).add(square(expected));
  }

  private static RealMatrix square(RealVector of) {
    return of.outerProduct(of);
  }

  private boolean isNear(CookerPopulation other) {
    for (int p = 0; p < mean.getDimension(); p++) {
      double spread = Math.sqrt(betweenCookers.getEntry(p, p));
      if (Math.abs(mean.getEntry(p) - other.mean.getEntry(p)) > SETTLED * spread) {
        return false;
      }
    }
    return near(betweenCookers, other.betweenCookers) && near(betweenCooks, other.betweenCooks);
  }

  private static boolean near(RealMatrix a, RealMatrix b) {
    for (int p = 0; p < a.getRowDimension(); p++) {
      for (int q = 0; q <= p; q++) {
        double size = Math.sqrt(a.getEntry(p, p) * a.getEntry(q, q));
        if (Math.abs(a.getEntry(p, q) - b.getEntry(p, q)) > SETTLED * size) {
          return false;
        }
      }
    }
    return true;
  }
}
