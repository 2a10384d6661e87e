package org.roastfield.lab.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.StageSetup;

/**
 * Computes a logged cook again: the log's chamber readings are the surroundings, the cook file's
 * first stage gives everything else about the surface, and the cut goes on at time 0 of the log.
 * Nothing is fitted.
 */
public final class Replay {

  /** Steps are kept below a third of this many sampling intervals. */
  private static final double INTERVALS_PER_PERIOD = 4;

  private final CookFile file;
  private final ReplayOptions options;
  private final LogChannel core;
  private final LogChannel chamber;
  private final Cook cook;

  private Replay(CookFile file, ReplayOptions options, LogChannel core, LogChannel chamber) {
    this.file = file;
    this.options = options;
    this.core = core;
    this.chamber = chamber;
    this.cook = buildCook();
  }

  /**
   * Prepares a replay.
   *
   * @throws IllegalArgumentException if the log has no usable core channel, or none of its readings
   *     is early enough
   */
  public static Replay of(CookFile file, CookLog log, ReplayOptions options) {
    double until = options.until().orElse(log.end());
    LogChannel core =
        log.channel(CookLog.CORE)
            .map(channel -> channel.until(until))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        log.fileName() + " has no core channel to compare with"));
    if (core.size() < 2 || !(core.time(core.size() - 1) > 0)) {
      throw new IllegalArgumentException(
          log.fileName()
              + " must have at least two core readings to compare with, has "
              + core.size());
    }
    LogChannel chamber =
        log.channel(CookLog.CHAMBER)
            .map(channel -> channel.until(until))
            .orElse(LogChannel.of(CookLog.CHAMBER, new double[0], new double[0]));
    return new Replay(file, options, core, chamber);
  }

  /** The cook to compute. */
  public Cook cook() {
    return cook;
  }

  /** Comparison of its result with the log. */
  public ReplayResult compare(SimulationResult result) {
    List<Comparison> pairs = new ArrayList<>();
    for (int i = 0; i < core.size(); i++) {
      double computed = result.core().at(core.time(i));
      pairs.add(new Comparison(core.time(i), core.temperature(i), computed));
    }
    return new ReplayResult(
        pairs,
        ErrorSummary.of(pairs, core.missing()),
        TargetTimes.of(targets(), core, result.core()),
        chamber,
        chamber.size() > 0,
        cook.cut().startTemperature(),
        options.startFromLog(),
        assumptions(),
        result);
  }

  private Cook buildCook() {
    Cut stated = file.cook().cut();
    Cut cut =
        options.startFromLog()
            ? new Cut(stated.shape(), stated.material(), core.temperature(0))
            : stated;
    StageSetup first = file.stages().get(0);
    SurfaceLaw upper = law(first.upper());
    SurfaceLaw lower = first.lower().equals(first.upper()) ? upper : law(first.lower());
    StageEnd end = StageEnd.after(core.time(core.size() - 1));
    return new Cook(
        cut, List.of(new Stage("logged cook", upper, lower, end)), file.cook().probes());
  }

  private SurfaceLaw law(FaceSetup face) {
    return chamber.size() == 0
        ? face.law(file.pressure())
        : face.law(chamberSignal(), file.pressure());
  }

  private Signal chamberSignal() {
    return signal(chamber);
  }

  /** A logged channel as surroundings. */
  static Signal signal(LogChannel chamber) {
    double[] times = new double[chamber.size()];
    double[] temperatures = new double[chamber.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = chamber.time(i);
      temperatures[i] = chamber.temperature(i);
    }
    double period = INTERVALS_PER_PERIOD * medianInterval(times);
    return SampledSignal.of(times, temperatures, period);
  }

  private static double medianInterval(double[] times) {
    if (times.length < 2) {
      return Double.POSITIVE_INFINITY;
    }
    double[] intervals = new double[times.length - 1];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = times[i + 1] - times[i];
    }
    Arrays.sort(intervals);
    return intervals[intervals.length / 2];
  }

  private List<Double> targets() {
    return options.targets().isEmpty() ? TargetTimes.everyTenDegrees(core) : options.targets();
  }

  private List<String> assumptions() {
    return Assumptions.of(file, chamber.size() > 0, options.startFromLog(), cook.cut());
  }
}
