package org.roastfield.lab.plan;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/**
 * A plan as an iCalendar file by RFC 5545. With a zone its times are UTC, so that a change of
 * clocks in between cannot be read in two ways; without one they are those of whatever clock is at
 * hand.
 */
public final class CalendarFile {

  /** Octets of a line without its end. */
  private static final int LONGEST_LINE = 75;

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

  private final PlanClock clock;
  private final String cook;
  private final StringBuilder text;

  private CalendarFile(Part part, StringBuilder text) {
    this.clock = part.clock();
    this.cook = part.cook();
    this.text = text;
  }

  /**
   * Entries of one cook.
   *
   * @param cook its name, which with the day of the clock's zero makes the entries' ids (untrusted
   *     text)
   * @param clock of the entries
   */
  public record Part(String cook, PlanClock clock, List<CalendarEntry> entries) {

    /** Copies the list. */
    public Part {
      entries = List.copyOf(entries);
    }
  }

  /**
   * The text of a file.
   *
   * @param made when the plan was made
   */
  public static String text(List<Part> parts, Instant made) {
    StringBuilder text = new StringBuilder();
    line(text, "BEGIN:VCALENDAR");
    line(text, "VERSION:2.0");
    line(text, "PRODID:-//Roastfield//Plan 1//EN");
    line(text, "CALSCALE:GREGORIAN");
    for (Part part : parts) {
      CalendarFile file = new CalendarFile(part, text);
      part.entries().forEach(entry -> file.event(entry, made));
    }
    line(text, "END:VCALENDAR");
    return text.toString();
  }

  private void event(CalendarEntry entry, Instant made) {
    line("BEGIN:VEVENT");
    line("UID:" + id(entry));
    line("DTSTAMP:" + utc(made));
    line("DTSTART:" + time(entry.from()));
    if (Math.round(entry.to()) > Math.round(entry.from())) {
      line("DTEND:" + time(entry.to()));
    }
    line("SUMMARY:" + escaped(entry.summary()));
    line("DESCRIPTION:" + escaped(entry.description()));
    line("TRANSP:TRANSPARENT");
    if (entry.alarm()) {
      line("BEGIN:VALARM");
      line("ACTION:DISPLAY");
      line("TRIGGER;RELATED=START:PT0S");
      line("DESCRIPTION:" + escaped(entry.summary()));
      line("END:VALARM");
    }
    line("END:VEVENT");
  }

  /** The same for the same step of the same cook on the same day, whatever its time. */
  private String id(CalendarEntry entry) {
    String name = cook + '\n' + clock.zero().toLocalDate() + '\n' + entry.id();
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private String time(double time) {
    return clock.instant(time).map(CalendarFile::utc).orElseGet(() -> LOCAL.format(clock.at(time)));
  }

  private static String utc(Instant instant) {
    Instant second = instant.truncatedTo(ChronoUnit.SECONDS);
    return LOCAL.format(LocalDateTime.ofInstant(second, ZoneOffset.UTC)) + "Z";
  }

  /** A value of type TEXT; controls but line feeds are left out, which no value may hold. */
  static String escaped(String value) {
    StringBuilder escaped = new StringBuilder();
    value
        .codePoints()
        .forEach(
            point -> {
              switch (point) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(point);
                case '\n' -> escaped.append("\\n");
                default -> {
                  boolean lone = point >= 0xD800 && point <= 0xDFFF;
                  if (!Character.isISOControl(point) && !lone) {
                    escaped.appendCodePoint(point);
                  }
                }
              }
            });
    return escaped.toString();
  }

  /** A line, folded between characters where it is longer than 75 octets. */
  private void line(String content) {
    line(text, content);
  }

  private static void line(StringBuilder text, String content) {
    int octets = 0;
    for (int i = 0; i < content.length(); ) {
      int point = content.codePointAt(i);
      int size = Character.toString(point).getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST_LINE) {
        text.append("\r\n ");
        octets = 1;
      }
      text.appendCodePoint(point);
      octets += size;
      i += Character.charCount(point);
    }
    text.append("\r\n");
  }
}
