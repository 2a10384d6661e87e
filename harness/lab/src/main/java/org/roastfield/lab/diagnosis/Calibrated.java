package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Series;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerSearch;
import org.roastfield.lab.cooker.LoggedCase;

/**
 * Logs that a profile was made from, as they were found.
 *
 * @param found numbers of cooker, cuts and probes
 * @param verdict on them; empty if the search was stopped before
 * @param findings of the verdict, what matters most first
 * @param profile of the cooker
 */
public record Calibrated(
    CookerSearch.Found found,
    Optional<Verdict> verdict,
    List<Finding> findings,
    CookerProfile profile) {

  /** Copies the list. */
  public Calibrated {
    findings = List.copyOf(findings);
  }

  /**
   * A trace beside what the model computes for it.
   *
   * @param log that it is of
   * @param readings as logged [K]
   * @param computed at their times [K]
   */
  public record Pair(String log, Series readings, List<Double> computed) {

    /** Copies the list. */
    public Pair {
      computed = List.copyOf(computed);
    }
  }

  /** All traces, in the order of the logs. */
  public List<Pair> traces() {
    List<Pair> pairs = new ArrayList<>();
    double[] predicted = found.estimate().predicted();
    int row = 0;
    for (LoggedCase one : found.logs().cases()) {
      for (ObservedTrace trace : one.traces()) {
        int size = trace.readings().size();
        List<Double> computed = Arrays.stream(predicted, row, row + size).boxed().toList();
        pairs.add(new Pair(one.name(), trace.readings(), computed));
        row += size;
      }
    }
    return pairs;
  }
}
