package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;

/** Windows of service over a change of clocks. */
class ServiceTimesTest {

  private static CookFile file(String serves, String earliest, String latest) {
    String text =
        new String(Published.porkLoinBytes(), StandardCharsets.UTF_8)
            .replaceFirst("starts: \\S+", "starts: " + serves.substring(0, 10) + "T00:00")
            .replace("serves: 2026-06-13T18:30", "serves: " + serves)
            .replace("{at: 2026-06-13T18:20}", "{after: 20 min}")
            .replace("  zone: Europe/Lisbon\n", "")
            .replace("latest: 2026-06-13T18:45", "latest: " + latest + "\n  earliest: " + earliest);
    return CookFileReader.parse("cook.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  private static ServiceTimes times(CookFile file, String... zone) {
    return ServiceTimes.of(
        file, Optional.empty(), java.util.Arrays.stream(zone).findFirst().map(ZoneId::of));
  }

  /** On 25 October 2026 clocks in Stockholm go from 03:00 to 02:00. */
  @Test
  void window_isCountedInHoursThatPass() {
    CookFile back = file("2026-10-25T03:30", "2026-10-25T01:50", "2026-10-25T03:45");
    assertEquals(6000, times(back).early());
    assertEquals(9600, times(back, "Europe/Stockholm").early());
    assertEquals(900, times(back, "Europe/Stockholm").late());
    CookFile forward = file("2026-03-29T01:50", "2026-03-29T01:40", "2026-03-29T03:05");
    assertEquals(4500, times(forward).late());
    assertEquals(900, times(forward, "Europe/Stockholm").late());
  }

  @Test
  void endOfAWindowThatIsLeftOut_isRefusedByItsKey() {
    CookFile gap = file("2026-03-29T01:50", "2026-03-29T01:40", "2026-03-29T02:05");
    String message =
        String.valueOf(
            assertThrows(UnplannableException.class, () -> times(gap, "Europe/Stockholm"))
                .getMessage());
    assertTrue(message.startsWith("latest must be a time that exists"), message);
    assertEquals(900, times(gap).late());
  }

  private static double leastRest(String wishes) {
    CookFile file = file("2026-06-13T18:30", "2026-06-13T18:20", "2026-06-13T18:45" + wishes);
    return times(file).service(file, Double.NEGATIVE_INFINITY).leastRest();
  }

  /** A stage of rest that lasts a stated time is the least rest, unless the plan says otherwise. */
  @Test
  void stageOfRest_isTheLeastRest_whereItsTimeIsStated() {
    assertEquals(1200, leastRest(""));
    assertEquals(600, leastRest("\n  rest-at-least: 10 min"));
    CookFile byClock = CookFileReader.parse("cook.yaml", Published.porkLoinBytes());
    ServiceTimes times = times(byClock);
    assertEquals(900, times.service(byClock, Double.NEGATIVE_INFINITY).leastRest());
  }

  @Test
  void stageOfRestThatIsLongerThanItMayBe_isRefused() {
    CookFile file =
        CookFileReader.parse(
            "cook.yaml",
            new String(Published.porkLoinBytes(), StandardCharsets.UTF_8)
                .replace("{at: 2026-06-13T18:20}", "{after: 95 min}")
                .getBytes(StandardCharsets.UTF_8));
    String message =
        String.valueOf(
            assertThrows(
                    UnplannableException.class,
                    () -> times(file).service(file, Double.NEGATIVE_INFINITY))
                .getMessage());
    assertEquals(
        "plan.rest-at-most must be no shorter than its stage of rest, 95 min, was 90 min: change"
            + " one of them, or say plan: rest-at-least",
        message);
  }
}
