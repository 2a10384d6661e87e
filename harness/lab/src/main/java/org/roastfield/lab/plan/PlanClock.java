package org.roastfield.lab.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.zone.ZoneRules;
import java.util.Optional;

/**
 * Clock times of a plan, whose own times are seconds after a zero. With a zone an hour is an hour
 * on the day on which clocks change, too; without one clocks never change.
 */
public final class PlanClock {

  private final LocalDateTime zero;
  private final Optional<ZoneId> zone;

  private PlanClock(LocalDateTime zero, Optional<ZoneId> zone) {
    this.zero = zero;
    this.zone = zone;
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
    return new PlanClock(zero, zone);
  }

  /** Clock time of the zero. */
  public LocalDateTime zero() {
    return zero;
  }

  /** Zone, if one is known. */
  public Optional<ZoneId> zone() {
    return zone;
  }

  /** Clock time, to the nearest second, at a time after the zero [s]. */
  public LocalDateTime at(double time) {
    return zone.map(z -> zoned(z, time).toLocalDateTime())
        .orElseGet(() -> zero.plusSeconds(Math.round(time)));
  }

  /** The same as an instant; empty without a zone. */
  public Optional<Instant> instant(double time) {
    return zone.map(z -> zoned(z, time).toInstant());
  }

  /** Time after the zero [s] at a clock time; of one that is left out, as much later. */
  public double timeOf(LocalDateTime clock) {
    return zone.map(z -> Duration.between(zoned(z, 0), clock.atZone(z)))
        .orElseGet(() -> Duration.between(zero, clock))
        .toSeconds();
  }

  /** Time after the zero [s] at an instant, by the given zone if the plan has none. */
  public double timeOf(Instant instant, ZoneId otherwise) {
    ZoneId at = zone.orElse(otherwise);
    return Duration.between(zero.atZone(at), instant.atZone(at)).toSeconds();
  }

  /** By how much clocks are put forward between two times after the zero [s]; below 0 if back. */
  public double forward(double from, double to) {
    return zone.map(z -> (double) (offset(z, to) - offset(z, from))).orElse(0.0);
  }

  /** Offset from UTC at a time after the zero, such as +02:00; empty without a zone. */
  public Optional<ZoneOffset> offset(double time) {
    return zone.map(z -> zoned(z, time).getOffset());
  }

  private ZonedDateTime zoned(ZoneId zone, double time) {
    return zero.atZone(zone).plusSeconds(Math.round(time));
  }

  private int offset(ZoneId zone, double time) {
    ZoneRules rules = zone.getRules();
    return rules.getOffset(zoned(zone, time).toInstant()).getTotalSeconds();
  }
}
