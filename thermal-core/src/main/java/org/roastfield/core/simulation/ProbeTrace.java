package org.roastfield.core.simulation;

import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * What a probe would show over time, beside the truth. Immutable.
 *
 * <p>A probe that lags starts at the temperature of the food at its tip. The lag follows the dense
 * output exactly, as a cubic in each step.
 */
public final class ProbeTrace {

  private final Probe probe;
  private final Trace tip;
  private final Trace core;
  private final Trajectory trajectory;
  private final StemSensing sensing;

  /** Without bias and rounding, at the start of each step and at the end of the last [K]. */
  private final double[] lagged;

  ProbeTrace(Probe probe, Trace tip, Trace core, Trajectory trajectory, StemSensing sensing) {
    this.probe = probe;
    this.tip = tip;
    this.core = core;
    this.trajectory = trajectory;
    this.sensing = sensing;
    this.lagged = lagged();
  }

  private double[] lagged() {
    double[] values = new double[trajectory.steps() + 1];
    values[0] = atStart();
    for (int step = 0; step < trajectory.steps(); step++) {
      values[step + 1] = inStep(values[step], step, trajectory.stepEnd(step));
    }
    return values;
  }

  private double atStart() {
    if (probe.instrument().responseTime() > 0) {
      return tip.at(trajectory.start());
    }
    return trajectory.steps() == 0
        ? sensing.atStart(trajectory)
        : sensing.inStep(trajectory, 0, trajectory.start());
  }

  /** The probe. */
  public Probe probe() {
    return probe;
  }

  /** True temperature of the food at the tip. */
  public Trace tip() {
    return tip;
  }

  /** True temperature in the middle. */
  public Trace core() {
    return core;
  }

  /**
   * What the probe shows [K].
   *
   * @param time since the start of the cook [s]
   * @throws IllegalArgumentException if {@code time} is outside the trace
   */
  public double at(double time) {
    double inside = Check.inRoundedRange("time", time, trajectory.start(), trajectory.end());
    double value = lagged[0];
    if (trajectory.steps() > 0) {
      int step = trajectory.stepAt(inside);
      value = inStep(lagged[step], step, inside);
    }
    return shown(value);
  }

  private double inStep(double before, int step, double time) {
    double lag = probe.instrument().responseTime();
    if (lag == 0) {
      return sensing.inStep(trajectory, step, time);
    }
    double start = trajectory.stepStart(step);
    double third = (trajectory.stepEnd(step) - start) / 3;
    Lag follower =
        new Lag(
            sensing.inStep(trajectory, step, start),
            sensing.inStep(trajectory, step, start + third),
            sensing.inStep(trajectory, step, start + 2 * third),
            sensing.inStep(trajectory, step, trajectory.stepEnd(step)));
    return follower.after((time - start) / third, before, lag / third);
  }

  private double shown(double value) {
    Instrument instrument = probe.instrument();
    double biased = value + instrument.bias();
    double step = instrument.resolution();
    return step == 0
        ? biased
        : Temperatures.ZERO_CELSIUS + step * Math.rint((biased - Temperatures.ZERO_CELSIUS) / step);
  }
}
