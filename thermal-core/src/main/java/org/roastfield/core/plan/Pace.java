package org.roastfield.core.plan;

import java.util.Arrays;

/** When draws are ready, as far as readings near that of a first run go. */
final class Pace {

  private final double reading;
  private final double[] ready;

  /** Of each draw near the pull [s/K]. */
  private final double[] slowness;

  private final Service service;

  /**
   * @param reading at which the draws of a run were pulled [K]
   */
  Pace(Run run, double reading, Service service) {
    this.reading = reading;
    this.service = service;
    ready = run.ready;
    slowness = new double[ready.length];
    for (int i = 0; i < slowness.length; i++) {
      boolean there = run.pull[i] < Double.POSITIVE_INFINITY;
      slowness[i] = there ? (run.pull[i] - run.near[i]) / Plan.AHEAD : 0;
    }
  }

  /** Chances of the window that count as alike: of such leads the shortest is taken; assumed. */
  private static final double ALIKE = 0.01;

  /**
   * How long before the wanted carving a cook must begin for the demanded chance [s], and longer
   * where that makes it likelier to be ready in the promised window: by the latest carving, and not
   * so early that it is kept for longer than wished.
   */
  private static double leadOf(double[] ready, Service service) {
    double least = leastLead(ready, service);
    double[] sorted = ready.clone();
    Arrays.sort(sorted);
    double best = inWindow(sorted, least, service);
    for (double one : sorted) {
      if (one < Double.POSITIVE_INFINITY && one - service.latest() > least) {
        best = Math.max(best, inWindow(sorted, one - service.latest(), service));
      }
    }
    double lead = least;
    for (int i = 0; i < sorted.length; i++) {
      if (inWindow(sorted, lead, service) >= best - ALIKE) {
        return lead;
      }
      lead = Math.max(least, sorted[i] - service.latest());
    }
    return lead;
  }

  /** Share of draws in the window [s], of times in order. */
  private static double inWindow(double[] sorted, double lead, Service service) {
    int late = firstAbove(sorted, lead + service.latest());
    int early = firstAbove(sorted, Math.nextDown(lead - service.longestHold()));
    return (double) (late - early) / sorted.length;
  }

  private static int firstAbove(double[] sorted, double value) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] > value) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * How long before the wanted carving a cook must begin for the demanded chance [s]; the longest
   * cook that gets there, if too few do.
   */
  private static double leastLead(double[] ready, Service service) {
    double lead = neededLead(ready, service);
    if (lead == Double.POSITIVE_INFINITY) {
      lead = 0;
      for (double one : ready) {
        lead = one < Double.POSITIVE_INFINITY ? Math.max(lead, one) : lead;
      }
      lead -= service.latest();
    }
    return Math.max(0, lead);
  }

  /** The same; infinite if too few get there. */
  static double neededLead(double[] ready, Service service) {
    return Spread.quantile(service.chance(), ready) - service.latest();
  }

  /** That lead for another reading [K]. */
  double lead(double otherReading) {
    double[] then = new double[ready.length];
    for (int i = 0; i < then.length; i++) {
      then[i] = ready[i] + slowness[i] * (otherReading - reading);
    }
    return leadOf(then, service);
  }
}
