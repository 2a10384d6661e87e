package org.roastfield.core.plan;

import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.MemberStatus;

/**
 * What came of draws that followed one decision. Times since the start of the cook [s], infinite
 * where a draw never got there; arrays over draws.
 */
final class Run {

  final double[] firstSear;
  final double[] near;
  final double[] pull;
  final double[] pause;
  final double[] sear;
  final double[] ready;
  final double[] peakTime;

  /** Highest core [K]. */
  final double[] finalCore;

  /** Core and surface at the pull [K]. */
  final double[] pullCore;

  final double[] pullSurface;

  /** Core at the end of the sear [K]. */
  final double[] searCore;

  /** Samples of the core, if asked for. */
  final EnsembleResult result;

  private final Course course;

  Run(EnsembleResult result, Course course, double leastRest) {
    this.result = result;
    this.course = course;
    int members = result.size();
    firstSear = course.firstSear < 0 ? new double[members] : ends(course.firstSear);
    near = ends(course.near);
    pull = ends(course.pull);
    pause = ends(course.pause);
    sear = ends(course.sear);
    ready = new double[members];
    peakTime = new double[members];
    finalCore = new double[members];
    pullCore = new double[members];
    pullSurface = new double[members];
    searCore = new double[members];
    for (int i = 0; i < members; i++) {
      ready[i] = sear[i] + leastRest;
      highest(i);
      pullCore[i] = result.coreAtEnd(i, course.pull);
      pullSurface[i] = result.surfaceAtEnd(i, course.pull);
      searCore[i] = result.coreAtEnd(i, course.sear);
    }
  }

  /** Times at which a draw shows what it is like at the pull only. */
  static Run upToPull(EnsembleResult result, Course course) {
    return new Run(result, course, 0);
  }

  int size() {
    return ready.length;
  }

  /** Whether a draw was computed to its end, or to a rule that it did not meet in time. */
  boolean isComputed(int member) {
    MemberStatus status = result.status(member);
    return status == MemberStatus.COMPLETED || status == MemberStatus.END_RULE_NOT_MET;
  }

  private double[] ends(int stage) {
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
