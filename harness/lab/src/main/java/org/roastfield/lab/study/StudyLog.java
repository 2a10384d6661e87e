package org.roastfield.lab.study;

import java.util.Arrays;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.Trace;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.synthetic.Noise;

/** A made-up log of a {@link StudyCook}, with its truth. Immutable. */
final class StudyLog {

  private final double[] truth;
  private final StudyAir air;
  private final CookModel ahead;
  private final SimulationResult result;
  private final double[] readings;
  private final ChannelFormat display;

  private StudyLog(
      double[] truth,
      StudyAir air,
      CookModel ahead,
      SimulationResult result,
      double[] readings,
      ChannelFormat display) {
    this.truth = truth.clone();
    this.air = air;
    this.ahead = ahead;
    this.result = result;
    this.readings = readings;
    this.display = display;
  }

  /** A fitted log. */
  record Fit(Calibration calibration, MapEstimate estimate) {}

  /**
   * Log of the fitted model, with errors as they are believed to be.
   *
   * @param truth coordinates of {@link StudyCook#PARAMETERS}
   */
  static StudyLog of(double[] truth, Noise noise) {
    return of(truth, StudyAir.usual(noise), noise);
  }

  /** The same in air of its own. */
  static StudyLog of(double[] truth, StudyAir air, Noise noise) {
    CookModel ahead = ahead(air);
    SimulationResult result = ahead.run(0, truth).orElseThrow();
    double[] readings = readings(result, drawnErrors(noise), noise);
    return new StudyLog(truth, air, ahead, result, readings, StudyCook.EXACT);
  }

  /** The same log as another display shows it. */
  StudyLog shownBy(ChannelFormat coarser) {
    if (coarser.equals(display)) {
      return this;
    }
    double digits = Math.pow(10, coarser.decimals());
    double[] shown = readings.clone();
    for (int k = 0; k < shown.length; k++) {
      double value = coarser.unit().fromSi(shown[k]);
      shown[k] = coarser.unit().si(Math.rint(value * digits) / digits);
    }
    return new StudyLog(truth, air, ahead, result, shown, coarser);
  }

  /** Log of another truth, with errors of the instrument alone: 0.3 K over 5-10 min, 0.1 K. */
  static StudyLog of(double[] truth, OtherTruth other, Noise noise) {
    StudyAir air = StudyAir.usual(noise);
    CookModel ahead = ahead(air);
    ParameterPoint point = ahead.point(0, truth);
    Cook cook = other.cook(ahead.cooks().get(0).cooks().apply(point), shown(ahead), point, noise);
    SimulationResult result = Simulator.with(other.settings()).run(cook).orElseThrow();
    ErrorModel errors =
        new ErrorModel(
            noise.logNormal(0.3, 0.3, 0.1, 0.9),
            noise.uniform(300, 600),
            noise.logNormal(0.1, 0.3, 0.03, 0.3),
            0);
    double[] readings = readings(result, errors, noise);
    return new StudyLog(truth, air, ahead, result, readings, StudyCook.EXACT);
  }

  /** The cook to the horizon, in a chamber that is known to it. */
  private static CookModel ahead(StudyAir air) {
    double[] raw = new double[air.shown().size()];
    Arrays.fill(raw, StudyCook.FILE.cook().cut().startTemperature());
    return StudyCook.logs(air.shown(raw.length), raw, StudyCook.EXACT, List.of())
        .model(Simulator.withDefaults());
  }

  private static Signal shown(CookModel ahead) {
    return ahead.cooks().get(0).traces().get(0).air();
  }

  /** Errors as the calibration believes them: its medians and spreads. */
  static ErrorModel drawnErrors(Noise noise) {
    ErrorModel usual = ErrorModel.CORE;
    double most = Double.MAX_VALUE;
    return new ErrorModel(
        noise.logNormal(usual.driftSpread(), 0.5, Double.MIN_NORMAL, most),
        noise.logNormal(usual.driftTime(), 0.5, Double.MIN_NORMAL, most),
        noise.logNormal(usual.noise(), 0.3, Double.MIN_NORMAL, most),
        0);
  }

  private static double[] readings(SimulationResult result, ErrorModel errors, Noise noise) {
    int count = (int) (StudyCook.HORIZON / StudyCook.INTERVAL);
    double[] drift =
        noise.correlated(count, StudyCook.INTERVAL, errors.driftSpread(), errors.driftTime());
    ProbeTrace shown = result.shownBy(result.cook().probes().get(0));
    double[] readings = new double[count];
    for (int k = 0; k < count; k++) {
      readings[k] = shown.at(k * StudyCook.INTERVAL) + drift[k] + errors.noise() * noise.normal();
    }
    return readings;
  }

  /** True coordinates of {@link StudyCook#PARAMETERS}; a copy. */
  double[] truth() {
    return truth.clone();
  }

  /** What took place. */
  SimulationResult result() {
    return result;
  }

  /** Readings of the core probe every {@link StudyCook#INTERVAL}, to the horizon [K]; a copy. */
  double[] readings() {
    return readings.clone();
  }

  /** When the log ends if it is followed until the probe shows the target [s]. */
  double end() {
    int k = 0;
    while (k < readings.length - 1 && readings[k] < StudyCook.TARGET) {
      k++;
    }
    return k * StudyCook.INTERVAL;
  }

  /** When the core gets to the target [s]; the horizon if it does not. */
  double timeToTarget() {
    return timeToTarget(result.core());
  }

  /** When a core first gets to the target [s]; the horizon if it does not. */
  static double timeToTarget(Trace core) {
    double before = 0;
    while (before < StudyCook.HORIZON) {
      double after = Math.min(before + StudyCook.INTERVAL, StudyCook.HORIZON);
      if (core.at(after) >= StudyCook.TARGET) {
        return crossing(core, before, after);
      }
      before = after;
    }
    return StudyCook.HORIZON;
  }

  private static double crossing(Trace core, double below, double above) {
    double low = below;
    double high = above;
    while (high - low > 1) {
      double middle = 0.5 * (low + high);
      if (core.at(middle) >= StudyCook.TARGET) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** What a calibration computes of the log up to a time. */
  CookModel model(double until) {
    return logs(until).model(Simulator.withDefaults());
  }

  /** What the log up to a time says of its chamber's air by itself. */
  ChamberTrace chamber(double until) {
    return logs(until).cases().get(0).chamber().orElseThrow();
  }

  private CookerLogs logs(double until) {
    int count = (int) (until / StudyCook.INTERVAL) + 1;
    return StudyCook.logs(
        air.shown(count), Arrays.copyOf(readings, count), display, air.events(until));
  }

  /** Fits the log up to a time. */
  Fit fitted(Prior prior, double until) {
    CookModel model = model(until);
    Calibration calibration = Calibration.of(prior, model.evidence(), model);
    return new Fit(calibration, calibration.map());
  }

  /** The cook at other coordinates, in the fitted model's words. */
  SimulationResult at(double[] coordinates) {
    return ahead.run(0, coordinates).orElseThrow();
  }
}
