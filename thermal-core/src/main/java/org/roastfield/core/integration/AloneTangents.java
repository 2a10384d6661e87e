package org.roastfield.core.integration;

import java.util.List;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.grid.Reading;

/** Derivatives of one member by the single cook's driver, into a {@link TangentRecord}. */
final class AloneTangents {

  private final TangentRecord record;
  private final int member;
  private final Trajectory trajectory;
  private final TangentIntegration tangents;
  private final Reading core;
  private final Reading surface;
  private final TangentReading coreTangent;
  private final double start;
  private double stageStart;
  private final double[] startChange;

  /** Carries derivatives along with an integration that has just begun a cook. */
  AloneTangents(
      CookIntegration integration,
      List<CookVariation> variations,
      int member,
      TangentRecord record) {
    this.record = record;
    this.member = member;
    trajectory = integration.newTrajectory();
    tangents = integration.follow(variations, trajectory);
    core = integration.reading(Probe.CORE);
    surface = integration.reading(Probe.SURFACE);
    coreTangent = tangents.reading(core);
    start = integration.time();
    stageStart = start;
    startChange = new double[record.parameters];
    for (int p = 0; p < startChange.length; p++) {
      startChange[p] = tangents.start(p);
      record.begins(member, p, start, startChange[p]);
    }
  }

  void accepted(DenseStep step) {
    trajectory.accepted(step);
  }

  /** A stage has been run, to its end or not. */
  void stageRan(int stage, boolean completed, RunningPeak peak) {
    double end = trajectory.steps() == 0 ? start : trajectory.end();
    for (int p = 0; p < record.parameters; p++) {
      double now = tangents.now(p, core);
      record.peaked(member, stage, p, peak(p, peak.time, end, now));
      if (completed) {
        record.stageEnded(member, stage, p, tangents.time(p), now, tangents.now(p, surface));
      }
      startChange[p] = now;
    }
    stageStart = end;
  }

  private double peak(int parameter, double time, double end, double now) {
    if (time == end) {
      return now;
    }
    return time == stageStart
        ? startChange[parameter]
        : tangents.trajectory().inStep(parameter, coreTangent, trajectory.stepAt(time), time);
  }

  /** The cook has come to its end, whatever it is. */
  void finished(double end) {
    double[] times = record.sampleTimes();
    for (int i = record.firstAfter(start); i < times.length && times[i] <= end; i++) {
      for (int p = 0; p < record.parameters; p++) {
        int step = trajectory.stepAt(times[i]);
        record.sample(member, i, p, tangents.trajectory().inStep(p, coreTangent, step, times[i]));
      }
    }
    for (int p = 0; p < record.parameters; p++) {
      record.finished(member, p, tangents.evaporatedUpper(p));
    }
  }
}
