package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;

/** Clock times of a cook file: ISO 8601 without a zone. */
final class Clock {

  private Clock() {}

  static LocalDateTime read(Entry entry) {
    try {
      return LocalDateTime.parse(entry.text().strip().replace(' ', 'T'));
    } catch (DateTimeParseException e) {
      throw entry.error("a date and a clock time, such as 2026-06-13T14:05");
    }
  }
}
