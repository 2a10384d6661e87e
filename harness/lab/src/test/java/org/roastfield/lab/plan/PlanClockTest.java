package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanClockTest {

  private static final ZoneId STOCKHOLM = ZoneId.of("Europe/Stockholm");

  private static PlanClock in(ZoneId zone, String zero) {
    return PlanClock.of(LocalDateTime.parse(zero), Optional.of(zone));
  }

  private static String text(PlanClock clock, double time) {
    return clock.at(time).toString();
  }

  @Test
  void withoutZone_hoursAreCounted_acrossMidnightToo() {
    PlanClock clock = PlanClock.of(LocalDateTime.parse("2026-06-14T00:30"), Optional.empty());
    assertEquals("2026-06-13T22:30", text(clock, -7200));
    assertEquals(Optional.empty(), clock.instant(0));
    assertEquals(-7200, clock.timeOf(LocalDateTime.parse("2026-06-13T22:30")));
    assertEquals(Optional.empty(), clock.change(-1e6, 1e6));
    assertEquals("2026-06-14T00:30", clock.iso(0));
  }

  /** On 29 March 2026 clocks go from 02:00 to 03:00. */
  @Test
  void clocksGoForward_andAnHourIsAnHour() {
    PlanClock clock = in(STOCKHOLM, "2026-03-29T08:00");
    assertEquals("2026-03-29T01:00", text(clock, -6 * 3600));
    assertEquals("2026-03-29T03:00", text(clock, -5 * 3600));
    assertEquals(-6 * 3600, clock.timeOf(LocalDateTime.parse("2026-03-29T01:00")));
    assertEquals("2026-03-29T01:00+01:00", clock.iso(-6 * 3600));
    assertEquals("2026-03-29T03:00+02:00", clock.iso(-5 * 3600));
    assertTrue(clock.change(-6 * 3600, 0).orElseThrow().isGap());
    assertEquals(Optional.empty(), clock.change(-4 * 3600, 0));
  }

  /** On 25 October 2026 they go from 03:00 to 02:00. */
  @Test
  void clocksGoBack_andANightHasAnHourMore() {
    PlanClock clock = in(STOCKHOLM, "2026-10-25T08:00");
    assertEquals("2026-10-25T01:00", text(clock, -8 * 3600));
    assertEquals("2026-10-25T02:30", text(clock, -5.5 * 3600));
    assertEquals("2026-10-25T02:30", text(clock, -6.5 * 3600));
    assertTrue(clock.change(-8 * 3600, 0).orElseThrow().isOverlap());
    assertEquals(Optional.empty(), clock.change(-4 * 3600, 0));
    assertEquals(Optional.empty(), clock.change(-10 * 3600, -9 * 3600));
  }

  /** Every time that comes twice says which it is, and so does one that rounds over the change. */
  @Test
  void timesThatComeTwice_areToldApart() {
    PlanClock clock = in(STOCKHOLM, "2026-10-25T08:00");
    assertEquals("01:59", clock.text(-7 * 3600 - 60));
    assertEquals("02:00A", clock.text(-7 * 3600));
    assertEquals("02:50A", clock.text(-7 * 3600 + 3000));
    assertEquals("02:10B", clock.text(-6 * 3600 + 600));
    assertEquals("02:00B", clock.text(-6 * 3600 - 20));
    assertEquals("02:00B", clock.text(-6 * 3600 + 20));
    assertEquals("02:59A", clock.text(-6 * 3600 - 40));
    assertEquals("03:00", clock.text(-5 * 3600 - 20));
    assertEquals("2026-10-25T02:00+01:00", clock.isoMinute(-6 * 3600 - 20));
    assertEquals("2026-10-25T02:59:20+02:00", clock.iso(-6 * 3600 - 40));
  }

  /** Of two clocks with zones the instants count; of one that has none, what they show. */
  @Test
  void zeroOfAnotherClock_isTimed() {
    PlanClock stockholm = in(STOCKHOLM, "2026-06-13T18:30");
    PlanClock lisbon = in(ZoneId.of("Europe/Lisbon"), "2026-06-13T18:30");
    PlanClock plain = PlanClock.of(LocalDateTime.parse("2026-06-13T18:40"), Optional.empty());
    assertEquals(3600, stockholm.timeOf(lisbon));
    assertEquals(600, stockholm.timeOf(plain));
  }

  @Test
  void zeroThatIsLeftOut_isRefused_andOneThatComesTwiceIsTheFirst() {
    String message =
        String.valueOf(
            assertThrows(IllegalArgumentException.class, () -> in(STOCKHOLM, "2026-03-29T02:30"))
                .getMessage());
    assertEquals(
        "zero must be a time that exists: clocks in Europe/Stockholm go from 02:00 to 03:00 over"
            + " 2026-03-29T02:30; the nearest are 2026-03-29T01:59 and 2026-03-29T03:00",
        message);
    assertEquals(
        Optional.of(Instant.parse("2026-10-25T00:30:00Z")),
        in(STOCKHOLM, "2026-10-25T02:30").instant(0));
  }

  @Test
  void instant_isTimedByThePlansZone_orElseByTheGivenOne() {
    Instant noon = Instant.parse("2026-06-13T12:00:00Z");
    assertEquals(-4.5 * 3600, in(STOCKHOLM, "2026-06-13T18:30").timeOf(noon, ZoneOffset.UTC));
    PlanClock plain = PlanClock.of(LocalDateTime.parse("2026-06-13T18:30"), Optional.empty());
    assertEquals(-6.5 * 3600, plain.timeOf(noon, ZoneOffset.UTC));
  }
}
