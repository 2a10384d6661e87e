package org.roastfield.lab.files;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of a log: what its header says it holds.
 *
 * @param name such as "core"; "time" for the time column
 * @param unit of the numbers
 */
record LogColumn(String name, LogUnit unit) {

  private static final Pattern HEADER = Pattern.compile("([a-z][a-z0-9-]{0,39})_(\\w{1,4})");

  /** Whether this is the time column. */
  boolean isTime() {
    return unit.isTime();
  }

  /**
   * Column of a header, if it is one: {@code time_} with a unit of time, or another name with a
   * unit of temperature.
   */
  static Optional<LogColumn> of(String header) {
    Matcher matcher = HEADER.matcher(header.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String name = matcher.group(1);
    for (LogUnit unit : LogUnit.values()) {
      if (unit.word().equals(matcher.group(2)) && unit.isTime() == name.equals("time")) {
        return Optional.of(new LogColumn(name, unit));
      }
    }
    return Optional.empty();
  }
}
