package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.units.Temperatures;

/**
 * Draws at a few pull readings, and what comes of each as a function of the reading, straight
 * between them; weighed under rules that draw the rise of the display on for some time.
 */
final class Scan {

  /** Readings are weighed on whole multiples of this, from 0 °C [K]. */
  private static final double MESH = 0.1;

  /**
   * A cook that misses the promised window counts as one whose core is this far short of the wish
   * [K]: a band of doneness; assumed.
   */
  private static final double MISSED = 3;

  /** Gain of a loss for which a rule may be less simple: assumed. */
  private static final double WORTH_IT = 0.98;

  private final PlanRequest request;
  private final double ahead;
  private final ScanNodes nodes;
  private final List<Candidate> candidates = new ArrayList<>();

  /** Largest lack of a chance demanded by a minimum, of each candidate. */
  private final List<Double> shortages = new ArrayList<>();

  /** Expected loss of each candidate, with that of missing the promised window. */
  private final List<Double> costs = new ArrayList<>();

  /**
   * @param ahead how long the rise of the display is drawn on [s]
   */
  Scan(PlanRequest request, ScanNodes nodes, double ahead) {
    this.request = request;
    this.nodes = nodes;
    this.ahead = ahead;
    double zero = Temperatures.ZERO_CELSIUS;
    int first = (int) Math.ceil((nodes.lowest() - zero) / MESH - 1e-6);
    int last = (int) Math.floor((nodes.highest() - zero) / MESH + 1e-6);
    for (int n = first; n <= last; n++) {
      candidates.add(candidate(zero + n * MESH));
    }
  }

  /** The scan of least loss among times that the rise is drawn on; simple ones are preferred. */
  Scan bestOf(double[] aheads) {
    Scan best = this;
    for (double other : aheads) {
      Scan scan = new Scan(request, nodes, other);
      if (scan.best().isPresent() && best.best().isPresent()) {
        double cost = scan.costOf(scan.best().get());
        best = cost < WORTH_IT * best.costOf(best.best().get()) ? scan : best;
      }
    }
    return best;
  }

  /** Rule that ends the gentle heat at a reading at the middle pace. */
  Pull pullAt(double reading) {
    return new Pull(reading + ahead * nodes.middleRate(reading), ahead);
  }

  private Candidate candidate(double reading) {
    double[][] cores = nodes.cores(pullAt(reading));
    double arrives = nodes.reached(pullAt(reading));
    Tally tally = Tally.of(cores, request);
    shortages.add(tally.shortage());
    CoreWish wish = request.wish();
    double missed = request.loss().of(wish.middle() - MISSED, wish);
    double chance = Pace.chanceOfWindow(nodes.ready(pullAt(reading)), request.service());
    costs.add(tally.expectedLoss() + (1 - chance) * missed);
    boolean allowed = arrives >= request.service().chance() && tally.meetsMinima();
    return new Candidate(
        reading,
        tally.expectedLoss(),
        Spread.of(cores[0]),
        tally.under(),
        tally.over(),
        arrives,
        allowed);
  }

  /** The allowed candidate of least loss, or else the one nearest to that. */
  Candidate chosen() {
    return best().orElseGet(this::nearest);
  }

  /** Possible lead of the draws that go by the rule of a reading [s]. */
  double lead(double reading) {
    return Pace.possibleLead(nodes.ready(pullAt(reading)), request.service());
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /** Allowed candidate of least expected loss, that of missing the window with it. */
  Optional<Candidate> best() {
    @Nullable Candidate best = null;
    for (Candidate one : candidates) {
      if (one.allowed() && (best == null || costOf(one) < costOf(best))) {
        best = one;
      }
    }
    return Optional.ofNullable(best);
  }

  private double costOf(Candidate candidate) {
    return costs.get(candidates.indexOf(candidate));
  }

  /**
   * Candidate nearest to what is demanded where none meets it: of those reached with the demanded
   * chance the first that falls least short of the minima, or else the lowest.
   */
  Candidate nearest() {
    int nearest = 0;
    for (int i = 1; i < candidates.size(); i++) {
      boolean reached = candidates.get(i).reached() >= request.service().chance();
      nearest = reached && shortages.get(i) < shortages.get(nearest) ? i : nearest;
    }
    return candidates.get(nearest);
  }

  /** Change of the median final core with the reading near a candidate. */
  double slopeAt(Candidate candidate) {
    int at = candidates.indexOf(candidate);
    Candidate before = candidates.get(Math.max(0, at - 5));
    Candidate after = candidates.get(Math.min(candidates.size() - 1, at + 5));
    return (after.finalCore().median() - before.finalCore().median())
        / (after.reading() - before.reading());
  }

  /** Share by which the middle rate grows with the reading [1/K]. */
  double growthAt(double reading) {
    double rate = nodes.middleRate(reading);
    return (nodes.middleRate(reading + 0.5) - nodes.middleRate(reading - 0.5)) / rate;
  }

  Candidate lowest() {
    return candidates.get(0);
  }

  Candidate highest() {
    return candidates.get(candidates.size() - 1);
  }
}
