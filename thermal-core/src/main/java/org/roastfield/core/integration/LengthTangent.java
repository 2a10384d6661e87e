package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.surface.SurfaceLaw;

/** Derivative of one lane's step by its own length, for the step that ends a stage. */
final class LengthTangent {

  private final LaneStepper stepper;
  private final StepFactors factors;
  private final LawSlopes laws = new LawSlopes(1);
  private final FaceSlopes trends = new FaceSlopes(1, new Counters());
  private final TangentSweep sweep;
  private final TangentRows rows;

  /** Not used: the resistance does not change with the length [stages][1]. */
  private final double[][] flow = new double[Esdirk4.STAGES][1];

  private double[] shifts = new double[0];

  LengthTangent(Grid grid, LaneStepper stepper) {
    this.stepper = stepper;
    factors = new StepFactors(grid.cells(), 1);
    sweep = new TangentSweep(grid, stepper.mass, 1);
    rows = new TangentRows(grid.cells(), 1);
  }

  /** Differentiates the last attempt of a lane, before it is kept. */
  void differentiate(int lane, LawSlopes all, SurfaceLaw law, boolean believed) {
    double h = stepper.step[lane];
    factors.take(stepper.factors, lane, 0);
    laws.takeAlone(all, lane);
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      double time = stepper.time[lane] + Esdirk4.c(s) * h;
      trends.byTemperatureAndTime(State.UPPER, law, believed, stepper.stageFace[s][lane], time);
      laws.trend[s][0] = trends.trend[State.UPPER];
      laws.evaporationTrend[s][0] = trends.evaporationTrend[State.UPPER];
    }
    rows.begin(0, 0, 0, 0);
    rows.logLambda[0] = 1 / h;
    for (int i = 0; i < rows.rate.length; i++) {
      rows.rate[i][0] = stepper.rate[i][lane] / h;
    }
    sweep.step(1, factors, flow, laws, 1, rows);
    rows.evaporated[0] = h * rows.meanEvaporation[0] + stepper.meanEvaporation[lane];
  }

  /** The derivatives; those of the end of the step count. */
  TangentRows rows() {
    return rows;
  }

  /** Change of a reading at the end of the step with its length [K/s]. */
  double now(Reading reading) {
    return reading.ofLane(rows.nextValue, 0) + reading.upperWeight() * rows.nextFace[0];
  }

  /** Keeps by how much the step at hand lengthens with a parameter. */
  void keepShift(int parameter, double shift) {
    if (parameter >= shifts.length) {
      shifts = java.util.Arrays.copyOf(shifts, parameter + 1);
    }
    shifts[parameter] = shift;
  }

  /** By how much the step at hand lengthens with a parameter. */
  double shift(int parameter) {
    return shifts[parameter];
  }
}
