package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerSearch;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.cooker.StrayingAir;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogFacts;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogUnit;
import org.roastfield.lab.synthetic.Noise;

/** Logs of cooks on one cooker, and the profile that calibration makes of them. */
final class TrialLogs {

  /** Between readings [s]. */
  private static final double INTERVAL = 120;

  /** Errors of the core's readings [K], and over what time the greater one drifts [s]; assumed. */
  private static final double WANDER = 0.3;

  private static final double WANDER_TIME = 450;
  private static final double NOISE = 0.1;
  private static final double CHAMBER_NOISE = 0.3;
  private static final int STREAM = 12;

  /** Faster than what calibration takes if nothing else is said. */
  private static final Settings SEARCHING =
      Settings.withDefaults().withAccuracy(0.1).withCells(14).withSurfaceCell(0.4e-3);

  private final List<LoggedCase> cases = new ArrayList<>();

  /**
   * Adds a cook that went by its file, with a sear; nothing if it never got to its reading.
   *
   * @return whether it was logged
   */
  boolean add(TrialKind kind, TrialTruth truth, ParameterPoint point, long seed) {
    Cook cook = truth.cook(kind, point, seed);
    Outcome outcome = Simulator.withDefaults().run(cook);
    if (!(outcome instanceof Outcome.Completed completed)) {
      return false;
    }
    String name = "log-" + (cases.size() + 1);
    LogPackage log = log(name, kind, point, completed.result(), seed);
    cases.add(LoggedCase.of(kind.file(), log, LogSpan.ALL, Optional.empty()));
    return true;
  }

  int size() {
    return cases.size();
  }

  /** What the logs say together, as calibration finds it. */
  CookerProfile profile(long seed) {
    CookerSearch search =
        new CookerSearch(
            Optional.empty(),
            parameter -> true,
            Simulator.with(SEARCHING),
            progress -> {},
            () -> {});
    CookerSearch.Found found = search.find(cases, 1, false, seed);
    List<String> hashes = Collections.nCopies(cases.size(), "0".repeat(64));
    return search.profile("trial", found, found.belief(), hashes, "as-stated", true);
  }

  private static LogPackage log(
      String name, TrialKind kind, ParameterPoint point, SimulationResult result, long seed) {
    double gentle = result.stages().get(0).end();
    double off = result.stages().get(result.stages().size() - 2).end();
    LogFacts facts =
        new LogFacts(
            name,
            name + ", made up",
            true,
            Optional.empty(),
            Optional.empty(),
            List.of(
                new LogFacts.Source("a computation, no such cook took place", Optional.empty())));
    List<LogEvent> events = new ArrayList<>();
    for (Lid.Opening one : StrayingAir.openings(point)) {
      if (one.opens() < gentle) {
        events.add(event(LogEvent.Kind.LID_OPENED, one.opens(), one.opens() + one.duration(), ""));
      }
    }
    events.add(event(LogEvent.Kind.REMARK, gentle, Double.NaN, "the sear begins"));
    events.add(event(LogEvent.Kind.TAKEN_OFF, off, Double.NaN, ""));
    return new LogPackage(
        facts,
        List.of(
            new ChannelFormat(CookLog.CHAMBER, LogUnit.CELSIUS, 1),
            new ChannelFormat(CookLog.CORE, LogUnit.CELSIUS, 1)),
        readings(kind, point, result, gentle, seed),
        Optional.empty(),
        events,
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        "made up");
  }

  private static LogEvent event(LogEvent.Kind kind, double time, double end, String note) {
    return new LogEvent(time, end, kind, LogEvent.Origin.COOK, note);
  }

  private static CookLog readings(
      TrialKind kind, ParameterPoint point, SimulationResult result, double gentle, long seed) {
    Noise noise = Noise.ofSeed(seed, STREAM);
    ProbeTrace shown = result.shownBy(result.cook().probes().get(0));
    Signal air = kind.planned().withRoughAir(seed).airAt(point);
    double bias = point.value(CookParameters.AIR_BIAS.id());
    int count = (int) (result.endTime() / INTERVAL) + 1;
    int inHeat = (int) (gentle / INTERVAL) + 1;
    double[] drift = noise.correlated(count, INTERVAL, WANDER, WANDER_TIME);
    double[] times = new double[count];
    double[] core = new double[count];
    double[] chamber = new double[inHeat];
    for (int i = 0; i < count; i++) {
      times[i] = i * INTERVAL;
      core[i] = tenth(shown.at(times[i]) + drift[i] + NOISE * noise.normal());
      if (i < inHeat) {
        chamber[i] = tenth(air.at(times[i]) + bias + CHAMBER_NOISE * noise.normal());
      }
    }
    double[] chamberTimes = Arrays.copyOf(times, inHeat);
    List<LogChannel> channels =
        List.of(
            LogChannel.of(CookLog.CHAMBER, chamberTimes, chamber),
            LogChannel.of(CookLog.CORE, times, core));
    return new CookLog("readings.csv", List.of("made up"), count, 0, times[count - 1], channels);
  }

  private static double tenth(double kelvin) {
    return Math.rint((kelvin - 273.15) * 10) / 10 + 273.15;
  }
}
