package org.roastfield.core.plan;

import java.util.List;

/**
 * What was decided.
 *
 * @param pull rule for the end of the gentle heat
 * @param reading at which it ends at the middle pace [K]
 * @param lead before the wanted carving [s]
 * @param candidates that were weighed
 * @param slope of the final core by the reading
 * @param growth share by which rates grow with the reading [1/K]
 * @param afterPull from the pull until it has rested, in the middle [s]
 * @param lowest whether no lower reading is possible
 */
record Decision(
    Pull pull,
    double reading,
    double lead,
    List<Candidate> candidates,
    double slope,
    double growth,
    double afterPull,
    boolean lowest) {

  /** By how much a lead may be off: it moves the time of the hold, and hardly the core [s]. */
  private static final double NEAR_ENOUGH = 60;

  /** Readings are raised by whole multiples [K]. */
  private static final double STEP = 0.1;

  /** Whether it holds in all draws: the minima that others allowed, and the lead. */
  boolean holds(PlanRequest request, Run run) {
    return !falls(request, run) && Math.abs(lead - leadOf(request, run)) <= NEAR_ENOUGH;
  }

  /**
   * The same with the lead of all draws, and the reading raised by what they miss.
   *
   * @param run of all draws
   */
  Decision corrected(PlanRequest request, Run run) {
    double missing = 0;
    if (falls(request, run)) {
      for (Minimum minimum : request.minima()) {
        double reached = Spread.quantile(1 - minimum.chance(), run.coldest());
        missing = Math.max(missing, minimum.temperature() - reached);
      }
      missing = Math.max(STEP, STEP * Math.ceil(missing / slope / STEP));
    }
    return new Decision(
        new Pull(pull.target() + missing, pull.ahead()),
        reading + missing,
        leadOf(request, run),
        candidates,
        slope,
        growth,
        afterPull,
        lowest);
  }

  /** Whether all draws miss a minimum that those which weighed the readings met. */
  private boolean falls(PlanRequest request, Run run) {
    boolean met = candidates.stream().anyMatch(Candidate::allowed);
    return met && !Tally.of(run.cores, request).meetsMinima();
  }

  /** The same with another lead [s]. */
  Decision withLead(double other) {
    return new Decision(pull, reading, other, candidates, slope, growth, afterPull, lowest);
  }

  private static double leadOf(PlanRequest request, Run run) {
    return Pace.possibleLead(run.ready, request.service());
  }
}
