package org.roastfield.lab.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How times since the start [s] are written: as clock time, or as hours and minutes since the
 * start.
 */
final class TimeBase {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter CLOCK_WITH_SECONDS =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);

  private final Optional<LocalDateTime> start;

  private TimeBase(Optional<LocalDateTime> start) {
    this.start = start;
  }

  /** Times of the clock. */
  static TimeBase clock(LocalDateTime start) {
    return new TimeBase(Optional.of(start));
  }

  /** Times since the start. */
  static TimeBase elapsed() {
    return new TimeBase(Optional.empty());
  }

  /** What the axis is called. */
  String axisTitle() {
    return start
        .map(clock -> "clock time, from " + DATE.format(clock) + " " + CLOCK.format(clock))
        .orElse("time since the start, h:min");
  }

  /** What a column of times is called. */
  String columnTitle() {
    return start.isPresent() ? "clock" : "h:min";
  }

  /** A time to the minute. */
  String text(double seconds) {
    return start.map(clock -> CLOCK.format(rounded(clock, seconds))).orElse(hoursMinutes(seconds));
  }

  /** A time of the clock to the second, or since the start to the minute. */
  String exactText(double seconds) {
    return start
        .map(clock -> CLOCK_WITH_SECONDS.format(clock.plusSeconds(Math.round(seconds))))
        .orElse(hoursMinutes(seconds));
  }

  /** Ticks at full minutes, quarters or hours. */
  List<Tick> ticks(double low, double high, int most) {
    double clockAtZero =
        start.map(clock -> (double) clock.toLocalTime().toSecondOfDay()).orElse(0.0);
    return Ticks.clock(low, high, clockAtZero, most).stream()
        .map(value -> new Tick(value, text(value)))
        .toList();
  }

  private static LocalDateTime rounded(LocalDateTime clock, double seconds) {
    return clock.plusSeconds(Math.round(seconds) + 30);
  }

  private static String hoursMinutes(double seconds) {
    long minutes = Math.round(seconds / 60);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }
}
