package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.units.Temperatures;

/**
 * Draws at a few pull readings, and the final core of each as a function of the reading, straight
 * between them.
 */
final class Scan {

  /** Readings are weighed on whole multiples of this, from 0 °C [K]. */
  private static final double MESH = 0.1;

  private final double[] readings;
  private final double[][] finalCores;
  private final boolean[][] reached;
  private final PlanRequest request;
  private final List<Candidate> candidates = new ArrayList<>();

  /** Largest lack of a chance demanded by a minimum, of each candidate. */
  private final List<Double> shortages = new ArrayList<>();

  /**
   * @param run draws of all readings, those of one side by side
   */
  Scan(PlanRequest request, double[] readings, Run run) {
    this.request = request;
    this.readings = readings;
    int count = run.size() / readings.length;
    List<Integer> computed = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean all = true;
      for (int k = 0; k < readings.length; k++) {
        all &= run.isComputed(k * count + i);
      }
      if (all) {
        computed.add(i);
      }
    }
    finalCores = new double[readings.length][computed.size()];
    reached = new boolean[readings.length][computed.size()];
    for (int k = 0; k < readings.length; k++) {
      for (int i = 0; i < computed.size(); i++) {
        int at = k * count + computed.get(i);
        finalCores[k][i] = run.finalCore[at];
        reached[k][i] = run.pull[at] < Double.POSITIVE_INFINITY;
      }
    }
    weigh();
  }

  private void weigh() {
    double zero = Temperatures.ZERO_CELSIUS;
    int first = (int) Math.ceil((readings[0] - zero) / MESH - 1e-6);
    int last = (int) Math.floor((readings[readings.length - 1] - zero) / MESH + 1e-6);
    for (int n = first; n <= last; n++) {
      candidates.add(candidate(zero + n * MESH));
    }
  }

  private Candidate candidate(double reading) {
    int k = 1;
    while (k < readings.length - 1 && readings[k] < reading) {
      k++;
    }
    double share = (reading - readings[k - 1]) / (readings[k] - readings[k - 1]);
    double[] cores = new double[finalCores[k].length];
    double got = 0;
    for (int i = 0; i < cores.length; i++) {
      cores[i] = (1 - share) * finalCores[k - 1][i] + share * finalCores[k][i];
      got += (1 - share) * (reached[k - 1][i] ? 1 : 0) + share * (reached[k][i] ? 1 : 0);
    }
    Tally tally = Tally.of(cores, request);
    shortages.add(tally.shortage());
    double arrives = got / cores.length;
    boolean allowed = arrives >= request.service().chance() && tally.meetsMinima();
    return new Candidate(
        reading,
        tally.expectedLoss(),
        Spread.of(cores),
        tally.under(),
        tally.over(),
        arrives,
        allowed);
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /** Allowed candidate of least expected loss, or an empty list. */
  List<Candidate> best() {
    List<Candidate> best = new ArrayList<>();
    for (Candidate one : candidates) {
      if (one.allowed() && (best.isEmpty() || one.expectedLoss() < best.get(0).expectedLoss())) {
        best.clear();
        best.add(one);
      }
    }
    return best;
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

  Candidate lowest() {
    return candidates.get(0);
  }

  Candidate highest() {
    return candidates.get(candidates.size() - 1);
  }
}
