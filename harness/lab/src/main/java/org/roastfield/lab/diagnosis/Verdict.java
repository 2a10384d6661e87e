package org.roastfield.lab.diagnosis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.roastfield.core.inference.Conflict;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.Explanation;
import org.roastfield.core.inference.Explanations;
import org.roastfield.core.inference.FirstOrder;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.ProfileRatio;
import org.roastfield.lab.cooker.CookerLogs;

/** What an inquiry came to. Immutable. */
public final class Verdict {

  private final CookerLogs logs;
  private final FirstOrder around;
  private final Diagnosis diagnosis;
  private final Set<String> otherSizes;
  private final List<Suspicion> fitted;
  private final Explanation none;
  private final Explanations explanations;
  private final double chamberRatio;

  Verdict(
      CookerLogs logs,
      FirstOrder around,
      Diagnosis diagnosis,
      Set<String> otherSizes,
      List<Suspicion> fitted,
      Explanation none,
      Explanations explanations,
      double chamberRatio) {
    this.logs = logs;
    this.around = around;
    this.diagnosis = diagnosis;
    this.otherSizes = Set.copyOf(otherSizes);
    this.fitted = List.copyOf(fitted);
    this.none = none;
    this.explanations = explanations;
    this.chamberRatio = chamberRatio;
  }

  /** The logs. */
  public CookerLogs logs() {
    return logs;
  }

  /** The calibration to first order. */
  public FirstOrder around() {
    return around;
  }

  /** Diagnosis of the calibration as stated. */
  public Diagnosis diagnosis() {
    return diagnosis;
  }

  /** Everything that was fitted, the most probable first. */
  public Explanations explanations() {
    return explanations;
  }

  /** How much more probable the logs are with the older profile than without, if there is one. */
  public Optional<ProfileRatio> ratio() {
    return estimate(Suspect.OTHER_COOKER.name())
        .filter(MapEstimate::isFound)
        .map(without -> ProfileRatio.of(around.estimate(), without, chamberRatio));
  }

  /** How far the logs and the older profile stand apart, if there is one. */
  public Optional<Conflict> profileConflict() {
    return ratio().map(any -> diagnosis.ofCooker());
  }

  private Optional<MapEstimate> estimate(String explanation) {
    return explanations.ranked().stream()
        .filter(each -> each.explanation().name().equals(explanation))
        .map(Explanations.Ranked::estimate)
        .findFirst();
  }

  /** Whether a profile of this calibration can be relied on. */
  public enum Status {
    /** All seems to be as stated. */
    AS_STATED,
    /** Something may be wrong: it is worth a look, and the spreads count with it. */
    IN_DOUBT,
    /** Something is wrong more likely than not, or the logs contradict what was believed. */
    MISFIT;

    /** As files write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * Whether a profile of this calibration can be relied on; in doubt too where a cut comes out of
   * another size than stated.
   */
  public Status status() {
    double wrong = 1 - probabilityAsStated();
    if (wrong >= Causes.LIKELY) {
      return Status.MISFIT;
    }
    boolean doubtful =
        wrong >= Causes.IN_DOUBT
            || diagnosis.isDoubtful()
            || !otherSizes.isEmpty()
            || ratio().map(ProfileRatio::isAnother).orElse(false)
            || profileConflict().map(one -> one.chance() < Diagnosis.LEAST_CHANCE).orElse(false);
    return doubtful ? Status.IN_DOUBT : Status.AS_STATED;
  }

  List<Suspicion> fitted() {
    return fitted;
  }

  /** Probability that all is as stated, among what was tried. */
  public double probabilityAsStated() {
    return explanations.ranked().stream()
        .filter(each -> each.explanation().equals(none))
        .mapToDouble(Explanations.Ranked::probability)
        .sum();
  }

  /**
   * What is known of the calibration's coordinates over all that may be wrong; where even the most
   * probable explanation is in conflict with its prior, variances grow until the conflict is an
   * ordinary one.
   */
  public Prior pooled() {
    Prior pooled = explanations.pooled(none);
    Explanations.Ranked best = explanations.best();
    Diagnosis left = Diagnosis.of(FirstOrder.of(best.explanation().calibration(), best.estimate()));
    double factor =
        left.conflict().chance() < Diagnosis.LEAST_CHANCE ? left.conflict().inflation() : 1;
    int n = pooled.size();
    double[][] covariance = new double[n][n];
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        covariance[p][q] = factor * pooled.covariance(p, q);
      }
    }
    return Prior.of(pooled.parameters(), pooled.mean(), covariance);
  }
}
