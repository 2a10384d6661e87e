package org.roastfield.lab.intake;

import java.util.Arrays;
import java.util.Optional;

/** How a log writes time. */
public enum TimeStyle {
  /** Seconds since some beginning. */
  SECONDS("s", 1),
  /** Minutes since some beginning. */
  MINUTES("min", 60),
  /** Hours since some beginning. */
  HOURS("h", 3600),
  /** Milliseconds since some beginning. */
  MILLISECONDS("ms", 1e-3),
  /** Hours, minutes and seconds since some beginning, such as 1:02:03. */
  ELAPSED("h:m:s", 1),
  /** Seconds since the beginning of 1970, UTC. */
  EPOCH("epoch-s", 1),
  /** Milliseconds since the beginning of 1970, UTC. */
  EPOCH_MILLISECONDS("epoch-ms", 1e-3),
  /** Clock time without a date; a step back by more than half a day is the next day. */
  CLOCK("clock", 1),
  /** Date and clock time: year, month, day. */
  YEAR_FIRST("ymd", 1),
  /** Date and clock time: day, month, year. */
  DAY_FIRST("dmy", 1),
  /** Date and clock time: month, day, year. */
  MONTH_FIRST("mdy", 1);

  private final String word;
  private final double seconds;

  TimeStyle(String word, double seconds) {
    this.word = word;
    this.seconds = seconds;
  }

  /** As options write it. */
  public String word() {
    return word;
  }

  /** Seconds of one, for plain numbers. */
  double seconds() {
    return seconds;
  }

  /** Whether it is a plain number. */
  boolean isNumber() {
    return isElapsedNumber() || isEpoch();
  }

  /** Whether it counts from 1970. */
  boolean isEpoch() {
    return this == EPOCH || this == EPOCH_MILLISECONDS;
  }

  /** Whether it counts from a beginning of its own. */
  boolean isElapsed() {
    return isElapsedNumber() || this == ELAPSED;
  }

  /** Whether it has a date. */
  boolean isDated() {
    return this == YEAR_FIRST || this == DAY_FIRST || this == MONTH_FIRST;
  }

  private boolean isElapsedNumber() {
    return this == SECONDS || this == MINUTES || this == HOURS || this == MILLISECONDS;
  }

  /** Style of a word, if it is one. */
  static Optional<TimeStyle> of(String word) {
    return Arrays.stream(values()).filter(style -> style.word.equals(word)).findFirst();
  }

  /** All words. */
  static String words() {
    return String.join(", ", Arrays.stream(values()).map(TimeStyle::word).toList());
  }
}
