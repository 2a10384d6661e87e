package org.roastfield.lab.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.StageSetup;

/** A log and its cook file, ready to be compared with computations of the cook. */
final class LoggedCook {

  /** Steps are kept below a third of this many sampling intervals. */
  private static final double INTERVALS_PER_PERIOD = 4;

  private static final int FEWEST_READINGS = 2;

  private final CookFile file;
  private final ComparisonOptions options;
  private final Readout readout;
  private final LogChannel core;
  private final LogChannel chamber;

  private LoggedCook(
      CookFile file,
      ComparisonOptions options,
      Readout readout,
      LogChannel core,
      LogChannel chamber) {
    this.file = file;
    this.options = options;
    this.readout = readout;
    this.core = core;
    this.chamber = chamber;
  }

  /**
   * Log and cook file together.
   *
   * @throws IllegalArgumentException if the log has no usable core channel, or none of its readings
   *     is early enough, or the probe is not clear
   */
  static LoggedCook of(CookFile file, CookLog log, ComparisonOptions options) {
    double until = options.until().orElse(log.end());
    LogChannel core =
        log.channel(CookLog.CORE)
            .map(channel -> channel.until(until))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        log.fileName() + " has no core channel to compare with"));
    int used = used(core, options);
    if (used < FEWEST_READINGS) {
      throw new IllegalArgumentException(
          log.fileName() + " must have at least two core readings to compare with, has " + used);
    }
    LogChannel chamber =
        log.channel(CookLog.CHAMBER)
            .map(channel -> channel.until(until))
            .orElse(LogChannel.of(CookLog.CHAMBER, new double[0], new double[0]));
    return new LoggedCook(file, options, Readout.of(file, options.probe()), core, chamber);
  }

  /**
   * The same for a computation of the first stage alone.
   *
   * @throws IllegalArgumentException as above, or if the cook begins with turns
   */
  static LoggedCook ofFirstStage(CookFile file, CookLog log, ComparisonOptions options) {
    StageSetup first = file.stages().get(0);
    if (first.stageCount() > 1 && first.upper().cover().lid().isEmpty()) {
      throw new IllegalArgumentException(
          "the first stage of "
              + file.fileName()
              + " must be without turns, was \""
              + first.name()
              + "\"");
    }
    return of(file, log, options);
  }

  private static int used(LogChannel core, ComparisonOptions options) {
    int used = 0;
    for (int i = 0; i < core.size(); i++) {
      used += core.time(i) >= options.from() ? 1 : 0;
    }
    return used;
  }

  /** Number of core readings that are compared, at least 2. */
  int used() {
    return used(core, options);
  }

  CookFile file() {
    return file;
  }

  Readout readout() {
    return readout;
  }

  /** Chamber readings used; of size 0 where there are none. */
  LogChannel chamber() {
    return chamber;
  }

  boolean hasChamber() {
    return chamber.size() > 0;
  }

  /** First core reading [K]. */
  double firstReading() {
    return core.temperature(0);
  }

  /** Time of the last core reading used [s]. */
  double end() {
    return core.time(core.size() - 1);
  }

  /**
   * Air of the chamber as logged, or else as a file states it.
   *
   * @param stated [K]
   */
  Signal air(double stated) {
    if (!hasChamber()) {
      return Signal.constant(stated);
    }
    double[] times = new double[chamber.size()];
    double[] temperatures = new double[chamber.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = chamber.time(i);
      temperatures[i] = chamber.temperature(i);
    }
    return SampledSignal.of(times, temperatures, INTERVALS_PER_PERIOD * medianInterval(times));
  }

  private Signal air() {
    return air(file.stages().get(0).upper().air());
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

  /** Readings beside what a readout of a computation shows. */
  List<Comparison> pairs(SimulationResult result, Readout shownBy) {
    DoubleUnaryOperator shown = shownBy.of(result, air());
    List<Comparison> pairs = new ArrayList<>();
    for (int i = 0; i < core.size(); i++) {
      double time = core.time(i);
      if (time >= options.from()) {
        pairs.add(
            new Comparison(
                time, core.temperature(i), shown.applyAsDouble(time), result.core().at(time)));
      }
    }
    return pairs;
  }

  /**
   * Comparison with a computation.
   *
   * @param size factor of the cut's stated lengths in the computation
   * @param shownBy readout of the computed cook
   * @param words for it
   */
  Compared compared(SimulationResult result, double size, Readout shownBy, String words) {
    List<Comparison> pairs = pairs(result, shownBy);
    TargetTimes times = new TargetTimes(core, shownBy.of(result, air()), result);
    List<Double> targets =
        options.targets().isEmpty() ? TargetTimes.everyTenDegrees(core) : options.targets();
    return new Compared(
        words,
        shownBy.isProbe(),
        pairs,
        ErrorSummary.of(pairs, core.missing()),
        targets.stream().map(times::of).toList(),
        options.rates().stream()
            .map(span -> HeatingRate.of(span, times.of(span.low()), times.of(span.high())))
            .toList(),
        water(result, size));
  }

  private WaterLoss water(SimulationResult result, double size) {
    Moisture moisture = file.moisture();
    WaterBalance water = result.water(moisture);
    Optional<Extent> whole =
        file.extent().map(extent -> extent.scaled(file.cook().cut().shape(), size));
    return new WaterLoss(
        water.evaporatedUpper(),
        water.drippedUpper(),
        whole.stream().mapToDouble(extent -> extent.evaporatedMass(result)).findFirst(),
        whole.stream().mapToDouble(extent -> extent.drippedMass(result, moisture)).findFirst(),
        options.weighedLoss());
  }
}
