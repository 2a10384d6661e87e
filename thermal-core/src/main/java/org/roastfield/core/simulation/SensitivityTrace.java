package org.roastfield.core.simulation;

import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.TangentIntegration;
import org.roastfield.core.integration.TangentReading;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.internal.Check;

/**
 * Derivatives of the temperature over time at one place, at fixed times, from the dense output of
 * the integration. Immutable.
 */
public final class SensitivityTrace {

  private final String name;
  private final Reading reading;
  private final TangentReading tangentReading;
  private final TangentIntegration tangents;
  private final Trajectory plain;

  SensitivityTrace(
      String name, Reading reading, TangentReading tangentReading, TangentIntegration tangents) {
    this.name = name;
    this.reading = reading;
    this.tangentReading = tangentReading;
    this.tangents = tangents;
    this.plain = tangents.trajectory().plain();
  }

  /** Name of the place. */
  public String name() {
    return name;
  }

  /** First time [s]. */
  public double start() {
    return plain.start();
  }

  /** Last time [s]. */
  public double end() {
    return plain.end();
  }

  /**
   * Derivative [K per unit of the parameter]; where stages meet, that of the earlier one.
   *
   * @param parameter index from 0
   * @param time since the start of the cook [s]
   * @throws IllegalArgumentException if {@code parameter} or {@code time} is outside its range
   */
  public double at(int parameter, double time) {
    Check.inRange("parameter", parameter, 0, tangents.parameters() - 1);
    double inside = Check.inRoundedRange("time", time, start(), end());
    return plain.steps() == 0
        ? tangents.start(parameter)
        : in(plain.stepAt(inside), parameter, inside);
  }

  private double in(int step, int parameter, double time) {
    return tangents.trajectory().inStep(parameter, tangentReading, step, time);
  }

  /**
   * Derivatives by all parameters.
   *
   * @param times since the start of the cook [s], not modified
   * @return [times][parameters] [K per unit of the parameter], new
   */
  public double[][] jacobian(double... times) {
    double[][] rows = new double[times.length][tangents.parameters()];
    for (int i = 0; i < times.length; i++) {
      for (int p = 0; p < tangents.parameters(); p++) {
        rows[i][p] = at(p, times[i]);
      }
    }
    return rows;
  }

  /**
   * Derivatives of a maximum at a time inside a step. Where the rate is 0, the temperature changes
   * as at a fixed time, and the time so that the rate stays 0.
   */
  PeakSensitivity peak(int parameter, double time) {
    int step = plain.stepAt(time);
    double start = plain.stepStart(step);
    double h = plain.stepEnd(step) - start;
    double[] temperatures = new double[4];
    double[] changes = new double[4];
    for (int j = 0; j < 4; j++) {
      double t = start + j * h / 3;
      temperatures[j] = plain.inStep(reading, step, t);
      changes[j] = in(step, parameter, t);
    }
    double theta = (time - start) / h;
    double curvature = EvenCubic.curvature(theta, temperatures) / (h * h);
    double trend = EvenCubic.slope(theta, changes) / h;
    return new PeakSensitivity(-trend / curvature, in(step, parameter, time));
  }
}
