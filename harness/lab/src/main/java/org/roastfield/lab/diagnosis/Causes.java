package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.inference.Explanations;
import org.roastfield.core.inference.MapEstimate;

/** Likely causes of a misfit in words, the most probable first, each with what it rests on. */
final class Causes {

  /** Probabilities from which a cause is worth a word, in doubt, and more likely than not. */
  private static final double WORTH_A_WORD = 0.03;

  static final double IN_DOUBT = 0.1;
  static final double LIKELY = 0.5;

  private final Verdict verdict;

  Causes(Verdict verdict) {
    this.verdict = verdict;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    double wrong = 1 - verdict.probabilityAsStated();
    for (Explanations.Ranked each : verdict.explanations().ranked()) {
      for (Suspicion suspicion : verdict.fitted()) {
        if (suspicion.explanation().equals(each.explanation())
            && each.probability() >= WORTH_A_WORD) {
          findings.add(finding(suspicion, each, wrong));
        }
      }
    }
    return findings;
  }

  private Finding finding(Suspicion suspicion, Explanations.Ranked ranked, double wrong) {
    Finding.Weight weight =
        wrong >= LIKELY
            ? Finding.Weight.MISFIT
            : wrong >= IN_DOUBT ? Finding.Weight.DOUBT : Finding.Weight.NOTE;
    String sure = ranked.probability() >= LIKELY ? "probably " : "perhaps ";
    return new Finding(
        Finding.Kind.CAUSE,
        weight,
        Optional.of(suspicion.log()).filter(log -> !log.isEmpty()),
        sure + cause(suspicion, ranked.estimate()) + "; " + evidence(ranked));
  }

  private String evidence(Explanations.Ranked ranked) {
    double asStated =
        verdict.explanations().ranked().stream()
            .filter(each -> each.explanation().name().equals(Suspect.NONE.name()))
            .mapToDouble(Explanations.Ranked::logWeight)
            .findFirst()
            .orElseThrow();
    return String.format(
        Locale.ROOT,
        "%.0f %% by the evidence of fits with this one thing free, %+.1f nat against all as stated",
        100 * ranked.probability(),
        ranked.logWeight() - asStated);
  }

  private static String cause(Suspicion suspicion, MapEstimate estimate) {
    int index = estimate.prior().parameters().index(suspicion.id());
    double value = estimate.value(index);
    double spread = estimate.spread(index);
    double minutes = suspicion.time() / 60;
    return switch (suspicion.suspect()) {
      case NONE -> "nothing";
      case SIZE ->
          String.format(
              Locale.ROOT,
              "the cut is not of the stated size but %.2f times it (± %.0f %%): measure it, or see"
                  + " whether it is the log of another cut",
              value,
              100 * spread);
      case PROBE_PLACE ->
          String.format(
              Locale.ROOT,
              "the probe is not where it is said to be but %.0f ± %.0f mm off: look where it sits,"
                  + " or see whether it is the log of another cut, thinner than stated",
              1000 * value,
              1000 * spread);
      case PROBE_SLIPPED ->
          String.format(
              Locale.ROOT,
              "the probe slipped at about %.0f min, by some %.0f ± %.0f mm",
              minutes,
              1000 * Suspicions.SLIPPED * Math.abs(value),
              1000 * Suspicions.SLIPPED * spread);
      case LID_OPEN ->
          String.format(
              Locale.ROOT,
              "the lid was open at about %.0f min for some %.0f min, which is not written down",
              minutes,
              value * OpenLid.LENGTH / 60);
      case OTHER_CUT ->
          String.format(
              Locale.ROOT,
              "it is the log of another cut, of another shape, size (%.2f times the stated) or"
                  + " start",
              value);
      case OTHER_COOKER -> "this is another cooker than that of the profile, or it has changed";
    };
  }
}
