package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.lab.plan.PlanClock;

/** Clock times of the plan command: midnight, changes of clocks, times that do not exist. */
class PlanTimesTest extends PlanRuns {

  /** The nearest such time to the file's service at 18:30: next morning rather than that one. */
  @ParameterizedTest
  @CsvSource({
    "19:15, 2026-06-13T19:15+01:00",
    "00:30, 2026-06-14T00:30+01:00",
    "06:29, 2026-06-14T06:29+01:00",
    "06:31, 2026-06-13T06:31+01:00",
    "2026-07-01T12:00, 2026-07-01T12:00+01:00"
  })
  void serveAt_isNearestToWhatTheFileSays(String asked, String served) throws IOException {
    assertEquals(0, plan(cook, "--serve-at", asked).code());
    assertEquals(served, json().get("service").get("table").asText());
  }

  @Test
  void midnight_isMarkedByTheDay() {
    Run run = plan(cook, "--serve-at", "00:30");
    assertTrue(run.out().contains(" on Sunday 14 June 2026"), run.out());
    assertTrue(run.step("on the gentle heat").matches("2\\d:\\d\\d −1 d .*"), run.out());
    assertTrue(run.step("on the table").startsWith("00:30 "), run.out());
  }

  /** On 29 March 2026 clocks in Stockholm go from 02:00 to 03:00: the same hours, another clock. */
  @Test
  void clocksThatGoForward_costNoHourOfCooking() throws IOException {
    plan(cook, "--serve-at", "2026-03-28T05:00", "--zone", "Europe/Stockholm");
    LocalDateTime plain = clock(step("on").at("/clock/q50"));
    Run run = plan(cook, "--serve-at", "2026-03-29T05:00", "--zone", "Europe/Stockholm");
    LocalDateTime changed = clock(step("on").at("/clock/q50"));
    assertEquals(plain.plusDays(1).minusHours(1), changed);
    assertTrue(run.out().contains("Clocks go forward by 60 min, from 02:00 to 03:00"), run.out());
    Run gap = plan(cook, "--serve-at", "2026-03-29T02:30", "--zone", "Europe/Stockholm");
    assertEquals(2, gap.code());
    assertTrue(
        gap.err()
            .startsWith(
                "roastfield: --serve-at must be a time that exists: clocks in Europe/Stockholm go from"
                    + " 02:00 to 03:00"),
        gap.err());
    assertTrue(gap.err().contains("nearest are 2026-03-29T01:59 and 2026-03-29T03:00"), gap.err());
  }

  /** On 25 October 2026 clocks go from 03:00 to 02:00: ranges run forward, and say which 02:10. */
  @Test
  void clocksThatGoBack_leaveNoTimeInTwoWays() throws IOException {
    Run run = plan(cook, "--serve-at", "2026-10-25T04:30", "--zone", "Europe/Stockholm");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("have an A before that"), run.out());
    assertTrue(run.said().contains("20 min after 02:50A it is 02:10B"));
    for (String line : run.lines().subList(0, run.lines().size() - 1)) {
      assertTrue(line.codePointCount(0, line.length()) <= 100, line);
    }
    int twice = 0;
    for (JsonNode one : json().get("steps")) {
      OffsetDateTime low = OffsetDateTime.parse(one.at("/clock/q10").asText());
      OffsetDateTime high = OffsetDateTime.parse(one.at("/clock/q90").asText());
      assertFalse(high.isBefore(low), one.toString());
      boolean before = low.getHour() == 2 && low.getOffset().getTotalSeconds() == 7200;
      twice += before ? 1 : 0;
    }
    assertTrue(twice > 0, json().get("steps").toString());
    assertTrue(run.out().matches("(?s).*02:\\d\\dA.*02:\\d\\dB.*"), run.out());
    String page = Files.readString(Path.of(out, "plan.html"));
    assertTrue(page.matches("(?s).*02:\\d\\dA.*02:\\d\\dB.*"), "page");
    assertEquals(List.of(), complaints());
  }

  @Test
  void serviceThatComesTwice_isTheFirst_andSaysSo() throws IOException {
    Run run = plan(cook, "--serve-at", "2026-10-25T02:30", "--zone", "Europe/Stockholm");
    assertTrue(run.out().contains("on the table at 02:30A on Sunday 25 October 2026"), run.out());
    assertTrue(assumed("the first 02:30 of two").contains("2026-10-25T01:30 by --zone UTC"));
    assertEquals("2026-10-25T02:30+02:00", json().at("/service/table").asText());
  }

  @Test
  void nowThatIsLeftOutOrComesTwice_isRefused() {
    Run gap =
        plan(
            cook,
            "--serve-at",
            "2026-03-29T05:00",
            "--now",
            "2026-03-29T02:15",
            "--zone",
            "Europe/Stockholm");
    assertEquals(2, gap.code());
    assertTrue(gap.err().startsWith("roastfield: --now must be a time that exists"), gap.err());
    Run twice =
        plan(
            cook,
            "--serve-at",
            "2026-10-25T08:00",
            "--now",
            "2026-10-25T02:15",
            "--zone",
            "Europe/Stockholm");
    assertEquals(2, twice.code());
    assertTrue(twice.err().startsWith("roastfield: --now must be a time that comes once"));
  }

  @Test
  void serviceOfTheFileThatIsLeftOut_isTheFiles() throws IOException {
    String gap =
        published()
            .replaceFirst("starts: \\S+", "starts: 2026-03-28T22:00")
            .replace("{at: 2026-06-13T18:20}", "{after: 20 min}")
            .replace("serves: 2026-06-13T18:30", "serves: 2026-03-29T02:30")
            .replace("  latest: 2026-06-13T18:45\n", "");
    Run run = plan(write("gap.yaml", gap), "--zone", "Europe/Stockholm");
    assertEquals(2, run.code());
    assertTrue(
        run.err()
            .startsWith(
                "roastfield: gap.yaml cannot be planned: serves must be a time that exists"),
        run.err());
  }

  /** Between carving and midnight a plan of today is late, a file of last month is not. */
  @Test
  void carvingThatHasPassedToday_isLate_byTheClockOfTheMachine() {
    PlanClock clock =
        PlanClock.of(LocalDateTime.parse("2026-06-13T18:20"), Optional.of(ZoneOffset.UTC));
    Instant carving = Instant.parse("2026-06-13T18:20:00Z");
    assertEquals(300, now(clock, carving.plusSeconds(300)).getAsDouble(), 1e-6);
    assertEquals(-7200, now(clock, carving.minusSeconds(7200)).getAsDouble(), 1e-6);
    assertTrue(now(clock, carving.plusSeconds(30 * 86_400)).isEmpty());
  }

  private static OptionalDouble now(PlanClock clock, Instant machine) {
    return new PlanArguments().now(clock, Clock.fixed(machine, ZoneOffset.UTC));
  }

  @Test
  void nowAfterTheCarving_isToldAsLate() throws IOException {
    Run run = plan(cook, "--now", "2026-06-13T18:45");
    assertEquals(0, run.code(), run.err());
    String said = run.said();
    assertTrue(said.contains("TOO LATE: for 18:30 the fire should have been lit at "), said);
    assertTrue(said.contains("; by then not even the fire is ready."), said);
    LocalDateTime lit = clock(step("light").at("/clock/q50"));
    assertFalse(lit.isBefore(LocalDateTime.parse("2026-06-13T18:45")), lit.toString());
  }
}
