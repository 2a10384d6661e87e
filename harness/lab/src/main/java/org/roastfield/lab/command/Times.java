package org.roastfield.lab.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Times in words, to the minute. */
final class Times {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Times() {}

  /** Hours and minutes, such as "2:47". */
  static String hours(double seconds) {
    long minutes = Math.round(seconds / 60);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  /** Minutes with a sign, such as "-12.5 min". */
  static String signedMinutes(double seconds) {
    return String.format(Locale.ROOT, "%+.1f min", seconds / 60);
  }

  /** Clock time to the nearest minute, and by how many days it is later than the start. */
  static String clock(LocalDateTime start, LocalDateTime time) {
    LocalDateTime minute = time.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
    long days = ChronoUnit.DAYS.between(start.toLocalDate(), minute.toLocalDate());
    return CLOCK.format(minute) + (days > 0 ? " +" + days + " d" : "");
  }
}
