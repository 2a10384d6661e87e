package org.roastfield.core.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** When what a cook comes to after it goes on takes place in each of some draws [s]. */
final class Times {

  private final int size;
  private final Map<Milestone.Kind, double[]> of = new EnumMap<>(Milestone.Kind.class);

  private Times(int size) {
    this.size = size;
  }

  /**
   * Of draws that followed a decision, since the start of the cook; infinite where one never gets
   * there.
   *
   * @param lead before the wanted carving [s]
   */
  static Map<Milestone.Kind, double[]> of(Run run, Course course, double lead) {
    Times times = new Times(run.size());
    if (course.check >= 0) {
      times.add(Milestone.Kind.CHECK, i -> run.check[i]);
    }
    times.add(Milestone.Kind.NEAR, i -> run.near[i]);
    times.add(Milestone.Kind.PULL, i -> run.pull[i]);
    times.afterPull(course, i -> run.wait[i], i -> run.pause[i], i -> run.sear[i]);
    times.add(Milestone.Kind.PEAK, i -> run.peakTime[i]);
    times.carved(i -> run.rested[i], lead);
    return times.of;
  }

  /**
   * Of draws that were differentiated, by ends of their {@link Shift#stages}.
   *
   * @param ends one row a draw [s]
   */
  static Map<Milestone.Kind, double[]> of(double[][] ends, Course course, Timing timing) {
    Times times = new Times(ends.length);
    times.add(Milestone.Kind.NEAR, i -> ends[i][0]);
    times.add(Milestone.Kind.PULL, i -> ends[i][1]);
    times.afterPull(course, i -> ends[i][2], i -> ends[i][3], i -> ends[i][4]);
    times.carved(i -> ends[i][4] + timing.leastRest(), timing.leave());
    return times.of;
  }

  private void afterPull(
      Course course,
      IntToDoubleFunction wait,
      IntToDoubleFunction pause,
      IntToDoubleFunction sear) {
    if (course.pause > course.wait) {
      add(Milestone.Kind.RAISE, wait);
    }
    if (course.searsLast()) {
      add(Milestone.Kind.SEAR, pause);
      add(Milestone.Kind.REST, sear);
    }
  }

  private void carved(IntToDoubleFunction rested, double lead) {
    add(Milestone.Kind.READY, rested);
    add(Milestone.Kind.CARVE, i -> Math.max(lead, rested.applyAsDouble(i)));
  }

  private void add(Milestone.Kind kind, IntToDoubleFunction time) {
    double[] times = new double[size];
    for (int i = 0; i < size; i++) {
      times[i] = time.applyAsDouble(i);
    }
    of.put(kind, times);
  }
}
