package org.roastfield.lab.heldout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.ForwardModel;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.cooker.NamedCooker;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogPackage;

/**
 * The first stage of a logged cook, which is scored in the chamber as it was logged: what is
 * foretold is the cut, not the fire. After the stage the chamber counts as it last was.
 */
public final class LoggedCookToScore implements ScoredCook {

  /** How far below the pull temperature the awaited reading lies, so that a log holds it [K]. */
  private static final double BELOW_PULL = 2;

  /** After which nobody waits any more [s]: 12 h. */
  private static final double HORIZON = 43_200;

  /** Cooker of logs that name none: they count as of one. */
  public static final String UNNAMED = "no name";

  private final CookFile file;
  private final LogPackage log;
  private final LoggedCase whole;
  private final CookModel model;
  private final double target;
  private final double end;
  private final double[] times;
  private final double[] readings;

  private LoggedCookToScore(CookFile file, LogPackage log, double target) {
    this.file = file;
    this.log = log;
    this.target = target;
    whole = LoggedCase.of(file, log, LogSpan.ALL, Optional.empty());
    model = model(whole);
    end = whole.cook().apply(ParameterPoint.empty()).stages().get(0).end().longest(0);
    Series core = core(whole);
    int count = 0;
    while (count < core.size() && core.time(count) <= end) {
      count++;
    }
    times = new double[count];
    readings = new double[count];
    for (int k = 0; k < count; k++) {
      times[k] = core.time(k);
      readings[k] = core.value(k);
    }
  }

  /**
   * A logged cook.
   *
   * @param file its cook file
   * @throws IllegalArgumentException if the file's first stage does not wait for a core, or no core
   *     was logged in it
   */
  public static LoggedCookToScore of(CookFile file, LogPackage log) {
    StageEnd rule = file.cook().stages().get(0).end();
    if (rule instanceof StageEnd.Rises rises && rises.probe().isCore()) {
      LoggedCookToScore cook = new LoggedCookToScore(file, log, rises.temperature() - BELOW_PULL);
      if (cook.times.length == 0) {
        throw new IllegalArgumentException(
            "log " + log.facts().name() + " must have core readings in its first stage, had none");
      }
      return cook;
    }
    throw new IllegalArgumentException(
        "first stage of "
            + file.fileName()
            + " must end at a core temperature, ends "
            + rule.description());
  }

  private static Series core(LoggedCase logged) {
    ObservedTrace first = logged.traces().get(0);
    if (!first.probe().equals(logged.cook().probe(CookLog.CORE))) {
      throw new IllegalArgumentException(
          "log " + logged.name() + " must have core as its first channel of the cut");
    }
    return first.readings();
  }

  /** What matters in a first stage. */
  private static boolean matters(Parameter parameter) {
    return !parameter.id().equals(CookParameters.REST.id())
        && !parameter.id().equals(CookParameters.CONTACT.id());
  }

  private static CookModel model(LoggedCase logged) {
    return CookerLogs.of(List.of(logged), LoggedCookToScore::matters)
        .model(Simulator.withDefaults());
  }

  private CookModel until(double time) {
    if (time >= log.readings().end()) {
      return model;
    }
    return model(LoggedCase.of(file, log, LogSpan.until(time), Optional.empty()));
  }

  @Override
  public String name() {
    return log.facts().name();
  }

  @Override
  public String cooker() {
    return NamedCooker.of(file, log).orElse(UNNAMED);
  }

  @Override
  public double[] times() {
    return times.clone();
  }

  @Override
  public double[] readings() {
    return readings.clone();
  }

  @Override
  public double target() {
    return target;
  }

  @Override
  public double horizon() {
    return HORIZON;
  }

  @Override
  public Prior prior() {
    return Prior.of(model.parameters());
  }

  @Override
  public Evidence evidence(double until) {
    return until(Math.min(until, end)).evidence();
  }

  @Override
  public ForwardModel model(double until) {
    return until(Math.min(until, end));
  }

  @Override
  public double[] shown(double[] coordinates, double[] at) {
    Cook logged = whole.cook().apply(model.point(0, coordinates));
    Stage first = logged.stages().get(0);
    Stage longer =
        new Stage(
            first.name(), first.upper(), first.lower(), StageEnd.after(HORIZON), first.wetting());
    Cook cook = new Cook(logged.cut(), List.of(longer), logged.probes());
    SimulationResult result = Simulator.withDefaults().run(cook).orElseThrow();
    Probe probe =
        cook.probes().stream()
            .filter(one -> one.name().equals(whole.cook().probe(CookLog.CORE)))
            .findFirst()
            .orElseThrow();
    ProbeTrace trace = result.shownBy(probe, whole.cook().air());
    return Arrays.stream(at).map(trace::at).toArray();
  }
}
