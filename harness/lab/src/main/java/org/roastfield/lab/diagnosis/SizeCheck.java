package org.roastfield.lab.diagnosis;

import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LoggedCase;

/**
 * Whether the size of a cut comes out farther from the stated one than a tape may be off, by all
 * that the log says, a weight before included.
 */
final class SizeCheck {

  /**
   * Spreads beyond which a size is not the stated one: one honest log in twenty is. A weight by
   * itself knows a thickness hardly better than a tape does, so a fifth too thick or thin is 2 to
   * 2.6 of these, and a rarer level would not see it.
   */
  static final double APART = 1.96;

  private SizeCheck() {}

  /**
   * How far the size lies from the stated one, in spreads of what the log was expected to add.
   *
   * @return empty if the size is not free, or the log says too little of it
   */
  static Optional<Double> apart(MapEstimate estimate, LoggedCase log) {
    Optional<Integer> index = index(estimate, log);
    if (index.isEmpty() || estimate.contraction(index.get()) < MapEstimate.LEAST_CONTRACTION) {
      return Optional.empty();
    }
    int p = index.get();
    double before = estimate.prior().spread(p);
    double learned = Math.sqrt(before * before - estimate.spread(p) * estimate.spread(p));
    return Optional.of((estimate.coordinates()[p] - estimate.prior().mean()[p]) / learned);
  }

  /** Whether a log's size is not the stated one. */
  static boolean isOther(MapEstimate estimate, LoggedCase log) {
    return apart(estimate, log).map(Math::abs).orElse(0.0) > APART;
  }

  private static Optional<Integer> index(MapEstimate estimate, LoggedCase log) {
    String id = CookerLogs.id(CookParameters.SIZE, log.name());
    return estimate.prior().parameters().has(id)
        ? Optional.of(estimate.prior().parameters().index(id))
        : Optional.empty();
  }

  /** What there is to say of a log. */
  static Optional<Finding> finding(MapEstimate estimate, LoggedCase log) {
    Optional<Integer> index = index(estimate, log);
    if (index.isEmpty()) {
      return Optional.empty();
    }
    int p = index.get();
    if (isOther(estimate, log)) {
      return Optional.of(
          Finding.of(
              Finding.Kind.DATA,
              Finding.Weight.DOUBT,
              log.name(),
              String.format(
                  Locale.ROOT,
                  "the cut is not of the stated size, or this is the log of another cut: it comes"
                      + " out %.2f times it, %.1f times as far off as a tape lets one expect;"
                      + " measure it",
                  estimate.value(p),
                  Math.abs(apart(estimate, log).orElseThrow()))));
    }
    return log.isWeighed() ? Optional.empty() : Optional.of(unweighed(log, p, estimate));
  }

  private static Finding unweighed(LoggedCase log, int p, MapEstimate estimate) {
    return Finding.of(
        Finding.Kind.NOT_TOLD,
        Finding.Weight.NOTE,
        log.name(),
        String.format(
            Locale.ROOT,
            "the cut was not weighed: its size is believed as stated to ± %.0f %%, and the log leaves"
                + " ± %.0f %%; one that is farther off may still pass for a cooker that gives more"
                + " or less heat, which a weight before would tell apart",
            100 * estimate.prior().spread(p),
            100 * estimate.spread(p)));
  }
}
