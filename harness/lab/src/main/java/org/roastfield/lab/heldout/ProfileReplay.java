package org.roastfield.lab.heldout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.inference.DriftState;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.plan.CookerBelief;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.Comparison;
import org.roastfield.lab.replay.ComparisonOptions;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.Replay;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.score.Predictive;

/**
 * A log replayed by the profile of its cooker: the cook as the log says that it went, with every
 * number at the median of what a new cook gets, and the band that draws of these numbers and of the
 * profile's errors make. Nothing is fitted to the log.
 */
public final class ProfileReplay {

  /** Cooks behind a band; the tenth lowest and highest bound it. */
  public static final int DRAWS = 100;

  private final CookLog log;
  private final String hash;
  private final CookerProfile profile;
  private final VariedCook cook;
  private final CookerBelief belief;
  private final ComparisonOptions options;
  private final boolean startFromLog;

  private ProfileReplay(
      CookLog log,
      String hash,
      CookerProfile profile,
      VariedCook cook,
      ComparisonOptions options,
      boolean startFromLog) {
    this.log = log;
    this.hash = hash;
    this.profile = profile;
    this.cook = cook;
    this.belief = CookerBelief.of(profile, cook);
    this.options = options;
    this.startFromLog = startFromLog;
  }

  /**
   * Prepares a replay.
   *
   * @param events of the log; none for a file of readings alone
   * @param hash of its readings
   * @param startFromLog whether the log's first core reading is the temperature that the cut starts
   *     with
   * @throws IllegalArgumentException if the log has no core channel or it is not clear which probe
   *     it is from
   * @throws org.roastfield.lab.plan.UnplannableException if the profile is not to be relied on
   */
  public static ProfileReplay of(
      CookFile file,
      CookLog log,
      List<LogEvent> events,
      String hash,
      ComparisonOptions options,
      boolean startFromLog,
      CookerProfile profile) {
    LogSpan span = new LogSpan(0, options.until());
    CookLog used = span.ended(log);
    VariedCook cook = VariedCook.logged(file, used, events, options.probe());
    if (!cook.channels().contains(CookLog.CORE)) {
      throw new IllegalArgumentException(log.fileName() + " has no core channel to compare with");
    }
    return new ProfileReplay(used, hash, profile, cook, options, startFromLog);
  }

  /** The cook at the medians. */
  public Cook cook() {
    return cook(belief.middle());
  }

  private Cook cook(ParameterPoint point) {
    Cook built = cook.apply(point);
    if (!startFromLog) {
      return built;
    }
    Cut cut = new Cut(built.cut().shape(), built.cut().material(), firstReading());
    return new Cook(cut, built.stages(), built.probes());
  }

  private double firstReading() {
    return log.channel(CookLog.CORE).orElseThrow().temperature(0);
  }

  /**
   * Comparison of the cook's result with the log.
   *
   * @param simulator of the band
   * @param seed of its draws
   */
  public ReplayResult compare(SimulationResult result, Simulator simulator, long seed) {
    ReplayResult central = replay(result.cook()).compare(result);
    return central.with(byProfile(central.core(), simulator, seed));
  }

  private Replay replay(Cook computed) {
    String probe = cook.probe(CookLog.CORE);
    return Replay.of(cook.file(), log, options, startFromLog, computed, probe, words(computed));
  }

  private ByProfile byProfile(List<Comparison> core, Simulator simulator, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] times = core.stream().mapToDouble(Comparison::time).toArray();
    List<double[]> shown = new ArrayList<>();
    for (int d = 0; d < DRAWS; d++) {
      ParameterPoint point = belief.at(belief.prior().draw(random));
      double[] errors = errors(times, random);
      computed(point, simulator).ifPresent(pairs -> shown.add(sum(pairs, errors)));
    }
    if (shown.isEmpty()) {
      throw new IllegalArgumentException(
          "none of " + DRAWS + " cooks that profile " + profile.id() + " allows can be computed");
    }
    return new ByProfile(
        profile.id(),
        belief.words(),
        profile.logs().stream().anyMatch(one -> one.sha256().equals(hash)),
        band(shown, times.length),
        shown.size(),
        asFarOff(shown, core),
        DRAWS - shown.size(),
        without(simulator));
  }

  /** Share of drawn readings that are as far from what the median cook shows as the log's are. */
  private static double asFarOff(List<double[]> shown, List<Comparison> core) {
    double logged = core.stream().mapToDouble(pair -> square(pair, pair.measured())).sum();
    int count = 0;
    for (double[] one : shown) {
      double sum = 0;
      for (int k = 0; k < one.length; k++) {
        sum += square(core.get(k), one[k]);
      }
      count += sum >= logged ? 1 : 0;
    }
    return (double) count / shown.size();
  }

  private static double square(Comparison pair, double reading) {
    double off = reading - pair.computed();
    return off * off;
  }

  private ErrorSummary without(Simulator simulator) {
    Cook stated = cook(CookerBelief.population(cook).middle());
    if (simulator.run(stated) instanceof Outcome.Completed completed) {
      return replay(stated).compare(completed.result()).errors();
    }
    throw new IllegalArgumentException("the cook cannot be computed without the profile");
  }

  private Optional<List<Comparison>> computed(ParameterPoint point, Simulator simulator) {
    Cook drawn;
    try {
      drawn = cook(point);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    return simulator.run(drawn) instanceof Outcome.Completed completed
        ? Optional.of(replay(drawn).pairs(completed.result()))
        : Optional.empty();
  }

  /** Drift and noise of readings, by what the profile's last log showed [K]. */
  private double[] errors(double[] times, SplittableRandom random) {
    ErrorModel model = profile.errors();
    double variance = model.driftSpread() * model.driftSpread();
    double[] errors = new DriftState(model, times[0] - 1, 0, variance).path(times, random);
    for (int k = 0; k < errors.length; k++) {
      errors[k] += model.noise() * random.nextGaussian();
    }
    return errors;
  }

  private static double[] sum(List<Comparison> pairs, double[] errors) {
    double[] sum = errors.clone();
    for (int k = 0; k < sum.length; k++) {
      sum[k] += pairs.get(k).computed();
    }
    return sum;
  }

  private static List<ByProfile.Band> band(List<double[]> shown, int readings) {
    List<ByProfile.Band> band = new ArrayList<>();
    for (int k = 0; k < readings; k++) {
      int place = k;
      Predictive draws =
          Predictive.ofDraws(shown.stream().mapToDouble(one -> one[place]).toArray());
      band.add(new ByProfile.Band(draws.quantile(0.1), draws.quantile(0.9)));
    }
    return band;
  }

  private List<String> words(Cook computed) {
    List<String> words = new ArrayList<>();
    words.add(belief.words());
    words.add("numbers of the cooker: " + numbers());
    words.add("numbers of the cut and its probe: the medians of what is believed before any log");
    words.addAll(cook.assumptions());
    words.add(
        String.format(
            Locale.ROOT,
            "start temperature: %.1f °C, %s",
            Temperatures.toCelsius(computed.cut().startTemperature()),
            startFromLog ? "the log's first core reading" : "the cook file's statement"));
    return words;
  }

  private String numbers() {
    List<String> numbers = new ArrayList<>();
    for (int p = 0; p < profile.parameters().size(); p++) {
      Parameter parameter = profile.parameters().get(p);
      boolean factor = parameter.unit().equals("1") && parameter.scale() == Scale.LOGARITHM;
      boolean sign = parameter.scale() != Scale.LOGARITHM;
      String format = factor ? " × %.2f" : sign ? " %+.1f" : " %.1f";
      numbers.add(
          parameter.id()
              + String.format(Locale.ROOT, format, profile.value(p))
              + (parameter.unit().equals("1") ? "" : " " + parameter.unit()));
    }
    return String.join(", ", numbers);
  }
}
