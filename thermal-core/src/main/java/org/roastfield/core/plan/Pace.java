package org.roastfield.core.plan;

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

  /**
   * How long before the wanted carving a cook must begin for the demanded chance [s]; the longest
   * cook that gets there, if too few do.
   */
  static double leadOf(double[] ready, Service service) {
    double lead = Spread.quantile(service.chance(), ready);
    if (lead == Double.POSITIVE_INFINITY) {
      lead = 0;
      for (double one : ready) {
        lead = one < Double.POSITIVE_INFINITY ? Math.max(lead, one) : lead;
      }
    }
    return Math.max(0, lead - service.latest());
  }

  /** The same, and not longer than there is time left for [s]. */
  static double possibleLead(double[] ready, Service service) {
    return Math.min(leadOf(ready, service), -service.earliestOn());
  }

  /** The possible lead for another reading [K]. */
  double lead(double otherReading) {
    double[] then = new double[ready.length];
    for (int i = 0; i < then.length; i++) {
      then[i] = ready[i] + slowness[i] * (otherReading - reading);
    }
    return possibleLead(then, service);
  }
}
