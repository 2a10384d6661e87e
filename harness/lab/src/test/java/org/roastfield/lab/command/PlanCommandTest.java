package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.lab.Published;

/** The plan command: its timetable, its files, and what it says of times that do not fit. */
class PlanCommandTest {

  private static final Path SCHEMA = Path.of("../../datasets/schema/plan.schema.json");

  /** Draws enough for what is asserted, and few enough for a test. */
  private static final String FEW = "60";

  @TempDir Path folder = Path.of("");

  private String cook = "";
  private String out = "";

  /** What the command printed and its exit code. */
  record Run(int code, String out, String err) {

    List<String> lines() {
      return out.lines().toList();
    }

    /** The line of a step. */
    String step(String words) {
      return lines().stream()
          .filter(line -> line.contains("  " + words))
          .findFirst()
          .orElseThrow(() -> new AssertionError(out));
    }
  }

  @BeforeEach
  void files() throws IOException {
    cook = write("cook.yaml", published());
    out = folder.resolve("out").toString();
  }

  private static String published() {
    return new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
  }

  private String write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private Run plan(String file, String... options) {
    List<String> all = new ArrayList<>(List.of("plan", file, "--out", out));
    List<String> more = List.of(options);
    all.addAll(more.contains("--members") ? List.of() : List.of("--members", FEW));
    all.addAll(more);
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(printed, true))
            .setErr(new PrintWriter(complained, true))
            .execute(all.toArray(new String[0]));
    return new Run(code, printed.toString(), complained.toString());
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(Files.readString(Path.of(out, "plan.json")));
  }

  private JsonNode step(String id) throws IOException {
    for (JsonNode step : json().get("steps")) {
      if (step.get("id").asText().equals(id)) {
        return step;
      }
    }
    throw new AssertionError("no step " + id);
  }

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

  private List<?> complaints() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(new ObjectMapper().readTree(SCHEMA.toFile()))
        .validate(json());
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
    LocalDateTime clock = LocalDateTime.parse(step("on").get("clock").get("q50").asText());
    assertEquals(clock.atZone(java.time.ZoneId.of("Europe/Lisbon")).toInstant(), on);
  }

  /** The nearest such time to the file's service at 18:30: next morning rather than that one. */
  @ParameterizedTest
  @CsvSource({
    "19:15, 2026-06-13T19:15",
    "00:30, 2026-06-14T00:30",
    "06:29, 2026-06-14T06:29",
    "06:31, 2026-06-13T06:31",
    "2026-07-01T12:00, 2026-07-01T12:00"
  })
  void serveAt_isNearestToWhatTheFileSays(String asked, String served) throws IOException {
    assertEquals(0, plan(cook, "--serve-at", asked).code());
    assertEquals(served, json().get("service").get("table").asText());
  }

  @Test
  void laterService_movesEverythingAlong() throws IOException {
    plan(cook);
    LocalDateTime before = LocalDateTime.parse(step("on").get("clock").get("q50").asText());
    plan(cook, "--serve-at", "19:15");
    LocalDateTime after = LocalDateTime.parse(step("on").get("clock").get("q50").asText());
    assertEquals(before.plusMinutes(45), after);
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
    LocalDateTime plain = LocalDateTime.parse(step("on").get("clock").get("q50").asText());
    Run run = plan(cook, "--serve-at", "2026-03-29T05:00", "--zone", "Europe/Stockholm");
    LocalDateTime changed = LocalDateTime.parse(step("on").get("clock").get("q50").asText());
    assertEquals(plain.plusDays(1).minusHours(1), changed);
    assertTrue(run.out().contains("Clocks go forward by 60 min in this plan"), run.out());
    Run gap = plan(cook, "--serve-at", "2026-03-29T02:30", "--zone", "Europe/Stockholm");
    assertEquals(2, gap.code());
    assertTrue(gap.err().contains("clocks go forward over it"), gap.err());
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
    LocalDateTime table = LocalDateTime.parse(json().get("service").get("table").asText());
    LocalDateTime asked = LocalDateTime.parse(late.get("asked").asText());
    assertEquals(
        late.get("later_s").asLong(), java.time.Duration.between(asked, table).toSeconds());
    assertTrue(late.get("chance_all_the_same").asDouble() < 0.5, late.toString());
  }

  @Test
  void farTooLate_isPlannedToo_withoutAChanceForWhatWasAsked() throws IOException {
    Run run = plan(cook, "--now", "2026-06-13T19:00");
    assertEquals(0, run.code(), run.err());
    String unwrapped = run.out().replaceAll("\\s+", " ");
    assertTrue(unwrapped.contains("not even the fire is ready"), run.out());
    assertFalse(json().get("too_late").has("chance_all_the_same"));
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
            .matches("(?s).*Not knowing it widens the pull \\(10 to 90 %\\) from \\d+ min to.*"));
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
        .replace("wishes: {scale: trade, doneness: medium, crust: brown}", "wishes: {crust: brown}")
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
          wishes: {scale: trade, doneness: medium, crust: brown} | wishes: {crust: brown} \
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

  /** Nine of ten such pits are warm when the cut goes on, whatever lead is usual. */
  @Test
  void statedPit_saysWhenToLight() throws IOException {
    String file = write("pit.yaml", withPit("{like: ceramic, outside: 5 °C}"));
    Run run = plan(file);
    assertEquals(0, run.code(), run.err());
    double lead =
        step("on").at("/time_s/q50").asDouble() - step("light").at("/time_s/q50").asDouble();
    JsonNode fire = json().get("fire");
    double high = fire.at("/before_on_s/q90").asDouble();
    assertTrue(lead >= high && lead < high + 60, lead + " for " + fire);
    assertTrue(fire.at("/before_on_s/q10").asDouble() < fire.at("/before_on_s/q50").asDouble());
    assertTrue(fire.at("/charcoal_kg/q10").asDouble() > 0);
    assertEquals(List.of(), complaints());
    assertTrue(
        Files.readString(Path.of(out, "plan.html")).contains("a pit of ceramic takes"), "page");
  }

  @Test
  void statedLead_isKeptBesideAPit() throws IOException {
    String file = write("pit.yaml", withPit("{like: thin-steel}\n  fire-ready: 80 min"));
    assertEquals(0, plan(file).code());
    double lead =
        step("on").at("/time_s/q50").asDouble() - step("light").at("/time_s/q50").asDouble();
    assertEquals(4800, lead, 1e-6);
    assertEquals("thin-steel", json().at("/fire/pit").asText());
  }

  /** Two cuts for one table: one fire, one timetable, one calendar, a plan of each. */
  @Test
  void cutBeside_sharesTheFire() throws IOException {
    String other = write("other.yaml", hotter(published(), "Second loin"));
    Run run = plan(cook, "--beside", other);
    assertEquals(0, run.code(), run.err());
    assertEquals(1, run.lines().stream().filter(line -> line.contains("light the fire")).count());
    assertEquals(2, run.lines().stream().filter(line -> line.contains("rested enough")).count());
    assertTrue(run.out().replaceAll("\\s+", " ").contains("one cooker has one air"), run.out());
    assertTrue(run.out().contains("two sears: "), run.out());
    assertEquals(List.of(), complaints());
    assertEquals("plan-2.json", json().at("/beside/cooks/0/plan").asText());
    assertTrue(Files.exists(Path.of(out, "plan-2.html")));
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains("the fire is lit once"));
    ICalendar calendar = Biweekly.parse(Files.readString(Path.of(out, "plan.ics"))).first();
    assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty());
    long ids =
        calendar.getEvents().stream().map(event -> event.getUid().getValue()).distinct().count();
    assertEquals(2 * json().get("steps").size() - 1, ids);
    assertEquals(ids, calendar.getEvents().size());
  }

  /** Its own plan is the same as alone. */
  @Test
  void cutBeside_changesNothingOfTheFirst() throws IOException {
    plan(cook);
    JsonNode alone = json();
    plan(cook, "--beside", write("other.yaml", hotter(published(), "Second loin")));
    assertEquals(alone.get("steps"), json().get("steps"));
    assertEquals(alone.get("chances"), json().get("chances"));
  }

  @Test
  void twoCutsOfOneName_areRefused() {
    Run run = plan(cook, "--beside", cook);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("cuts on one fire must have different names"), run.err());
  }

  private static String hotter(String file, String name) {
    return file.replace("name: Boathouse pork loin", "name: " + name)
        .replace("air: 110 °C, walls: 114 °C", "air: 120 °C, walls: 124 °C");
  }

  /** In a box the cut cools less than under foil, and carryover goes on. */
  @Test
  void keeping_isComparedInABoxAndInWarmAir() throws IOException {
    plan(cook);
    JsonNode keeping = json().get("keeping");
    assertEquals(3, keeping.size());
    double own = keeping.at("/0/core_carved_degC").asDouble();
    assertTrue(keeping.at("/1/core_carved_degC").asDouble() > own, keeping.toString());
    assertTrue(keeping.at("/2/core_carved_degC").asDouble() > own, keeping.toString());
    for (JsonNode one : keeping) {
      assertTrue(one.get("core_highest_degC").asDouble() >= one.get("core_carved_degC").asDouble());
    }
  }

  /** Of two sears as long, that over hotter metal browns more and is pulled sooner. */
  @Test
  void sears_areTriedInOtherHeat() throws IOException {
    plan(cook);
    List<JsonNode> heats = new ArrayList<>();
    double length = 0;
    for (JsonNode sear : json().get("sears")) {
      if (sear.get("of_the_file").asBoolean()) {
        length = sear.get("length_s").asDouble();
        heats.add(sear);
      } else if (sear.get("hotter_K").asDouble() != 0
          && sear.get("length_s").asDouble() == length) {
        heats.add(sear);
      }
    }
    assertEquals(4, heats.size());
    heats.sort(Comparator.comparingDouble(sear -> sear.get("hotter_K").asDouble()));
    for (int i = 1; i < heats.size(); i++) {
      JsonNode cooler = heats.get(i - 1);
      JsonNode hotter = heats.get(i);
      assertTrue(hotter.get("browning").asDouble() > cooler.get("browning").asDouble());
      assertTrue(
          hotter.get("core_at_pull_degC").asDouble() < cooler.get("core_at_pull_degC").asDouble());
    }
  }

  private static String lamb() throws IOException {
    return Files.readString(Path.of("../../datasets/cooks/boathouse-lamb-leg/cook.yaml"));
  }

  /** A taper is planned by its thick end; its thinner thirds get hotter, each with its own wish. */
  @Test
  void taper_isPlannedByItsThirds() throws IOException {
    Run run = plan(write("lamb.yaml", lamb()));
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), complaints());
    JsonNode middle = json().at("/stations/0");
    JsonNode thin = json().at("/stations/1");
    assertEquals("middle", middle.get("name").asText());
    assertEquals("thin end", thin.get("name").asText());
    double thick = json().at("/final_core_degC/q50").asDouble();
    double halfway = middle.at("/final_core_degC/q50").asDouble();
    assertTrue(thick < halfway, json().toString());
    assertTrue(halfway < thin.at("/final_core_degC/q50").asDouble(), json().toString());
    assertTrue(middle.get("wish_high_degC").asDouble() <= thin.get("wish_low_degC").asDouble());
    assertTrue(run.out().contains("the display is read in the thick end"), run.out());
  }

  /** Its thin end is to be well done: towards the heat with it. */
  @Test
  void taper_liesAsItsWishesNeed() throws IOException {
    plan(write("lamb.yaml", lamb() + "\nplan: {across: 20 K}\n"));
    assertTrue(statement("how it lies").startsWith("with its thin end towards the heat"));
    String pale = lamb().replaceFirst("doneness: \\{.*", "doneness: medium-rare");
    plan(write("even.yaml", pale + "\nplan: {across: 20 K}\n"));
    assertTrue(statement("how it lies").startsWith("with its thick end towards the heat"));
  }

  private String statement(String subject) throws IOException {
    for (JsonNode one : json().get("statements")) {
      if (one.get("subject").asText().equals(subject)) {
        return one.get("text").asText();
      }
    }
    throw new AssertionError("no statement of " + subject);
  }

  private static String withPit(String pit) {
    return published().replaceFirst("(?m)^plan: .*$", "plan:\n  pit: " + pit);
  }
}
