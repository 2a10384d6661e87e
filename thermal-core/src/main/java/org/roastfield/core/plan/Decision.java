package org.roastfield.core.plan;

import java.util.List;

/**
 * What was decided.
 *
 * @param pull rule for the end of the gentle heat
 * @param readings at which it ends [K]
 * @param lead before the wanted carving [s]
 * @param candidates that were weighed
 * @param slope of the final core by the targets
 * @param afterPull from the pull until it has rested, in the middle [s]
 * @param lowest whether no lower reading is possible
 */
record Decision(
    Pull pull,
    Spread readings,
    double lead,
    List<Candidate> candidates,
    double slope,
    double afterPull,
    boolean lowest) {

  /** By how much a lead may be too short [s]. */
  static final double NEAR_ENOUGH = 60;

  /** Readings are raised by whole multiples [K]. */
  private static final double STEP = 0.1;

  /** That of a plan. */
  static Decision of(Plan plan) {
    double after = plan.lead() - plan.timing().sears();
    return new Decision(
        plan.pull(), plan.readings(), plan.lead(), plan.candidates(), 1, after, false);
  }

  /** Whether it holds in all draws: the minima that others allowed, and the lead. */
  boolean holds(PlanRequest request, Run run) {
    return !falls(request, run) && leadOf(request, run) - lead <= NEAR_ENOUGH;
  }

  /**
   * The same with the lead of all draws, and the targets raised by what they miss. Targets stay
   * where they are in time: moved along they would have cuts pulled later, for which the lead would
   * have to grow again.
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
    double other = leadOf(request, run);
    return new Decision(
        pull.raised(missing), readings.plus(missing), other, candidates, slope, afterPull, lowest);
  }

  /** Whether all draws miss a minimum that those which weighed the readings met. */
  private boolean falls(PlanRequest request, Run run) {
    boolean met = candidates.stream().anyMatch(Candidate::allowed);
    return met && !Tally.of(run.cores, request).meetsMinima();
  }

  /** What the clock decides. */
  Timing timing(Service service) {
    return Timing.of(service, lead, afterPull);
  }

  /**
   * The lead, or a longer possible one that all draws need for the demanded chance [s]; where too
   * few of them ever get there, none helps.
   */
  private double leadOf(PlanRequest request, Run run) {
    double needed = Pace.neededLead(run.ready, request.service());
    double possible = Math.min(needed, -request.service().earliestOn());
    return needed < Double.POSITIVE_INFINITY ? Math.max(lead, possible) : lead;
  }
}
