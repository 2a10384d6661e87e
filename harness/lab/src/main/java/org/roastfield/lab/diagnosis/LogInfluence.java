package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.inference.Influence;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.lab.cooker.CookerLogs;

/** What each log decides of the cooker's numbers, in words. */
final class LogInfluence {

  /** Length of a move in posterior spreads from which one log decides much: assumed. */
  private static final double DECIDES = 1;

  private final Verdict verdict;
  private final CookerLogs logs;
  private final MapEstimate estimate;

  LogInfluence(Verdict verdict) {
    this.verdict = verdict;
    logs = verdict.logs();
    estimate = verdict.around().estimate();
  }

  /** One a log, of several. */
  List<Finding> all() {
    int[] cooker = cooker();
    List<Finding> findings = new ArrayList<>();
    if (logs.cases().size() < 2 || cooker.length == 0) {
      return findings;
    }
    for (int log = 0; log < logs.cases().size(); log++) {
      Influence influence = Influence.of(verdict.around(), LogPlace.of(logs, log).part());
      double distance = influence.distance(cooker);
      findings.add(
          Finding.of(
              Finding.Kind.INFLUENCE,
              distance >= DECIDES ? Finding.Weight.DOUBT : Finding.Weight.NOTE,
              logs.cases().get(log).name(),
              String.format(
                  Locale.ROOT,
                  "without it the cooker's numbers would move by %.1f posterior spreads (one"
                      + " Gauss-Newton step), the most %s",
                  distance,
                  mostMoved(influence, cooker))));
    }
    return findings;
  }

  /** Which number of the cooker a log decides most, from where to where it would go without it. */
  private String mostMoved(Influence influence, int[] cooker) {
    int most = cooker[0];
    for (int p : cooker) {
      double share = Math.abs(influence.move(p)) / estimate.spread(p);
      most = share > Math.abs(influence.move(most)) / estimate.spread(most) ? p : most;
    }
    Parameter parameter = estimate.prior().parameters().get(most);
    double now = estimate.coordinates()[most];
    return String.format(
        Locale.ROOT,
        "%s, from %.2f to %.2f%s, whose spread would be %.1f times as large",
        ParameterWords.of(parameter.id()),
        parameter.scale().value(now),
        parameter.scale().value(now + influence.move(most)),
        parameter.unit().equals("1") ? "" : " " + parameter.unit(),
        influence.spread(most) / estimate.spread(most));
  }

  private int[] cooker() {
    List<Integer> cooker = new ArrayList<>();
    List<Parameter> all = estimate.prior().parameters().list();
    for (int p = 0; p < all.size(); p++) {
      if (all.get(p).owner() == Owner.COOKER) {
        cooker.add(p);
      }
    }
    return cooker.stream().mapToInt(each -> each).toArray();
  }
}
