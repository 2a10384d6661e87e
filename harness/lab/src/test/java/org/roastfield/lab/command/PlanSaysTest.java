package org.roastfield.lab.command;

import static java.time.temporal.ChronoUnit.MINUTES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the plan command tells beside its times. */
class PlanSaysTest extends PlanRuns {

  /**
   * What the file does not say is told, on the screen as far as it holds, in the files all of it.
   */
  @Test
  void whatIsAssumed_isTold() throws IOException {
    Run run = plan(cook);
    String screen = run.said();
    assertTrue(screen.contains("assumed: carving 10 min, rest 15 min, on time in 90 %"), screen);
    String page = Files.readString(Path.of(out, "plan.html"));
    List<String> subjects = json().get("assumed").findValuesAsText("subject");
    for (String subject : subjects) {
      assertTrue(page.contains(subject.replace("'", "&#39;")) || page.contains(subject), subject);
    }
    assertTrue(
        subjects.containsAll(
            List.of(
                "carving 10 min",
                "rest 15 min",
                "on time in 90 %",
                "lit 45 min ahead",
                "out of the fridge 30 min",
                "patted dry 10 min",
                "sear's heat 15 min",
                "5 % trim")),
        subjects.toString());
    String said =
        published()
            .replace(
                "  people: 10",
                "  carving: 12 min\n  rest-at-least: 20 min\n  fire-ready: 50 min\n  people: 10");
    plan(write("said.yaml", said));
    for (String subject : json().get("assumed").findValuesAsText("subject")) {
      assertFalse(subject.matches("(carving|rest|lit) .*"), subject);
    }
  }

  /** Somebody has to get the metal hot before the cut comes to it. */
  @Test
  void searOverMetal_hasItsHeatReady() throws IOException {
    Run run = plan(cook);
    double ready = step("sear-heat").at("/time_s/q50").asDouble();
    assertEquals(step("sear").at("/time_s/q10").asDouble() - 900, ready, 1e-6);
    assertFalse(run.step("get the sear's heat ready").isBlank());
  }

  /** Wished with more chance than times allow, everything would have to come earlier. */
  @Test
  void slackBelowZero_isExplained() throws IOException {
    String sure =
        published()
            .replace("  latest: 2026-06-13T18:45\n", "")
            .replace("  rest-at-most: 90 min", "  rest-at-most: 16 min\n  on-time: 90 %");
    Run run = plan(write("sure.yaml", sure));
    double least = 0;
    for (JsonNode one : json().get("steps")) {
      least = Math.min(least, one.path("slack_s").asDouble(0));
    }
    assertTrue(least < -30, json().get("steps").toString());
    assertTrue(run.out().contains("A slack below 0 means: "), run.out());
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains("A slack below 0 means: "));
    assertFalse(plan(cook).out().contains("A slack below 0"));
  }

  private String thick(int millimetres) throws IOException {
    return write(
        "thick.yaml",
        published()
            .replaceAll("diameter: .* mm", "diameter: " + millimetres + " mm")
            .replaceAll("(?m)^ *weight: .*\\n", ""));
  }

  /** Of a cook that does not come to its end nothing is held against what is published: said. */
  @Test
  void cookInTheMiddleWithoutAnEnd_keepsItsCautions_andSaysWhatIsNotHeldAgainstThem()
      throws IOException {
    Run run = plan(thick(150));
    String screen = run.said();
    assertTrue(screen.contains("Published minima are NOT held against the expected cook"), screen);
    List<String> cautions = json().get("cautions").findValuesAsText("subject");
    assertTrue(
        cautions.containsAll(
            List.of("Estimates", "Published minimum", "Charcoal", "Hot grate", "Opened meat")),
        cautions.toString());
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains("carbon monoxide"));
    assertFalse(plan(cook).out().contains("NOT held against"));
  }

  /** Being in time may cost the core: told as a wish that is not met. */
  @Test
  void coreThatMissesItsWishMoreOftenThanNot_isNotMet() throws IOException {
    Run run = plan(thick(185));
    List<String> reasons = json().get("not_met").findValuesAsText("reason");
    assertTrue(reasons.contains("CORE_NOT_AS_WISHED"), reasons.toString());
    assertTrue(run.out().contains("NOT MET: A core too cool: it falls short in "), run.out());
    for (String subject : List.of("final core: ", "on time: ", "fire: ", "off the heat: ")) {
      assertTrue(run.lines().stream().anyMatch(line -> line.startsWith(subject)), run.out());
    }
  }

  /** The file's rest of a stated time is the plan's, and told as the file's. */
  @Test
  void restOfTheFile_isTheLeastRest_andTold() throws IOException {
    String lamb = Files.readString(Path.of("../../datasets/cooks/boathouse-lamb-leg/cook.yaml"));
    assertTrue(lamb.contains("end: {after: 35 min}"), lamb);
    Run run = plan(write("lamb.yaml", lamb));
    assertTrue(assumed("the file's rest of 35 min").startsWith("as long as its stage of rest"));
    assertTrue(run.said().contains("the file's rest of 35 min"), run.out());
    double off = step("pull").at("/time_s/q90").asDouble();
    assertTrue(step("ready").at("/time_s/q90").asDouble() - off >= 2100 - 1, json().toString());
  }

  /** The look's sum is done once by numbers of the plan, and comes to what its rule says. */
  @Test
  void look_hasAnExample_thatIsItsRule() throws IOException {
    Run run = plan(cook);
    Matcher said =
        Pattern.compile(
                "Say it showed ([\\d.]+) °C at (\\S+) and shows ([\\d.]+) °C at (\\S+): that took"
                    + " (\\d+) min, (\\d+) times that later is (\\S+), and the fire is kept ([^,]*)"
                    + "(?:, and it comes off ([\\d.]+) K (higher|lower) than is told below)?\\.$")
            .matcher(step("check").get("when_it_slips").asText());
    assertTrue(said.find(), step("check").toString());
    assertEquals(5, Double.parseDouble(said.group(3)) - Double.parseDouble(said.group(1)), 1e-9);
    LocalTime there = LocalTime.parse(said.group(4));
    int took = Integer.parseInt(said.group(5));
    int times = Integer.parseInt(said.group(6));
    assertEquals(there, LocalTime.parse(said.group(2)).plusMinutes(took));
    LocalTime later = LocalTime.parse(said.group(7));
    double between = MINUTES.between(there, later);
    assertEquals((double) took * times, between, 1, said.group());
    JsonNode look = json().get("fire_check");
    assertEquals(look.has("raised"), said.group(9) != null, look + " " + said.group());
    if (look.has("raised")) {
      JsonNode raised = look.get("raised");
      LocalTime from = LocalTime.parse(raised.get("from").asText().substring(11, 16));
      double more = raised.get("K_per_minute").asDouble() * MINUTES.between(from, later);
      double most = raised.get("most_K").asDouble();
      double told = Double.parseDouble(said.group(9)) * (said.group(10).equals("higher") ? 1 : -1);
      double minute = Math.abs(raised.get("K_per_minute").asDouble());
      assertEquals(Math.max(-most, Math.min(most, more)), told, 0.05 + minute, said.group());
      String screen =
          String.format(
              Locale.ROOT,
              "; off %.2f K %s per 10 min past %s, ±%.0f K at most",
              10 * minute,
              raised.get("K_per_minute").asDouble() > 0 ? "higher" : "lower",
              from,
              most);
      assertTrue(run.said().contains(screen), run.out());
    }
    assertEquals(look.get("drawn_on_K").asDouble(), 5.0 * times, 1e-9);
    for (JsonNode band : look.get("bands")) {
      boolean last = !band.has("until");
      if (last || !later.isAfter(LocalTime.parse(band.get("until").asText().substring(11, 16)))) {
        double hotter = band.get("hotter_K").asDouble();
        String kelvin = Math.round(Math.abs(hotter)) + " K ";
        String words = hotter == 0 ? "as it is" : kelvin + (hotter > 0 ? "hotter" : "cooler");
        assertEquals(words, said.group(8), band.toString());
        return;
      }
    }
    throw new AssertionError("no band for " + later + " in " + look);
  }

  /** A window that is kept is never missed, and the screen says by when it is off. */
  @Test
  void keptWindow_isToldWithItsClock() throws IOException {
    String latest = "  latest: ";
    Run run = plan(write("kept.yaml", published().replace(latest, "  window: kept\n" + latest)));
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), complaints());
    String until = json().at("/pull/at_the_latest").asText();
    String said = run.said();
    String clock = until.substring(11, 16);
    assertTrue(said.contains("window: kept: whatever the display shows it comes off"), said);
    assertTrue(said.contains(" and by " + clock + "; what is undercooked by its core"), said);
    assertEquals(1, json().at("/chances/ready_by_latest").asDouble(), 1e-9);
    assertEquals(0, json().at("/chances/kept_too_long").asDouble(), 1e-9);
  }

  /** Of a sear in turns the crust is that of where it touches the metal, and so is its wish. */
  @Test
  void crustPalerThanWished_isNotMet_andToldWithTheSear() throws IOException {
    Run golden = plan(cook);
    assertTrue(golden.step("sear: ").endsWith("  by clock; golden in part"), golden.out());
    assertTrue(!golden.out().contains("Crust too pale"), golden.out());
    JsonNode own = ownSear();
    assertTrue(own.get("browning").asDouble() >= 10, own.toString());
    assertTrue(own.get("browning_average").asDouble() < 10, own.toString());
    Run brown = plan(write("brown.yaml", withCrust("brown")));
    assertTrue(brown.step("sear: ").endsWith("  by clock; crust too pale"), brown.out());
    String said = brown.said();
    assertTrue(
        said.matches(
            ".*NOT MET: Crust too pale: crust at most 1\\d \\(.*\\) of 52 where it touches, \\d on average;"
                + " (\\d+) mm beyond the wish; brown is from 20 on: last, 1\\d\\d s in 2 rounds, 80 K hotter"
                + " gets there: .*"),
        said);
    assertEquals("CRUST_TOO_PALE", json().at("/not_met/0/reason").asText());
    assertEquals(List.of(), complaints());
  }

  /** Nobody knows how long a place touches of a round cut whose turns are not stated. */
  @Test
  void crustOfUnstatedTurns_isAMean_andSaysSo() throws IOException {
    String turns = "turns: {count: 8, every: 25 s, sides: 4}";
    Run run = plan(write("mean.yaml", withCrust("dark").replace(turns, "end: {after: 200 s}")));
    String said = run.said();
    assertTrue(said.contains("NOT MET: Crust too pale: crust "), said);
    assertTrue(said.contains("turns: in the file would tell it where it touches"), said);
    JsonNode own = ownSear();
    assertEquals(own.get("browning").asDouble(), own.get("browning_average").asDouble());
  }

  private static String withCrust(String crust) throws IOException {
    return published().replace("crust: golden", "crust: " + crust);
  }

  private JsonNode ownSear() throws IOException {
    for (JsonNode sear : json().get("sears")) {
      if (sear.get("of_the_file").asBoolean()) {
        return sear;
      }
    }
    throw new AssertionError("no sear is the file's");
  }
}
