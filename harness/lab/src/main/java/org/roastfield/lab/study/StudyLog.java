package org.roastfield.lab.study;

import java.util.Arrays;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.Trace;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.synthetic.Noise;

/** A made-up log of a {@link StudyCook}, with its truth. Immutable. */
final class StudyLog {

  /** Between readings [s]. */
  static final double INTERVAL = 240;

  private static final double CHAMBER_DRIFT = 4;
  private static final double CHAMBER_DRIFT_TIME = 1800;
  private static final double CHAMBER_STEP = 600;

  private final double[] truth;
  private final StudyCook cook;
  private final SimulationResult result;
  private final double[] readings;

  private StudyLog(double[] truth, StudyCook cook, SimulationResult result, double[] readings) {
    this.truth = truth.clone();
    this.cook = cook;
    this.result = result;
    this.readings = readings;
  }

  /** A fitted log. */
  record Fit(Calibration calibration, MapEstimate estimate) {}

  /**
   * Log of the fitted model, with errors as they are believed to be.
   *
   * @param truth coordinates of {@link StudyCook#PARAMETERS}
   */
  static StudyLog of(double[] truth, Noise noise) {
    StudyCook cook = new StudyCook(chamber(noise));
    SimulationResult result = run(Simulator.withDefaults(), cook.at(StudyCook.point(truth)));
    return new StudyLog(truth, cook, result, readings(result, truth, drawnErrors(noise), noise));
  }

  /** Log of another truth, with errors of the instrument alone: 0.3 K over 5-10 min, 0.1 K. */
  static StudyLog of(double[] truth, OtherTruth other, Noise noise) {
    StudyCook cook = new StudyCook(chamber(noise));
    SimulationResult result =
        run(Simulator.with(other.settings()), other.cook(cook, StudyCook.point(truth), noise));
    ErrorModel errors =
        new ErrorModel(
            noise.logNormal(0.3, 0.3, 0.1, 0.9),
            noise.uniform(300, 600),
            noise.logNormal(0.1, 0.3, 0.03, 0.3),
            0);
    return new StudyLog(truth, cook, result, readings(result, truth, errors, noise));
  }

  private static SimulationResult run(Simulator simulator, Cook cook) {
    return simulator.run(cook).orElseThrow();
  }

  private static Signal chamber(Noise noise) {
    int count = (int) Math.ceil(StudyCook.HORIZON / CHAMBER_STEP) + 1;
    double[] air = noise.correlated(count, CHAMBER_STEP, CHAMBER_DRIFT, CHAMBER_DRIFT_TIME);
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = i * CHAMBER_STEP;
      air[i] += StudyCook.SETTING;
    }
    return SampledSignal.of(times, air, 4 * CHAMBER_STEP);
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

  private static double[] readings(
      SimulationResult result, double[] truth, ErrorModel errors, Noise noise) {
    int count = (int) (StudyCook.HORIZON / INTERVAL);
    double[] drift = noise.correlated(count, INTERVAL, errors.driftSpread(), errors.driftTime());
    ProbeTrace shown = result.shownBy(StudyCook.probe(result.cook()));
    double bias = truth[StudyCook.PARAMETERS.index(StudyCook.PROBE_BIAS.id())];
    double[] readings = new double[count];
    for (int k = 0; k < count; k++) {
      readings[k] = shown.at(k * INTERVAL) + bias + drift[k] + errors.noise() * noise.normal();
    }
    return readings;
  }

  /** True coordinates of {@link StudyCook#PARAMETERS}; a copy. */
  double[] truth() {
    return truth.clone();
  }

  /** The cook, with the chamber as it was logged. */
  StudyCook cook() {
    return cook;
  }

  /** What took place. */
  SimulationResult result() {
    return result;
  }

  /** Readings of the core probe every {@link #INTERVAL}, to the horizon [K]; a copy. */
  double[] readings() {
    return readings.clone();
  }

  /** When the log ends if it is followed until the probe shows the target [s]. */
  double end() {
    int k = 0;
    while (k < readings.length - 1 && readings[k] < StudyCook.TARGET) {
      k++;
    }
    return k * INTERVAL;
  }

  /** When the core gets to the target [s]; the horizon if it does not. */
  double timeToTarget() {
    return timeToTarget(result.core());
  }

  /** When a core first gets to the target [s]; the horizon if it does not. */
  static double timeToTarget(Trace core) {
    double before = 0;
    while (before < StudyCook.HORIZON) {
      double after = Math.min(before + INTERVAL, StudyCook.HORIZON);
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

  /** Fits the log up to a time. */
  Fit fitted(Prior prior, double until) {
    int count = (int) (until / INTERVAL) + 1;
    double[] times = new double[count];
    for (int k = 0; k < count; k++) {
      times[k] = k * INTERVAL;
    }
    Series series = Series.of("core", times, Arrays.copyOf(readings, count), ErrorModel.CORE);
    Evidence evidence = new Evidence(List.of(series), List.of());
    Calibration calibration = Calibration.of(prior, evidence, new StudyModel(cook, times));
    return new Fit(calibration, calibration.map());
  }

  /** The cook at other coordinates, in the fitted model's words. */
  SimulationResult at(double[] coordinates) {
    return run(Simulator.withDefaults(), cook.at(StudyCook.point(coordinates)));
  }
}
