package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.LogSite;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Parameter;

/** How far estimates were off, parameter by parameter, and forecasts of a next cook. */
final class Recovered {

  /** Standard normal quantile of 0.95. */
  static final double NINETY = 1.6448536269514722;

  /** Prior spreads between median and bound below which a posterior is no normal distribution. */
  private static final double ROOM = 2;

  private final Tally[] bias = tallies();
  private final Tally[] standardised = tallies();
  private final Tally[] covered = tallies();
  private final Tally[] contraction = tallies();
  private final Tally core = new Tally();
  private final Tally time = new Tally();
  private int failed;

  private static Tally[] tallies() {
    Tally[] tallies = new Tally[StudyCook.PARAMETERS.size()];
    for (int p = 0; p < tallies.length; p++) {
      tallies[p] = new Tally();
    }
    return tallies;
  }

  /** An estimate that was not found counts as one that held nothing. */
  void addFailed() {
    failed++;
    for (Tally each : covered) {
      each.add(0);
    }
  }

  /**
   * Adds an estimate.
   *
   * @param known whether the truth has a parameter of the same meaning
   */
  void add(MapEstimate estimate, double[] truth, boolean[] known) {
    Prior belief = estimate.asPrior();
    double[] expected = belief.expected();
    for (int p = 0; p < truth.length; p++) {
      if (known[p]) {
        bias[p].add((expected[p] - truth[p]) / Truths.PRIOR.spread(p));
        double error = estimate.mean()[p] - truth[p];
        standardised[p].add(error / estimate.spread(p));
        covered[p].add(isWithin(belief.below(p, truth[p])) ? 1 : 0);
        contraction[p].add(estimate.contraction(p));
      }
    }
  }

  /** Whether a share of the belief lies in the middle 90 % of it. */
  private static boolean isWithin(double below) {
    return below >= 0.05 && below <= 0.95;
  }

  /** Adds a forecast of a next cook. */
  void add(Forecast forecast, StudyLog truth) {
    core.add(forecast.coreCovered(truth.result()));
    time.add(forecast.timeCovered(truth.timeToTarget()));
  }

  /** What a next cook on the cooker of an estimate gets. */
  static Prior next(MapEstimate estimate) {
    return Truths.onCooker(
        Truths.population().cooker(List.of(LogSite.of(estimate, Truths.OF_COOKER))));
  }

  /** Mean error and its spread. */
  List<Bar> errorBars() {
    List<Bar> bars = new ArrayList<>();
    for (int p = 0; p < bias.length; p++) {
      Parameter parameter = StudyCook.PARAMETERS.get(p);
      bars.add(Bar.of(StudyCook.IDS.get(p) + ": mean error / prior sd", bias[p].mean(), -0.1, 0.1));
      bars.add(
          new Bar(
              StudyCook.IDS.get(p) + ": sd of error / stated sd",
              standardised[p].spread(),
              0.9,
              1.1,
              isNormal(parameter)));
    }
    return bars;
  }

  /** Coverage of the parameters' and forecasts' 90 % intervals. */
  List<Bar> coverageBars(double low, double high) {
    List<Bar> bars = new ArrayList<>();
    for (int p = 0; p < covered.length; p++) {
      bars.add(Bar.of(StudyCook.IDS.get(p) + ": coverage of 90 %", covered[p].mean(), low, high));
    }
    bars.add(Bar.of("core of the next cook: coverage of 90 %", core.mean(), low, high));
    bars.add(Bar.of("time to target of the next cook: coverage of 90 %", time.mean(), low, high));
    return bars;
  }

  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    List<String> bounded = new ArrayList<>();
    StringBuilder learned = new StringBuilder("mean contraction:");
    StringBuilder scatter =
        new StringBuilder("standard error of the mean error by pairs of cases:");
    for (int p = 0; p < contraction.length; p++) {
      Parameter parameter = StudyCook.PARAMETERS.get(p);
      learned.append(
          String.format(Locale.ROOT, " %s %.2f", StudyCook.IDS.get(p), contraction[p].mean()));
      scatter.append(
          String.format(Locale.ROOT, " %s %.3f", StudyCook.IDS.get(p), bias[p].errorByPairs()));
      if (!isNormal(parameter)) {
        bounded.add(StudyCook.IDS.get(p));
      }
    }
    remarks.add(learned.toString());
    remarks.add(
        "not normal, since a bound is within two prior spreads of the median, so that the spread of"
            + " the error has no bar: "
            + bounded);
    remarks.add("estimates not found: " + failed);
    remarks.add(scatter.toString());
    return remarks;
  }

  private static boolean isNormal(Parameter parameter) {
    double room =
        Math.min(parameter.centre() - parameter.lowest(), parameter.highest() - parameter.centre());
    return room >= ROOM * parameter.spread();
  }

  /** All parameters known. */
  static boolean[] all() {
    boolean[] known = new boolean[StudyCook.PARAMETERS.size()];
    Arrays.fill(known, true);
    return known;
  }

  /** Forecast of a next cook, added. */
  static Forecast forecast(MapEstimate estimate, StudyLog next, RandomGenerator random) {
    return Forecast.of(next(estimate), next, random);
  }
}
