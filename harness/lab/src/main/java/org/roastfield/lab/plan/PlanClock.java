package org.roastfield.lab.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Clock times of a plan, whose own times are seconds after a zero. With a zone an hour is an hour
 * on the day on which clocks change, too; without one clocks never change.
 */
public final class PlanClock {

  private final LocalDateTime zero;
  private final Optional<ZonedDateTime> zoned;

  private PlanClock(LocalDateTime zero, Optional<ZonedDateTime> zoned) {
    this.zero = zero;
    this.zoned = zoned;
  }

  /**
   * A clock.
   *
   * @param zero clock time of the plan's zero; of a time that comes twice, since clocks go back,
   *     the first
   * @throws IllegalArgumentException if clocks leave the zero out in this zone
   */
  public static PlanClock of(LocalDateTime zero, Optional<ZoneId> zone) {
    if (zone.isPresent() && zone.get().getRules().getValidOffsets(zero).isEmpty()) {
      throw new IllegalArgumentException(
          "clock time must exist in "
              + zone.get()
              + ", where clocks go forward over it, was "
              + zero);
    }
    return new PlanClock(zero, zone.map(zero::atZone));
  }

  /** The same clock with a zero that is so much later [s]; below 0, earlier. */
  public PlanClock moved(double seconds) {
    long whole = Math.round(seconds);
    return new PlanClock(at((double) whole), zoned.map(z -> z.plusSeconds(whole)));
  }

  /** Clock time of the zero. */
  public LocalDateTime zero() {
    return zero;
  }

  /** Zone, if one is known. */
  public Optional<ZoneId> zone() {
    return zoned.map(ZonedDateTime::getZone);
  }

  /** Clock time, to the nearest second, at a time after the zero [s]. */
  public LocalDateTime at(double time) {
    return zoned(time)
        .map(ZonedDateTime::toLocalDateTime)
        .orElseGet(() -> zero.plusSeconds(Math.round(time)));
  }

  /** The same as an instant; empty without a zone. */
  public Optional<Instant> instant(double time) {
    return zoned(time).map(ZonedDateTime::toInstant);
  }

  /** Time after the zero [s] at a clock time; of one that is left out, as much later. */
  public double timeOf(LocalDateTime clock) {
    return zoned
        .map(z -> Duration.between(z, clock.atZone(z.getZone())))
        .orElseGet(() -> Duration.between(zero, clock))
        .toSeconds();
  }

  /** Time after the zero [s] at an instant, by the given zone if the plan has none. */
  public double timeOf(Instant instant, ZoneId otherwise) {
    return Duration.between(zoned.orElse(zero.atZone(otherwise)).toInstant(), instant).toSeconds();
  }

  /** By how much clocks are put forward between two times after the zero [s]; below 0 if back. */
  public double forward(double from, double to) {
    return zoned.isEmpty()
        ? 0
        : offset(to).orElseThrow().getTotalSeconds() - offset(from).orElseThrow().getTotalSeconds();
  }

  /** Offset from UTC at a time after the zero, such as +02:00; empty without a zone. */
  public Optional<ZoneOffset> offset(double time) {
    return zoned(time).map(ZonedDateTime::getOffset);
  }

  private Optional<ZonedDateTime> zoned(double time) {
    return zoned.map(z -> z.plusSeconds(Math.round(time)));
  }
}
