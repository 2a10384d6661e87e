package org.roastfield.lab.replay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a log is asked for beside a computation.
 *
 * @param probe name of the cook file's probe that the core readings are from, or "core" for the
 *     true core; empty for the one that the file suggests, see {@link Readout#of}
 * @param from readings before count for no error [s], at least 0
 * @param until last time of the log that is used [s]; empty for all of it
 * @param targets core temperatures whose times are compared [K]; empty for every whole ten degrees
 *     Celsius inside the log's range
 * @param rates spans of temperature in which heating rates are compared
 * @param weighedLoss mass that the cut was found to have lost [kg], to compare the water with
 */
public record ComparisonOptions(
    Optional<String> probe,
    double from,
    OptionalDouble until,
    List<Double> targets,
    List<RateSpan> rates,
    OptionalDouble weighedLoss) {

  /** The whole log, as the cook file suggests. */
  public static final ComparisonOptions DEFAULTS =
      new ComparisonOptions(
          Optional.empty(),
          0,
          OptionalDouble.empty(),
          List.of(),
          List.of(),
          OptionalDouble.empty());

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if {@code from} is negative, or {@code until} not after it
   */
  public ComparisonOptions {
    targets = List.copyOf(targets);
    rates = List.copyOf(rates);
    if (!(from >= 0)) {
      throw new IllegalArgumentException("from must be at least 0, was " + from);
    }
    if (until.isPresent() && !(until.getAsDouble() > from)) {
      throw new IllegalArgumentException(
          "until must be greater than " + from + ", was " + until.getAsDouble());
    }
  }

  /** The same until a time [s]. */
  public ComparisonOptions withUntil(double until) {
    return new ComparisonOptions(
        probe, from, OptionalDouble.of(until), targets, rates, weighedLoss);
  }

  /** The same from a time on [s]. */
  public ComparisonOptions withFrom(double from) {
    return new ComparisonOptions(probe, from, until, targets, rates, weighedLoss);
  }

  /** The same with times to given temperatures [K]. */
  public ComparisonOptions withTargets(List<Double> targets) {
    return new ComparisonOptions(probe, from, until, targets, rates, weighedLoss);
  }

  /** The same with heating rates. */
  public ComparisonOptions withRates(List<RateSpan> rates) {
    return new ComparisonOptions(probe, from, until, targets, rates, weighedLoss);
  }

  /** The same with a weighed loss [kg]. */
  public ComparisonOptions withWeighedLoss(double weighedLoss) {
    return new ComparisonOptions(
        probe, from, until, targets, rates, OptionalDouble.of(weighedLoss));
  }

  /** The same for a probe of the cook file. */
  public ComparisonOptions withProbe(String probe) {
    return new ComparisonOptions(Optional.of(probe), from, until, targets, rates, weighedLoss);
  }
}
