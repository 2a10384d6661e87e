package org.roastfield.core.plan;

import java.util.List;

/**
 * What was decided.
 *
 * @param reading of the pull [K]
 * @param lead before the wanted carving [s]
 * @param candidates that were weighed
 * @param slope of the final core by the reading
 * @param lowest whether no lower reading is possible
 */
record Decision(
    double reading, double lead, List<Candidate> candidates, double slope, boolean lowest) {

  /** Whether all draws miss a minimum that those which weighed the readings met. */
  boolean falls(PlanRequest request, Run run) {
    boolean met = candidates.stream().anyMatch(one -> one.allowed());
    return met && !Tally.of(run.finalCore, request).meetsMinima();
  }

  /** The same with the reading raised by what the draws miss. */
  Decision raisedFor(PlanRequest request, Run run) {
    double missing = 0;
    for (Minimum minimum : request.minima()) {
      double reached = Spread.quantile(1 - minimum.chance(), run.finalCore);
      missing = Math.max(missing, minimum.temperature() - reached);
    }
    double step = Math.max(0.1, Math.ceil(10 * missing / slope) / 10);
    return new Decision(reading + step, lead, candidates, slope, lowest);
  }
}
