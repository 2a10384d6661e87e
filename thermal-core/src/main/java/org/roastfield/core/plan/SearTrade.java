package org.roastfield.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sears against each other: crust against grey ring.
 *
 * @param outcomes one a schedule, in the order asked for
 */
public record SearTrade(List<SearOutcome> outcomes) {

  /** Copies the list. */
  public SearTrade {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * The sear of least grey ring whose paler face is brown enough, where it touches metal if a part
   * of it does.
   *
   * @param crust least index of {@link org.roastfield.core.outcome.Browning}, the middle estimate
   * @return empty if none is
   */
  public Optional<SearOutcome> leastGrey(double crust) {
    return outcomes.stream()
        .filter(one -> one.early() && one.crust().middle() >= crust)
        .min(Comparator.comparingDouble(SearOutcome::grey));
  }

  /** The brownest sear that leaves the core as wished; empty if none does. */
  public Optional<SearOutcome> brownest() {
    return outcomes.stream()
        .filter(SearOutcome::early)
        .max(Comparator.comparingDouble(one -> one.crust().middle()));
  }

  /**
   * Outcomes that none beats in both crust and grey ring, from pale to brown: the curve of the
   * trade-off.
   */
  public List<SearOutcome> curve() {
    return outcomes.stream()
        .filter(SearOutcome::early)
        .filter(one -> outcomes.stream().noneMatch(other -> beats(other, one)))
        .sorted(Comparator.comparingDouble(one -> one.crust().middle()))
        .toList();
  }

  private static boolean beats(SearOutcome a, SearOutcome b) {
    boolean asGood = a.crust().middle() >= b.crust().middle() && a.grey() <= b.grey();
    boolean better = a.crust().middle() > b.crust().middle() || a.grey() < b.grey();
    return a.early() && asGood && better;
  }
}
