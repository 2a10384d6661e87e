package org.roastfield.lab.cooker;

import java.util.List;
import java.util.OptionalDouble;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;

/**
 * The part of a log that is used.
 *
 * @param from earlier readings are no evidence [s], at least 0
 * @param until last time [s]; empty for all of it
 */
public record LogSpan(double from, OptionalDouble until) {

  /** All of a log. */
  public static final LogSpan ALL = new LogSpan(0, OptionalDouble.empty());

  /**
   * @throws IllegalArgumentException if {@code from} is negative, or {@code until} not after it
   */
  public LogSpan {
    if (!(from >= 0)) {
      throw new IllegalArgumentException("from must be at least 0, was " + from);
    }
    if (until.isPresent() && !(until.getAsDouble() > from)) {
      throw new IllegalArgumentException(
          "until must be greater than " + from + ", was " + until.getAsDouble());
    }
  }

  /** A log until a time [s]. */
  public static LogSpan until(double time) {
    return new LogSpan(0, OptionalDouble.of(time));
  }

  /** Whether a time is in it. */
  boolean holds(double time) {
    return time >= from && !(until.isPresent() && time > until.getAsDouble());
  }

  /** The log as if it had ended with this span. */
  public CookLog ended(CookLog log) {
    if (until.isEmpty() || until.getAsDouble() >= log.end()) {
      return log;
    }
    double end = until.getAsDouble();
    List<LogChannel> channels = log.channels().stream().map(channel -> channel.until(end)).toList();
    return new CookLog(log.fileName(), log.comments(), log.rows(), log.start(), end, channels);
  }
}
