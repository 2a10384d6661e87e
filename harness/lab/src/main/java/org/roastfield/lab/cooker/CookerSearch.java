package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.ChamberEstimate;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.ForwardModel;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.inference.WeightedDraws;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;

/**
 * Finds what logs say of a cooker: the most probable numbers and a normal distribution around them,
 * or importance draws where that will not do. The same arguments give the same bits.
 */
public final class CookerSearch {

  /** A mean farther from the most probable numbers than this many spreads is not normal. */
  private static final double LEANING = 0.5;

  private final Optional<CookerProfile> before;
  private final OtherCookers others;
  private final Predicate<Parameter> free;
  private final Simulator simulator;
  private final Consumer<Progress> progress;
  private final Runnable check;
  private int computed;
  private Optional<Found> best = Optional.empty();

  /**
   * A search.
   *
   * @param before what is known of the cooker from other logs
   * @param free which parameters are to be found
   * @param progress told how far the search is
   * @param check asked before each cook is built, in the search and in whatever is made of the logs
   *     that it found; may throw to stop that, but no {@link IllegalArgumentException}
   */
  public CookerSearch(
      Optional<CookerProfile> before,
      Predicate<Parameter> free,
      Simulator simulator,
      Consumer<Progress> progress,
      Runnable check) {
    this(before, OtherCookers.NONE, free, simulator, progress, check);
  }

  private CookerSearch(
      Optional<CookerProfile> before,
      OtherCookers others,
      Predicate<Parameter> free,
      Simulator simulator,
      Consumer<Progress> progress,
      Runnable check) {
    this.before = before;
    this.others = others;
    this.free = free;
    this.simulator = simulator;
    this.progress = progress;
    this.check = check;
  }

  /**
   * The same for a cooker that is believed to be like others before its first log.
   *
   * @throws IllegalArgumentException if something is known of it from older logs: what was believed
   *     before those cannot be changed any more
   */
  public CookerSearch among(OtherCookers cookers) {
    if (before.isPresent()) {
      throw new IllegalArgumentException(
          "a cooker must be without a profile to be learned among others, had "
              + before.get().id()
              + ": calibrate all of its logs together");
    }
    return new CookerSearch(before, cookers, free, simulator, progress, check);
  }

  /**
   * How far a search is.
   *
   * @param logs whose cooks are computed
   * @param evaluations of all of them together so far
   */
  public record Progress(int logs, int evaluations) {}

  /**
   * What came of a search.
   *
   * @param logs as one calibration
   * @param model of them
   * @param calibration of them, with what was believed before
   * @param estimate most probable numbers
   * @param draws if they were asked for or needed
   * @param evaluations of the model
   * @param starts searches
   */
  public record Found(
      CookerLogs logs,
      CookModel model,
      Calibration calibration,
      MapEstimate estimate,
      Optional<WeightedDraws> draws,
      int evaluations,
      int starts) {

    /** Whether the draws stand for the belief, not the normal distribution. */
    public boolean byDraws() {
      return draws.isPresent() && draws.get().isReliable();
    }

    /** Mean and covariance of all coordinates. */
    public Prior belief() {
      return byDraws()
          ? Prior.of(
              logs.parameters(), draws.orElseThrow().mean(), draws.orElseThrow().covariance())
          : estimate.asPrior();
    }
  }

  /**
   * Searches.
   *
   * @param starts at least 1
   * @param sample whether importance draws are wanted in any case
   * @param seed of the draws
   * @throws IllegalArgumentException if no number of the cooker is to be found, or the cooks cannot
   *     be computed anywhere near the prior
   */
  public Found find(List<LoggedCase> cases, int starts, boolean sample, long seed) {
    CookerLogs logs =
        CookerLogs.of(
                cases.stream().map(others::in).toList(),
                free,
                before
                    .map(profile -> CookerNumbers.ofCores(profile.parameters()))
                    .orElse(ParameterSet.empty()))
            .asking(check);
    if (logs.parameters().of(Owner.COOKER).size() == 0) {
      throw new IllegalArgumentException(
          "at least one number of the cooker must be free, such as convection");
    }
    CookModel model = logs.model(simulator);
    // What older logs said stays as it is, wherever the new ones are: a forecast beyond the range
    // of validity is in more doubt, evidence from there is not.
    Prior prior =
        before
            .map(profile -> profile.within(logs.parameters(), true))
            .orElseGet(() -> Prior.of(logs.parameters()));
    computed = 0;
    ForwardModel counted =
        (coordinates, predicted, derivatives) -> {
          computed++;
          progress.accept(new Progress(cases.size(), computed));
          return model.at(coordinates, predicted, derivatives);
        };
    Calibration calibration = Calibration.of(prior, model.evidence(), counted);
    MapEstimate estimate = calibration.map();
    if (!estimate.isFound()) {
      throw new IllegalArgumentException(
          "the cooks of these logs cannot be computed near what is believed of them: "
              + estimate.status());
    }
    best = Optional.of(found(logs, model, calibration, estimate, Optional.empty(), 1));
    if (starts > 1) {
      estimate = calibration.map(starts);
      best = Optional.of(found(logs, model, calibration, estimate, Optional.empty(), starts));
    }
    Optional<WeightedDraws> draws =
        sample || isLeaning(estimate)
            ? Optional.of(
                ImportanceSampler.standard()
                    .sample(estimate, calibration.density(estimate), new SplittableRandom(seed)))
            : Optional.empty();
    Found all = found(logs, model, calibration, estimate, draws, starts);
    best = Optional.of(all);
    return all;
  }

  private Found found(
      CookerLogs logs,
      CookModel model,
      Calibration calibration,
      MapEstimate estimate,
      Optional<WeightedDraws> draws,
      int starts) {
    return new Found(logs, model, calibration, estimate, draws, computed, starts);
  }

  /** The last that was found, also by a search that was stopped; empty if it was too early. */
  public Optional<Found> best() {
    return best;
  }

  /** Whether a number of the cooker is not like normal ones. */
  private static boolean isLeaning(MapEstimate estimate) {
    for (int p = 0; p < estimate.prior().size(); p++) {
      double apart = Math.abs(estimate.mean()[p] - estimate.coordinates()[p]);
      if (estimate.prior().parameters().get(p).owner() == Owner.COOKER
          && apart > LEANING * estimate.spread(p)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The profile that a search ends in.
   *
   * @param id of the profile
   * @param belief of all coordinates of {@code found}, with what may be wrong of the logs
   * @param hashes of the readings of each log, in their order
   * @param status whether the profile can be relied on by these logs, in a word; it gets no better
   *     by them than the profile before them was
   * @param complete whether the search came to its end; so must have that before
   */
  public CookerProfile profile(
      String id, Found found, Prior belief, List<String> hashes, String status, boolean complete) {
    ParameterSet cooker = found.logs().parameters().of(Owner.COOKER);
    ParameterSet original = ParameterSet.empty();
    for (Parameter parameter : cooker.list()) {
      original = original.with(original(parameter));
    }
    if (knowsHabit(found.logs().cases())) {
      for (Parameter parameter : habit().list()) {
        original = original.with(original(parameter));
      }
    }
    List<CookerProfile.Log> logs = new ArrayList<>();
    before.ifPresent(old -> logs.addAll(old.logs()));
    boolean madeUp = before.map(CookerProfile::madeUp).orElse(others.madeUp());
    for (int c = 0; c < found.logs().cases().size(); c++) {
      LoggedCase one = found.logs().cases().get(c);
      madeUp |= one.cook().file().madeUp();
      logs.add(new CookerProfile.Log(one.name(), hashes.get(c), readings(one), rms(found, c)));
    }
    CookerProfile.Validity validity = Reach.of(found.logs().cases()).widened();
    return new CookerProfile(
        id,
        CookerProfile.MODEL,
        madeUp,
        complete && before.map(CookerProfile::complete).orElse(true),
        original,
        belief(belief, original, found.logs().cases()),
        before.map(old -> old.validity().with(validity)).orElse(validity),
        errors(found),
        diagnosis(found, status(status)),
        logs);
  }

  private String status(String ofLogs) {
    return before
        .map(old -> CookerProfile.Diagnosis.worse(old.diagnosis().status(), ofLogs))
        .orElse(ofLogs);
  }

  /** Status of the profile before, if it is less reliable than one of the logs alone. */
  public Optional<String> inherited(String ofLogs) {
    return Optional.of(status(ofLogs)).filter(status -> !status.equals(ofLogs));
  }

  /** Whether something is known of what the air does by itself. */
  private boolean knowsHabit(List<LoggedCase> cases) {
    return before.flatMap(CookerProfile::habit).isPresent() || !chambers(cases).isEmpty();
  }

  private List<ChamberTrace> chambers(List<LoggedCase> cases) {
    return FireParameters.ofHabit().list().stream().allMatch(free)
        ? cases.stream().flatMap(one -> one.chamber().stream()).toList()
        : List.of();
  }

  /**
   * How far the chambers of logs and what a profile says of its air stand apart; nothing without a
   * profile that knows.
   */
  public Conflict habitConflict(List<LoggedCase> cases) {
    return before
        .flatMap(CookerProfile::habit)
        .map(habit -> ChamberEstimate.conflict(habit, chambers(cases)))
        .orElse(Conflict.NONE);
  }

  /**
   * How much more probable the chambers of logs are with a profile than without, as a logarithm
   * [nat]; 0 without a profile that knows.
   */
  public double habitRatio(List<LoggedCase> cases) {
    return before
        .flatMap(CookerProfile::habit)
        .map(habit -> ChamberEstimate.logRatio(habit, chambers(cases)))
        .orElse(0.0);
  }

  private Prior belief(Prior all, ParameterSet original, List<LoggedCase> cases) {
    ParameterSet cores = CookerNumbers.ofCores(original);
    Prior belief = Prior.of(original).with(CookerNumbers.part(all, cores));
    return cores.size() == original.size()
        ? belief
        : belief.with(
            ChamberEstimate.cooker(
                before.flatMap(CookerProfile::habit).orElseGet(() -> Prior.of(habit())),
                chambers(cases)));
  }

  /** Numbers of the air with what is believed of them before the first log. */
  private ParameterSet habit() {
    ParameterSet habit = ParameterSet.empty();
    for (Parameter parameter : FireParameters.ofHabit().list()) {
      habit = habit.with(others.prior(parameter));
    }
    return habit;
  }

  private Parameter original(Parameter parameter) {
    return before
        .filter(old -> old.parameters().has(parameter.id()))
        .map(old -> old.parameters().get(old.parameters().index(parameter.id())))
        .orElse(parameter);
  }

  private static CookerProfile.Diagnosis diagnosis(Found found, String status) {
    return new CookerProfile.Diagnosis(
        status,
        found.starts(),
        found.estimate().agreement(),
        found.estimate().objective(),
        found.evaluations(),
        found.draws().map(WeightedDraws::tailShape).orElse(Double.NaN));
  }

  private static ErrorModel errors(Found found) {
    int last = found.model().evidence().series().size() - 1;
    return last < 0 ? ErrorModel.CORE : found.estimate().errors(last);
  }

  private static int readings(LoggedCase one) {
    return one.traces().stream().mapToInt(trace -> trace.readings().size()).sum();
  }

  /** Root mean square of computed less measured over the traces of a log [K]. */
  public static double rms(Found found, int log) {
    double[] predicted = found.estimate().predicted();
    int row = 0;
    for (int c = 0; c < log; c++) {
      row += readings(found.logs().cases().get(c));
    }
    double sum = 0;
    int count = 0;
    for (ObservedTrace trace : found.logs().cases().get(log).traces()) {
      Series series = trace.readings();
      for (int k = 0; k < series.size(); k++, row++, count++) {
        double error = predicted[row] - series.value(k);
        sum += error * error;
      }
    }
    return count == 0 ? 0 : Math.sqrt(sum / count);
  }
}
