package org.roastfield.core.plan;

import java.util.List;
import java.util.Map;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.MemberStatus;

/**
 * What came of draws that followed one decision. Times since the start of the cook [s], infinite
 * where a draw never got there; arrays over draws.
 */
final class Run {

  final double[] firstSear;

  /** The look at the display; empty if there is none. */
  final double[] check;

  final double[] near;
  final double[] pull;

  /** The end of the wait for the sear; the pull where there is none. */
  final double[] wait;

  final double[] pause;
  final double[] sear;

  /** When it could have rested, had it not waited for its sear. */
  final double[] ready;

  /** When it has rested. */
  final double[] rested;

  final double[] peakTime;

  /** Highest core [K]. */
  final double[] finalCore;

  /** The same of the planned cook and of each station. */
  final double[][] cores;

  /** Core and surface at the pull [K]. */
  final double[] pullCore;

  final double[] pullSurface;

  /** Core at the end of the sear [K]. */
  final double[] searCore;

  /** Samples of the core, if asked for. */
  final EnsembleResult result;

  private final Course course;

  /**
   * @param stations results of the stations, draws as those of {@code result}
   */
  Run(EnsembleResult result, Course course, double leastRest, List<EnsembleResult> stations) {
    this.result = result;
    this.course = course;
    int members = result.size();
    firstSear = course.firstSear < 0 ? new double[members] : ends(course.firstSear);
    check = course.check < 0 ? new double[0] : ends(course.check);
    near = ends(course.near);
    pull = ends(course.pull);
    wait = ends(course.wait);
    pause = ends(course.pause);
    sear = ends(course.sear);
    ready = new double[members];
    rested = new double[members];
    peakTime = new double[members];
    finalCore = new double[members];
    pullCore = new double[members];
    pullSurface = new double[members];
    searCore = new double[members];
    for (int i = 0; i < members; i++) {
      rested[i] = sear[i] + leastRest;
      boolean there = rested[i] < Double.POSITIVE_INFINITY;
      ready[i] = there ? rested[i] - (wait[i] - pull[i]) : rested[i];
      highest(i);
      pullCore[i] = result.coreAtEnd(i, course.pull);
      pullSurface[i] = result.surfaceAtEnd(i, course.pull);
      searCore[i] = result.coreAtEnd(i, course.sear);
    }
    cores = new double[1 + stations.size()][];
    cores[0] = finalCore;
    for (int s = 0; s < stations.size(); s++) {
      cores[s + 1] = highest(stations.get(s));
    }
  }

  /** Lowest of the final cores of each draw [K]. */
  double[] coldest() {
    double[] coldest = finalCore.clone();
    for (double[] core : cores) {
      for (int i = 0; i < coldest.length; i++) {
        coldest[i] = Math.min(coldest[i], core[i]);
      }
    }
    return coldest;
  }

  /**
   * When each milestone takes place, since the start of the cook [s].
   *
   * @param lead before the wanted carving [s]
   */
  Map<Milestone.Kind, double[]> times(double lead) {
    return Times.of(this, course, lead);
  }

  int size() {
    return ready.length;
  }

  /** Whether a draw was computed to its end, or to a rule that it did not meet in time. */
  boolean isComputed(int member) {
    boolean computed = true;
    for (double[] core : cores) {
      computed &= core[member] > 0;
    }
    MemberStatus status = result.status(member);
    return computed
        && (status == MemberStatus.COMPLETED || status == MemberStatus.END_RULE_NOT_MET);
  }

  /** Highest cores of a station; 0 where it was not computed to its end. */
  private double[] highest(EnsembleResult station) {
    double[] highest = new double[station.size()];
    for (int i = 0; i < highest.length; i++) {
      if (station.status(i) == MemberStatus.COMPLETED) {
        for (int stage = 0; stage < course.hold; stage++) {
          highest[i] = Math.max(highest[i], station.corePeak(i, stage));
        }
      }
    }
    return highest;
  }

  private double[] ends(int stage) {
    return ends(result, stage);
  }

  /** Ends of a stage, since the start of the cook; infinite for draws that never get there [s]. */
  static double[] ends(EnsembleResult result, int stage) {
    double[] ends = new double[result.size()];
    for (int i = 0; i < ends.length; i++) {
      double end = result.stageEnd(i, stage);
      ends[i] = Double.isNaN(end) ? Double.POSITIVE_INFINITY : end;
    }
    return ends;
  }

  private void highest(int member) {
    finalCore[member] = Double.NEGATIVE_INFINITY;
    peakTime[member] = Double.POSITIVE_INFINITY;
    for (int stage = 0; stage <= course.hold; stage++) {
      double peak = result.corePeak(member, stage);
      if (peak > finalCore[member]) {
        finalCore[member] = peak;
        peakTime[member] = result.corePeakTime(member, stage);
      }
    }
  }
}
