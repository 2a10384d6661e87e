package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;

/** Clock times of a cook file: ISO 8601 without a zone. */
final class Clock {

  /** The grammar; the JSON Schema of cook files has the same. */
  static final Pattern PATTERN =
      Pattern.compile(
          "^\\s*[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]{1,9})?)?\\s*$");

  private Clock() {}

  static LocalDateTime read(Entry entry) {
    if (PATTERN.matcher(entry.text()).matches()) {
      try {
        return LocalDateTime.parse(entry.text().strip().replace(' ', 'T'));
      } catch (DateTimeParseException e) {
        throw entry.error("a day of the calendar and a time from 00:00 to 23:59");
      }
    }
    throw entry.error("a date and a clock time, such as 2026-06-13T14:05");
  }
}
