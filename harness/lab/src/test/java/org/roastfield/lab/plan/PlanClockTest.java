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
    assertEquals(0, clock.forward(-1e6, 1e6));
  }

  /** On 29 March 2026 clocks go from 02:00 to 03:00. */
  @Test
  void clocksGoForward_andAnHourIsAnHour() {
    PlanClock clock = in(STOCKHOLM, "2026-03-29T08:00");
    assertEquals("2026-03-29T01:00", text(clock, -6 * 3600));
    assertEquals("2026-03-29T03:00", text(clock, -5 * 3600));
    assertEquals(3600, clock.forward(-6 * 3600, 0));
    assertEquals(-6 * 3600, clock.timeOf(LocalDateTime.parse("2026-03-29T01:00")));
    assertEquals(Optional.of(ZoneOffset.ofHours(1)), clock.offset(-6 * 3600));
    assertEquals(Optional.of(ZoneOffset.ofHours(2)), clock.offset(0));
  }

  /** On 25 October 2026 they go from 03:00 to 02:00. */
  @Test
  void clocksGoBack_andANightHasAnHourMore() {
    PlanClock clock = in(STOCKHOLM, "2026-10-25T08:00");
    assertEquals("2026-10-25T01:00", text(clock, -8 * 3600));
    assertEquals("2026-10-25T02:30", text(clock, -5.5 * 3600));
    assertEquals("2026-10-25T02:30", text(clock, -6.5 * 3600));
    assertEquals(-3600, clock.forward(-8 * 3600, 0));
  }

  @Test
  void zeroThatIsLeftOut_isRefused_andOneThatComesTwiceIsTheFirst() {
    String message =
        String.valueOf(
            assertThrows(IllegalArgumentException.class, () -> in(STOCKHOLM, "2026-03-29T02:30"))
                .getMessage());
    assertTrue(message.contains("must exist in Europe/Stockholm"), message);
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
