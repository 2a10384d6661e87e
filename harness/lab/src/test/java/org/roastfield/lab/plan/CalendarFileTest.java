package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;

/**
 * Calendar files against an independent reader, and the grammar of RFC 5545 where it is lenient.
 */
class CalendarFileTest {

  private static final Instant MADE = Instant.parse("2026-06-13T09:15:07.5Z");
  private static final LocalDateTime SERVICE = LocalDateTime.parse("2026-06-13T18:30");

  private static final CalendarEntry PULL =
      new CalendarEntry(
          "pull", "Off the gentle heat", "At 52 °C; by the reading", -5400, -1800, true);

  private static PlanClock clock(String zone) {
    return PlanClock.of(SERVICE, Optional.of(ZoneId.of(zone)));
  }

  private static String file(PlanClock clock, CalendarEntry... entries) {
    return CalendarFile.text(List.of(new CalendarFile.Part("Pork", clock, List.of(entries))), MADE);
  }

  private static List<VEvent> read(String text) {
    List<List<ParseWarning>> warnings = new ArrayList<>();
    List<ICalendar> calendars = Biweekly.parse(text).warnings(warnings).all();
    assertEquals(List.of(List.of()), warnings, text);
    assertTrue(calendars.get(0).validate(ICalVersion.V2_0).isEmpty(), text);
    return calendars.get(0).getEvents();
  }

  private static String id(String text) {
    return read(text).get(0).getUid().getValue();
  }

  @Example
  void withZone_timesAreUtc() {
    String text = file(clock("Europe/Stockholm"), PULL);
    VEvent event = read(text).get(0);
    assertEquals(
        Instant.parse("2026-06-13T15:00:00Z"), event.getDateStart().getValue().toInstant());
    assertEquals(Instant.parse("2026-06-13T16:00:00Z"), event.getDateEnd().getValue().toInstant());
    assertEquals(
        Instant.parse("2026-06-13T09:15:07Z"), event.getDateTimeStamp().getValue().toInstant());
    assertTrue(text.contains("\r\nDTSTART:20260613T150000Z\r\n"), text);
    assertEquals("At 52 °C; by the reading", event.getDescription().getValue());
    assertEquals(1, event.getAlarms().size());
  }

  @Example
  void withoutZone_timesAreOfTheClockAtHand() {
    String text = file(PlanClock.of(SERVICE, Optional.empty()), PULL);
    assertEquals(1, read(text).size());
    assertTrue(text.contains("\r\nDTSTART:20260613T170000\r\n"), text);
  }

  @Example
  void whatTakesNoTime_hasNoEnd() {
    String text = file(clock("UTC"), new CalendarEntry("on", "On", "Now", 0, 0, false));
    assertFalse(text.contains("DTEND"), text);
    assertFalse(text.contains("VALARM"), text);
    assertEquals(1, read(text).size());
  }

  @Example
  void idsStay_whenTheTimeMoves_andDifferBetweenStepsDaysAndCooks() {
    CalendarEntry later = new CalendarEntry("pull", "Off", "Later", -60, 0, true);
    String id = id(file(clock("UTC"), PULL));
    assertEquals(id, id(file(clock("UTC"), later)));
    CalendarEntry other = new CalendarEntry("sear", "Off", "Later", -60, 0, true);
    assertNotEquals(id, id(file(clock("UTC"), other)));
    PlanClock tomorrow = PlanClock.of(SERVICE.plusDays(1), Optional.empty());
    assertNotEquals(id, id(file(tomorrow, PULL)));
    String lamb =
        CalendarFile.text(
            List.of(new CalendarFile.Part("Lamb", clock("UTC"), List.of(PULL))), MADE);
    assertNotEquals(id, id(lamb));
  }

  @Example
  void hostileText_staysText() {
    String evil = "a;b,c\\d\nEND:VEVENT\r\nBEGIN:VEVENT\u0007\u2028é";
    String text = file(clock("UTC"), new CalendarEntry("x", evil, evil, 0, 0, true));
    List<VEvent> events = read(text);
    assertEquals(1, events.size());
    String summary = events.get(0).getSummary().getValue();
    assertEquals("a;b,c\\d\nEND:VEVENT\nBEGIN:VEVENT\u2028é", summary);
  }

  /** Every line ends in CR LF, has at most 75 octets, and unfolds to what was written. */
  @Property(tries = 200)
  void linesAreFolded_andReadBack(@ForAll @StringLength(max = 300) String words) {
    String text = file(clock("UTC"), new CalendarEntry("x", words, words, 0, 60, false));
    assertTrue(text.endsWith("\r\n"));
    String[] lines = text.split("\r\n", -1);
    for (String line : lines) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      assertFalse(line.contains("\n") || line.contains("\r"), line);
    }
    String unfolded = text.replace("\r\n ", "");
    assertTrue(unfolded.contains("SUMMARY:" + CalendarFile.escaped(words) + "\r\n"), text);
    assertEquals(1, text.split("BEGIN:VEVENT", -1).length - 1);
  }
}
