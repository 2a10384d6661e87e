package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan command: its timetable, its files, and what it says of times that do not fit. */
class PlanCommandTest extends PlanRuns {

  @Test
  void plan_fitsOneScreen_andWritesItsFiles() throws IOException {
    Run run = plan(cook);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out()
            .startsWith(
                "Boathouse pork loin, on the table at 18:30 on Saturday 13 June 2026,"
                    + " Europe/Lisbon (numbers made up)\n"),
        run.out());
    assertTrue(run.lines().size() <= 40, run.out());
    for (String line : run.lines().subList(0, run.lines().size() - 1)) {
      assertTrue(line.codePointCount(0, line.length()) <= 100, line);
    }
    for (String step :
        List.of("salt all round", "light the fire", "pat dry", "on the gentle heat", "carve")) {
      assertFalse(run.step(step).isBlank());
    }
    assertTrue(run.out().contains("check with a thermometer you trust"), run.out());
    assertTrue(run.out().contains("carbon monoxide"), run.out());
    assertTrue(run.out().contains(" BELOW the"), run.out());
    try (Stream<Path> files = Files.list(Path.of(out))) {
      assertEquals(
          List.of("manifest.json", "plan.html", "plan.ics", "plan.json"),
          files.map(file -> String.valueOf(file.getFileName())).sorted().toList());
    }
  }

  @Test
  void json_isOfItsSchema_andKnowsNoOtherKeys() throws IOException {
    plan(cook);
    assertEquals(List.of(), complaints());
    plan(cook, "--now", "2026-06-13T17:00");
    assertTrue(json().has("too_late"));
    assertEquals(List.of(), complaints());
    plan(write("low.yaml", published().replace("at-latest: 6 h", "at-latest: 50 min")));
    assertFalse(json().get("not_met").isEmpty());
    assertEquals(List.of(), complaints());
  }

  @Test
  void sameSeed_givesTheSameFiles_anotherSeedOthers() throws IOException {
    plan(cook, "--seed", "7");
    byte[] first = Files.readAllBytes(Path.of(out, "plan.json"));
    byte[] page = Files.readAllBytes(Path.of(out, "plan.html"));
    plan(cook, "--seed", "7");
    assertArrayEquals(first, Files.readAllBytes(Path.of(out, "plan.json")));
    assertArrayEquals(page, Files.readAllBytes(Path.of(out, "plan.html")));
    plan(cook, "--seed", "8");
    assertFalse(java.util.Arrays.equals(first, Files.readAllBytes(Path.of(out, "plan.json"))));
  }

  @Test
  void calendar_isReadByAnother_atTheTimesOfTheTimetable() throws IOException {
    plan(cook);
    String text = Files.readString(Path.of(out, "plan.ics"));
    ICalendar calendar = Biweekly.parse(text).first();
    assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty(), text);
    assertEquals(json().get("steps").size(), calendar.getEvents().size());
    Instant on =
        calendar.getEvents().stream()
            .filter(event -> event.getSummary().getValue().endsWith(": on the gentle heat"))
            .map(event -> event.getDateStart().getValue().toInstant())
            .findFirst()
            .orElseThrow();
    LocalDateTime clock = clock(step("on").at("/clock/q50"));
    assertEquals(clock.atZone(java.time.ZoneId.of("Europe/Lisbon")).toInstant(), on);
  }

  @Test
  void laterService_movesEverythingAlong() throws IOException {
    plan(cook);
    LocalDateTime before = clock(step("on").at("/clock/q50"));
    plan(cook, "--serve-at", "19:15");
    LocalDateTime after = clock(step("on").at("/clock/q50"));
    assertEquals(before.plusMinutes(45), after);
  }

  @Test
  void tooLate_saysWhatItCosts_andPlansTheNearestService() throws IOException {
    Run run = plan(cook, "--now", "2026-06-13T16:10");
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out().contains("\nTOO LATE: for 18:30 the fire should have been lit"), run.out());
    assertTrue(run.step("light the fire").matches("16:1[01] .*"), run.out());
    assertTrue(run.step("now: salt all round").startsWith("16:10 "), run.out());
    JsonNode late = json().get("too_late");
    LocalDateTime table = clock(json().at("/service/table"));
    LocalDateTime asked = clock(late.get("asked"));
    assertEquals(
        late.get("later_s").asLong(), java.time.Duration.between(asked, table).toSeconds());
    assertTrue(late.get("chance_all_the_same").asDouble() < 0.5, late.toString());
  }

  @Test
  void farTooLate_isPlannedToo_withoutAChanceForWhatWasAsked() throws IOException {
    Run run = plan(cook, "--now", "2026-06-13T19:00");
    assertEquals(0, run.code(), run.err());
    String unwrapped = run.said();
    assertTrue(unwrapped.contains("not even the fire is ready"), run.out());
    assertFalse(json().get("too_late").has("chance_all_the_same"));
  }

  /** Minutes that the plan had to spare are no reason to serve later. */
  @Test
  void aLittleLate_keepsItsService() throws IOException {
    plan(cook);
    LocalDateTime lit = clock(step("light").at("/clock/q50"));
    String table = json().get("service").get("table").asText();
    LocalDateTime now = lit.plusMinutes(4).withSecond(0).withNano(0);
    plan(cook, "--now", now.toLocalTime().toString());
    assertFalse(json().has("too_late"), json().toString());
    assertEquals(table, json().get("service").get("table").asText());
    assertFalse(clock(step("light").at("/clock/q50")).isBefore(now.minusMinutes(1)));
  }

  /** A minimum above the wish is met by a hotter reading, not by waiting for hours. */
  @Test
  void demandedMinimum_isMet_whereItCanBe() throws IOException {
    String strict =
        published().replace("  people: ", "  minimum: {core: 62.8 °C, chance: 80 %}\n  people: ");
    plan(write("strict.yaml", strict));
    assertTrue(json().at("/final_core_degC/q10").asDouble() > 61, json().toString());
    assertTrue(json().at("/final_core_degC/q50").asDouble() < 68, json().toString());
    for (JsonNode one : json().get("not_met")) {
      assertFalse(one.get("reason").asText().startsWith("MINIMUM"), one.toString());
      assertFalse(one.get("reason").asText().startsWith("HEAT"), one.toString());
    }
    assertTrue(json().at("/kept_warm_s/q50").asDouble() < 3 * 3600, json().toString());
  }

  @Test
  void timeEnough_isNotLate() throws IOException {
    plan(cook, "--now", "2026-06-12T12:00");
    assertFalse(json().has("too_late"));
  }

  @Test
  void impossibleWish_getsAReasonAndTheNearestPlan() throws IOException {
    String low = published().replace("at-latest: 6 h", "at-latest: 50 min");
    Run run = plan(write("low.yaml", low));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("NOT MET: Too little heat: "), run.out());
    assertTrue(run.out().contains("This plan is the nearest possible."), run.out());
    assertEquals("HEAT_TOO_LOW", json().get("not_met").get(0).get("reason").asText());
  }

  @Test
  void withoutAProfile_itSaysWhatThatCosts() {
    assertTrue(plan(cook).out().contains("cooker: no profile, so "));
    assertTrue(
        plan(cook)
            .out()
            .replace("\n  ", " ")
            .contains("Not knowing it widens 10 to 90 % of the pull "));
  }

  @Test
  void hotterWish_isALaterPull() throws IOException {
    plan(write("a.yaml", wished("57 °C")));
    double cooler = json().get("pull").get("reading_degC").asDouble();
    plan(write("b.yaml", wished("61 °C")));
    assertTrue(json().get("pull").get("reading_degC").asDouble() > cooler + 2);
  }

  private static String wished(String core) {
    return published()
        .replace(
            "wishes: {scale: trade, doneness: medium, crust: golden}", "wishes: {crust: brown}")
        .replace("  people: 10\n", "  core: " + core + "\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --serve-at | half six          | --serve-at must be a date and a time
          --serve-at | 25:00             | --serve-at must be a time such as 18:30
          --now      | noon              | --now must be a date and a time
          --zone     | Europe/Atlantis   | Invalid value for option '--zone'
          --members  | 19                | --members must be from 20 to 100000, was 19
          --probe    | rib               | probe must be core or one of cook.yaml (halfway)
          """)
  void wrongOption_isTwo(String option, String value, String message) {
    Run run = plan(cook, option, value);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("roastfield: " + message), run.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wishes: {scale: trade, doneness: medium, crust: golden} | wishes: {crust: brown} \
          | no wish for the final core
          end: {core: 52 °C, at-latest: 6 h} | end: {after: 2 h} | no stage of gentle heat ends by a
          chamber: {air: 22 °C, heat-transfer | chamber: {air: 62 °C, heat-transfer | no rest follows
          """)
  void fileThatCannotBePlanned_isTwo_withAdvice(String from, String to, String message)
      throws IOException {
    String text = published();
    assertTrue(text.contains(from), from);
    Run run = plan(write("cook.yaml", text.replace(from, to)));
    assertEquals(2, run.code(), run.out());
    assertTrue(
        run.err().startsWith("roastfield: cook.yaml cannot be planned: " + message), run.err());
  }

  @Test
  void frozenCut_isRefusedWithAdvice() throws IOException {
    String frozen = published().replace("start-temperature: 8 °C", "start-temperature: -4 °C");
    Run run = plan(write("cook.yaml", frozen));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("thaw"), run.err());
  }
}
