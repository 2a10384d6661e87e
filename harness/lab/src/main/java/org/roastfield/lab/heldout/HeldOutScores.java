package org.roastfield.lab.heldout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.CookerPopulation;
import org.roastfield.core.inference.LogSite;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.score.ForecastCase;
import org.roastfield.lab.score.ScoreSummary;

/**
 * Scores of each cook by what the others say. The group is the cook: no reading of a cook that is
 * kept aside is in the profile it is foretold with.
 *
 * @param errors of traces that the profile alone foretells, one a cook
 * @param forecasts scores by share of the cook that was seen, then by forecaster
 * @param leftOut cooks that were not scored, and why
 */
public record HeldOutScores(
    List<TraceError> errors,
    Map<Double, Map<String, ScoreSummary>> forecasts,
    List<String> leftOut) {

  /** Shares of the way to the target after which the log is cut. */
  public static final List<Double> SHARES = List.of(0.25, 0.5, 0.75);

  /** Fitted to the log so far, from the profile that the other cooks gave. */
  public static final String PROFILE = "profile and log so far";

  /** Fitted to the log so far, from the priors alone. */
  public static final String LOG_ALONE = "log so far, no profile";

  /** Neither profile nor log. */
  public static final String PRIOR = "priors alone";

  /** A straight line through the last half hour. */
  public static final String LINE = "straight line of 30 min";

  private static final String GENERATOR = "L64X128MixRandom";
  private static final int LEAST_SEEN = 5;

  /** Copies. */
  public HeldOutScores {
    errors = List.copyOf(errors);
    forecasts = new LinkedHashMap<>(forecasts);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Scores of a forecaster.
   *
   * @param share of the way that was seen
   * @throws IllegalArgumentException if there are none
   */
  public ScoreSummary of(double share, String forecaster) {
    ScoreSummary summary = forecasts.getOrDefault(share, Map.of()).get(forecaster);
    if (summary == null) {
      throw new IllegalArgumentException(
          "share and forecaster must be of those scored, were " + share + ", " + forecaster);
    }
    return summary;
  }

  /**
   * How far a trace was off that was foretold without any of its readings.
   *
   * @param cook its name
   * @param others how many cooks its profile came from
   * @param rootMeanSquare [K]
   */
  public record TraceError(String cook, int others, double rootMeanSquare) {}

  /**
   * Scores cooks.
   *
   * @param cooks at least two; those of a cooker without another cook get its priors
   * @param seed of the draws
   * @param progress is told what is being done
   * @throws IllegalArgumentException if there are fewer, or no cook reaches its target
   */
  public static HeldOutScores of(List<ScoredCook> cooks, long seed, Consumer<String> progress) {
    if (cooks.size() < 2) {
      throw new IllegalArgumentException("cooks must be at least 2, were " + cooks.size());
    }
    List<String> leftOut = new ArrayList<>();
    Map<ScoredCook, LogSite> sites = new LinkedHashMap<>();
    for (ScoredCook cook : cooks) {
      progress.accept("fits " + cook.name());
      double end = cook.times()[cook.times().length - 1];
      MapEstimate estimate =
          Calibration.of(cook.prior(), cook.evidence(end), cook.model(end)).map();
      if (estimate.isFound()) {
        sites.put(cook, LogSite.of(estimate, shared(ofCooker(cooks, cook))));
      } else {
        leftOut.add(cook.name() + " says nothing of its cooker: " + estimate.status());
      }
    }
    List<TraceError> errors = new ArrayList<>();
    Map<Double, Map<String, List<ForecastCase>>> cases = new LinkedHashMap<>();
    RandomGenerator random = RandomGeneratorFactory.of(GENERATOR).create(seed);
    for (ScoredCook cook : cooks) {
      progress.accept("foretells " + cook.name());
      List<LogSite> others = new ArrayList<>();
      sites.forEach(
          (other, site) -> {
            if (other != cook && other.cooker().equals(cook.cooker())) {
              others.add(site);
            }
          });
      Prior profile = profile(cooks, cook, others);
      errors.add(new TraceError(cook.name(), others.size(), error(cook, profile)));
      CookOutlook outlook = new CookOutlook(cook);
      if (outlook.outcome() < Double.POSITIVE_INFINITY) {
        forecast(cook, outlook, profile, random, cases, leftOut);
      } else {
        leftOut.add(cook.name() + " never showed its target");
      }
    }
    return new HeldOutScores(errors, summaries(cases, random), leftOut);
  }

  /** The cooker's parameters that all cooks on it have. */
  private static ParameterSet ofCooker(List<ScoredCook> cooks, ScoredCook cook) {
    ParameterSet common = ParameterSet.empty();
    for (Parameter parameter : cook.prior().parameters().of(Owner.COOKER).list()) {
      boolean everywhere =
          cooks.stream()
              .filter(other -> other.cooker().equals(cook.cooker()))
              .allMatch(other -> other.prior().parameters().has(parameter.id()));
      common = everywhere ? common.with(parameter) : common;
    }
    return common;
  }

  private static List<List<String>> shared(ParameterSet parameters) {
    return parameters.list().stream().map(parameter -> List.of(parameter.id())).toList();
  }

  private static Prior profile(List<ScoredCook> cooks, ScoredCook cook, List<LogSite> others) {
    ParameterSet owned = ofCooker(cooks, cook);
    int n = owned.size();
    CookerPopulation population = CookerPopulation.assumed(Prior.of(owned), new double[n][n]);
    return cook.prior().with(population.cooker(others));
  }

  private static double error(ScoredCook cook, Prior profile) {
    double[] shown = cook.shown(profile.mean(), cook.times());
    double squares = 0;
    for (int k = 0; k < shown.length; k++) {
      double off = shown[k] - cook.readings()[k];
      squares += off * off;
    }
    return Math.sqrt(squares / shown.length);
  }

  private static void forecast(
      ScoredCook cook,
      CookOutlook outlook,
      Prior profile,
      RandomGenerator random,
      Map<Double, Map<String, List<ForecastCase>>> cases,
      List<String> leftOut) {
    for (double share : SHARES) {
      double now = share * outlook.outcome();
      if (cook.times()[LEAST_SEEN - 1] <= now) {
        Map<String, List<ForecastCase>> here =
            cases.computeIfAbsent(share, key -> new LinkedHashMap<>());
        add(here, PROFILE, outlook.fitted(profile, now, random));
        add(here, LOG_ALONE, outlook.fitted(cook.prior(), now, random));
        add(here, PRIOR, outlook.unseen(cook.prior(), now, random));
        add(here, LINE, outlook.straight(now));
      } else {
        leftOut.add(
            cook.name() + " at " + share + " of the way: fewer than " + LEAST_SEEN + " readings");
      }
    }
  }

  private static void add(
      Map<String, List<ForecastCase>> cases, String forecaster, ForecastCase one) {
    cases.computeIfAbsent(forecaster, key -> new ArrayList<>()).add(one);
  }

  private static Map<Double, Map<String, ScoreSummary>> summaries(
      Map<Double, Map<String, List<ForecastCase>>> cases, RandomGenerator ties) {
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("at least one cook must show its target, none did");
    }
    Map<Double, Map<String, ScoreSummary>> summaries = new LinkedHashMap<>();
    cases.forEach(
        (share, by) -> {
          Map<String, ScoreSummary> scored = new LinkedHashMap<>();
          by.forEach((name, list) -> scored.put(name, ScoreSummary.of(list, ties)));
          summaries.put(share, scored);
        });
    return summaries;
  }
}
