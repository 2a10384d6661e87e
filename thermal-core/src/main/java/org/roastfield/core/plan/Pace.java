package org.roastfield.core.plan;

/**
 * When draws are ready, as far as readings near that of a first run go.
 *
 * @param reading of that run [K]
 * @param lead that it needs before the wanted carving [s]
 * @param slowness of a tip near it [s/K]
 */
record Pace(double reading, double lead, double slowness) {

  static Pace of(Run run, double reading, Service service) {
    double[] slowness = new double[run.size()];
    for (int i = 0; i < slowness.length; i++) {
      boolean there = run.pull[i] < Double.POSITIVE_INFINITY;
      slowness[i] = there ? (run.pull[i] - run.near[i]) / Plan.AHEAD : Double.POSITIVE_INFINITY;
    }
    double middle = Spread.of(slowness).median();
    return new Pace(reading, leadOf(run, service), middle < Double.POSITIVE_INFINITY ? middle : 0);
  }

  /**
   * How long before the wanted carving a cook must begin for the demanded chance [s]; the longest
   * cook that gets there, if too few do.
   */
  static double leadOf(Run run, Service service) {
    double lead = Spread.quantile(service.chance(), run.ready);
    if (lead == Double.POSITIVE_INFINITY) {
      lead = 0;
      for (double ready : run.ready) {
        lead = ready < Double.POSITIVE_INFINITY ? Math.max(lead, ready) : lead;
      }
    }
    return Math.max(0, lead - service.latest());
  }

  double lead(double otherReading) {
    return Math.max(0, lead + slowness * (otherReading - reading));
  }
}
