package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a plan says of wishes that it meets, misses, or cannot know to meet, and of its risks. */
class PlanWishesTest extends PlanRuns {

  private static final String WISHED = "scale: trade, doneness: medium, ";

  private static final String OVER_DRAWS = "Published minimum of 62.8 °C, over draws";

  /** The published cook wished at one temperature. */
  private static String wishedAt(String core) {
    return published()
        .replace(WISHED, "")
        .replace("  people: 10\n", "  people: 10\n  core: " + core + "\n");
  }

  private String said(Run run) {
    assertEquals(0, run.code(), run.err());
    return run.said();
  }

  private List<String> notMet() throws IOException {
    return json().get("not_met").findValuesAsText("reason");
  }

  private String caution(String subject) throws IOException {
    for (JsonNode one : json().get("cautions")) {
      if (one.get("subject").asText().equals(subject)) {
        return one.get("text").asText();
      }
    }
    throw new AssertionError(json().get("cautions").toString());
  }

  /** No core is at a temperature exactly: within two kelvin it is as wished. */
  @Test
  void oneTemperature_isMetWithinTwoKelvin() throws IOException {
    String said = said(plan(write("one.yaml", wishedAt("62 °C")), "--members", "200"));
    assertFalse(said.contains("NOT MET"), said);
    assertTrue(said.contains("wished 60.0 to 64.0 °C (62.0 °C, 2 K either way)"), said);
    JsonNode chances = json().get("chances");
    double missed =
        chances.get("final_core_under").asDouble() + chances.get("final_core_over").asDouble();
    assertTrue(missed > 0.01 && missed < 0.35, chances.toString());
    for (JsonNode sear : json().get("sears")) {
      boolean own = sear.get("of_the_file").asBoolean();
      assertTrue(!own || sear.get("beyond_wish_m").asDouble() < 0.04, sear.toString());
    }
  }

  /** A thin slice whose sear decides: too often too cold or too hot, though neither by itself. */
  @Test
  void wishMissedOnBothSides_isNotMet_andTheSearGoesByTheClock() throws IOException {
    String thin =
        published()
            .replace("shape: cylinder", "shape: slab")
            .replace("diameter: 96 mm", "thickness: 30 mm\n  width: 120 mm")
            .replace("length: 310 mm", "length: 160 mm")
            .replaceFirst("(?m)^  weight: .*\\n", "")
            .replace("depth: 24 mm", "depth: 8 mm")
            .replace("share: 25 %", "share: 100 %")
            .replace("rest-at-most: 90 min", "rest-at-most: 10 min")
            .replace("turns: {count: 8, every: 25 s, sides: 4}", "end: {after: 90 s}");
    String said = said(plan(write("thin.yaml", thin), "--members", "200"));
    assertTrue(said.contains("NOT MET: A core too uncertain: it falls short in "), said);
    assertTrue(said.contains("NOT MET: Too little meat: this cut, "), said);
    assertEquals(List.of("CORE_NOT_AS_WISHED", "TOO_FEW_PLATES"), notMet());
    assertEquals(List.of(), complaints());
    assertFalse(said.contains("see fire"), said);
    String advice = step("sear").get("when_it_slips").asText();
    assertTrue(advice.contains("A sear a quarter longer makes the middle of this cut "), advice);
    assertFalse(advice.contains("hardly moves"), advice);
    plan(cook);
    assertFalse(step("sear").get("when_it_slips").asText().contains("quarter longer"));
    assertEquals(List.of(), notMet());
  }

  /** Each sear is told as it is, and the weighed one is that of the file. */
  @Test
  void searsFirstAndLast_areToldEachAsItIs() throws IOException {
    String first =
        """
        stages:
          - name: first sear
            chamber: {air: 180 °C, walls: 200 °C, heat-transfer: 10 W/(m²·K)}
            wetness: 0
            contact: {plate: 300 °C, conductance: 250 W/(m²·K), share: 25 %}
            turns: {count: 4, every: 15 s, sides: 4}
        """;
    String both = published().replaceFirst("(?m)^stages:\n", first);
    Run run = plan(write("both.yaml", both));
    assertTrue(run.step("sear first, ").contains("4 turns of 15 s"), run.out());
    assertTrue(run.step("sear: ").contains("8 turns of 25 s"), run.out());
    double sear = step("sear").at("/time_s/q50").asDouble();
    assertEquals(200, step("rest").at("/time_s/q50").asDouble() - sear, 1);
    for (JsonNode one : json().get("sears")) {
      if (one.get("of_the_file").asBoolean()) {
        assertEquals("BOTH", one.get("order").asText());
        assertEquals(260, one.get("length_s").asDouble(), 1e-9);
        assertTrue(one.get("browning").asDouble() > 14, one.toString());
      }
    }
    assertEquals(List.of(), notMet());
  }

  /** The middle of the beliefs meets the published minimum; the draws are asked too. */
  @Test
  void drawsBelowThePublishedMinimum_areCautionedOf() throws IOException {
    String said = said(plan(write("near.yaml", wishedAt("63.6 °C")), "--members", "200"));
    String caution = caution(OVER_DRAWS);
    assertTrue(
        caution.matches("In \\d+ % of the draws the middle does NOT get to 62.8 °C, .*"), caution);
    assertTrue(said.contains("! " + caution.substring(0, caution.indexOf(". Local") + 1)), said);
    said = said(plan(cook));
    caution = caution(OVER_DRAWS);
    assertTrue(caution.contains(" of the draws the middle gets to 62.8 °C, "), caution);
    assertFalse(said.contains("does NOT get to 62.8"), said);
  }

  /** What is asked for with a chance is told with the chance that it has. */
  @Test
  void demandedMinimum_isToldWithItsChance() throws IOException {
    String asked =
        published()
            .replace("  people: 10\n", "  people: 10\n  minimum: {core: 61 °C, chance: 80 %}\n");
    String said = said(plan(write("asked.yaml", asked), "--members", "200"));
    double chance = json().at("/chances/minimum_reached").asDouble();
    assertTrue(chance >= 0.795, json().get("chances").toString());
    assertTrue(
        said.contains(
            String.format("was asked for with 80 %%, and comes with %.0f %%", 100 * chance)),
        said);
    assertEquals(List.of(), complaints());
  }

  /** Without a sear it is kept after its rest, where it is colder than hot food is held. */
  @Test
  void keptAfterItsRest_isCautionedOf() throws IOException {
    String lamb =
        Files.readString(Path.of("../../datasets/cooks/boathouse-lamb-leg/cook.yaml"))
            + "\nplan: {rest-at-most: 90 min}\n";
    String said = said(plan(write("lamb.yaml", lamb)));
    String caution = caution("Kept warm");
    assertTrue(
        caution.matches(
            "Kept for .* after its rest it is carved at 5\\d\\.\\d °C in the middle, BELOW the 57.2 °C"
                + " at which food codes have hot food held\\. .*"),
        caution);
    assertTrue(said.contains("BELOW the 57.2 °C at which food codes"), said);
    JsonNode keeping = json().get("keeping");
    assertEquals(4, keeping.size());
    assertTrue(
        keeping.at("/3/core_carved_degC").asDouble()
            < keeping.at("/0/core_carved_degC").asDouble());
    String local =
        lamb.replace("rest-at-most: 90 min", "rest-at-most: 90 min, hold-minimum: 50 °C");
    plan(write("local.yaml", local));
    assertFalse(caution("Kept warm").contains("BELOW"), caution("Kept warm"));
  }

  /** Nobody can rest it longer than it may rest. */
  @Test
  void restAtMostBelowTheUsualLeast_isTheLeast() throws IOException {
    String brief = published().replace("rest-at-most: 90 min", "rest-at-most: 10 min");
    plan(write("brief.yaml", brief));
    double rest = step("rest").at("/time_s/q50").asDouble();
    assertEquals(600, step("ready").at("/time_s/q50").asDouble() - rest, 1);
  }
}
