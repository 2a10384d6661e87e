package org.roastfield.core.plan;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What was decided.
 *
 * @param pull rule for the end of the gentle heat
 * @param readings at which it ends [K]
 * @param lead before the wanted carving [s]
 * @param candidates that were weighed
 * @param slope of the final core by the targets
 * @param expected median of the final core of the draws that weighed it [K]
 * @param afterPull from the pull until it has rested, in the middle [s]
 * @param lowest whether no lower reading is possible
 */
record Decision(
    Pull pull,
    Spread readings,
    double lead,
    List<Candidate> candidates,
    double slope,
    double expected,
    double afterPull,
    boolean lowest) {

  /** By how much a lead may be too short or too long [s]. */
  static final double NEAR_ENOUGH = 60;

  /** Least effect of targets on the core by which they are moved, and by how much at most [K]. */
  private static final double LEAST_SLOPE = 0.25;

  private static final double MOST_OFF = 2;

  /** Readings are raised by whole multiples [K]. */
  private static final double STEP = 0.1;

  /** That of a plan. */
  static Decision of(Plan plan) {
    double rested = plan.milestone(Milestone.Kind.READY).time().median();
    double pulled = plan.milestone(Milestone.Kind.PULL).time().median();
    double after = plan.waits() ? plan.lead() - plan.timing().sears() : rested - pulled;
    return new Decision(
        plan.pull(),
        plan.readings(),
        plan.lead(),
        plan.candidates(),
        1,
        plan.finalCore().median(),
        after,
        false);
  }

  /**
   * The same with targets moved by what the weighing was off, being between computed readings.
   *
   * @param run of the draws that weighed it
   */
  Decision centred(Run run) {
    double[] cores =
        IntStream.range(0, run.size())
            .filter(run::isComputed)
            .mapToDouble(i -> run.finalCore[i])
            .toArray();
    double off = Spread.of(cores).median() - expected;
    double by = slope >= LEAST_SLOPE ? -Math.max(-MOST_OFF, Math.min(MOST_OFF, off / slope)) : 0;
    List<Candidate> moved = candidates.stream().map(one -> one.at(one.reading() + by)).toList();
    return new Decision(
        pull.raised(by), readings.plus(by), lead, moved, slope, expected, afterPull, lowest);
  }

  /**
   * The same within the window of a service, by the lead that it has. The readings are those of a
   * service that is not: what cannot be had by the display is not aimed at otherwise.
   */
  Decision bound(Service service) {
    Pull within = pull.within(service, lead - afterPull);
    return new Decision(within, readings, lead, candidates, slope, expected, afterPull, lowest);
  }

  /**
   * Whether a window is to be kept that draws by the display meet with the demanded chance, as
   * nearly as a lead is known.
   */
  boolean canBeKept(Service service, Run run) {
    double latest = lead + service.latest() + NEAR_ENOUGH;
    long inTime = IntStream.range(0, run.size()).filter(i -> run.ready[i] <= latest).count();
    return service.kept() && inTime >= service.chance() * run.size();
  }

  /** Whether it holds in all draws: the minima that others allowed, and the lead. */
  boolean holds(PlanRequest request, Run run) {
    return !falls(request, run) && Math.abs(leadOf(request, run) - lead) <= NEAR_ENOUGH;
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
        pull.raised(missing),
        readings.plus(missing),
        other,
        candidates,
        slope,
        expected,
        afterPull,
        lowest);
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
   * The lead, or a longer possible one that all draws need for the demanded chance, but none by
   * which most of them would be held too long; or, unless the window is kept, a shorter one that
   * still gives it where more than the others would be held too long [s]. Where too few of them
   * ever get there, none helps.
   */
  private double leadOf(PlanRequest request, Run run) {
    Service service = request.service();
    double needed = Pace.neededLead(run.ready, service);
    if (needed == Double.POSITIVE_INFINITY) {
      return lead;
    }
    double possible = Math.min(needed, -service.earliestOn());
    double early = Spread.quantile(1 - service.chance(), run.ready) + service.longestHold();
    double most = Spread.quantile(PullChoice.MOST_EARLY, run.ready) + service.longestHold();
    return Math.max(Math.min(possible, most), service.kept() ? lead : Math.min(lead, early));
  }
}
