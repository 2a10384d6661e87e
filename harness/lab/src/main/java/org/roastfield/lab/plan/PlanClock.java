package org.roastfield.lab.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;

/**
 * Clock times of a plan, whose own times are seconds after a zero. With a zone an hour is an hour
 * on the day on which clocks change, too; without one clocks never change.
 */
public final class PlanClock {

  /** No clocks are changed by more. */
  private static final Duration LONGEST_CHANGE = Duration.ofHours(3);

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
    zone.flatMap(at -> leftOut(zero, at))
        .ifPresent(
            gap -> {
              throw new IllegalArgumentException("zero must be " + gap);
            });
    return new PlanClock(zero, zone.map(zero::atZone));
  }

  /** The same clock with a zero that is so much later [s]; below 0, earlier. */
  public PlanClock moved(double seconds) {
    long whole = Math.round(seconds);
    return new PlanClock(at((double) whole), zoned.map(z -> z.plusSeconds(whole)));
  }

  /**
   * That a clock time is left out in a zone, since clocks go forward over it, with the nearest that
   * are not; empty if it exists.
   */
  public static Optional<String> leftOut(LocalDateTime clock, ZoneId zone) {
    ZoneOffsetTransition change = zone.getRules().getTransition(clock);
    if (change == null || !change.isGap()) {
      return Optional.empty();
    }
    LocalDateTime after = change.getDateTimeAfter();
    return Optional.of(
        "a time that exists: clocks in "
            + zone
            + " go from "
            + Words.clock(change.getDateTimeBefore())
            + " to "
            + Words.clock(after)
            + " over "
            + clock
            + "; the nearest are "
            + change.getDateTimeBefore().minusMinutes(1)
            + " and "
            + after);
  }

  /** Which two a clock time may be that comes twice in a zone; empty if it does not. */
  public static Optional<String> twice(LocalDateTime clock, ZoneId zone) {
    ZoneOffsetTransition change = zone.getRules().getTransition(clock);
    if (change == null || !change.isOverlap()) {
      return Optional.empty();
    }
    return Optional.of(
        clock
            + " comes twice in "
            + zone
            + ", first at "
            + clock.minusSeconds(change.getOffsetBefore().getTotalSeconds())
            + " and then at "
            + clock.minusSeconds(change.getOffsetAfter().getTotalSeconds())
            + " by --zone UTC");
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

  /** The same to the nearest minute. */
  public LocalDateTime minute(double time) {
    return at(toMinute(time));
  }

  /** The nearest time at which a minute of the clock begins [s]. */
  private double toMinute(double time) {
    LocalDateTime half = at(time + 30);
    return Math.round(time + 30) - (half.getSecond() + half.getNano() / 1e9);
  }

  /**
   * Such as 18:30, to the nearest minute; of a time that comes twice, since clocks go back, 02:10A
   * before that and 02:10B after it.
   */
  public String text(double time) {
    double minute = toMinute(time);
    return Words.clock(at(minute)) + pass(minute);
  }

  private String pass(double time) {
    if (zoned.isEmpty()) {
      return "";
    }
    ZonedDateTime at = zoned(time).orElseThrow();
    ZoneOffsetTransition change = at.getZone().getRules().getTransition(at.toLocalDateTime());
    if (change == null || !change.isOverlap()) {
      return "";
    }
    return at.getOffset().equals(change.getOffsetBefore()) ? "A" : "B";
  }

  /** For other programs, to the second: 2026-06-13T18:30:00+01:00, or without a zone no offset. */
  public String iso(double time) {
    return zoned(time)
        .map(at -> at.toOffsetDateTime().toString())
        .orElseGet(() -> at(time).toString());
  }

  /** The same to the nearest minute. */
  public String isoMinute(double time) {
    return iso(toMinute(time));
  }

  /**
   * The change of clocks between two times after the zero [s], or by which a time between them
   * comes twice.
   */
  public Optional<ZoneOffsetTransition> change(double from, double to) {
    if (zoned.isEmpty()) {
      return Optional.empty();
    }
    Instant first = instant(from).orElseThrow();
    Instant last = instant(to).orElseThrow();
    Instant before = first.minus(LONGEST_CHANGE);
    ZoneOffsetTransition next = zoned.get().getZone().getRules().nextTransition(before);
    if (next == null) {
      return Optional.empty();
    }
    Duration reach = next.isOverlap() ? next.getDuration().abs() : Duration.ZERO;
    boolean bears =
        next.getInstant().minus(reach).compareTo(last) <= 0
            && next.getInstant().plus(reach).isAfter(first);
    return bears ? Optional.of(next) : Optional.empty();
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

  /** Time after the zero [s] of another clock's zero; by clock times if one has no zone. */
  public double timeOf(PlanClock other) {
    return zoned.isPresent() && other.zoned.isPresent()
        ? Duration.between(zoned.get(), other.zoned.get()).toSeconds()
        : Duration.between(zero, other.zero).toSeconds();
  }

  private Optional<ZonedDateTime> zoned(double time) {
    return zoned.map(z -> z.plusSeconds(Math.round(time)));
  }
}
