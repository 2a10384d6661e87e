package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Buying as a step of the timetable, where people are to be fed. */
class PlanBuysTest extends PlanRuns {

  private static double at(JsonNode step) {
    return step.at("/time_s/q50").asDouble();
  }

  /** In time to be salted; salt may come later, and what needs the cut next decides the slack. */
  @Test
  void buying_isAStepBeforeSalting_withTheSlackOfWhatCannotDoWithoutIt() throws IOException {
    Run run = plan(cook);
    JsonNode first = json().get("steps").get(0);
    assertEquals("buy", first.get("id").asText());
    assertEquals("salt", json().get("steps").get(1).get("id").asText());
    assertEquals(step("salt").get("time_s"), first.get("time_s"));
    JsonNode cold = step("out-of-cold");
    assertEquals(
        at(cold) + cold.get("slack_s").asDouble(), at(first) + first.get("slack_s").asDouble(), 1);
    String bought =
        String.format(
            Locale.ROOT,
            "buy %.1f kg raw for 10 people",
            Math.ceil(10 * json().at("/purchase/bought_kg").asDouble()) / 10);
    assertEquals(bought, first.get("what").asText());
    assertTrue(run.step(bought).endsWith("  late: it is salted later"), run.out());
    assertTrue(run.lines().size() <= 40, run.out());
    assertEquals(List.of(), complaints());
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains(bought));
    assertTrue(
        Files.readString(Path.of(out, "plan.ics")).replace("\r\n ", "").contains(": " + bought));
  }

  @Test
  void withoutSalt_itIsBoughtByTheTimeItLeavesTheFridge() throws IOException {
    String plain = published().replaceAll("(?m)^  salt: .*\\n", "");
    Run run = plan(write("plain.yaml", plain));
    JsonNode cold = step("out-of-cold");
    assertEquals(cold.get("time_s"), step("buy").get("time_s"));
    assertEquals(cold.get("slack_s"), step("buy").get("slack_s"));
    assertTrue(run.step("buy ").contains("late: what follows moves"), run.out());
    List<String> lines = run.lines();
    assertEquals(lines.indexOf(run.step("buy ")) + 1, lines.indexOf(run.step("out of the fridge")));
  }

  @Test
  void withoutPlates_nothingIsBought() throws IOException {
    plan(write("alone.yaml", published().replaceAll("(?m)^  people: .*\\n", "")));
    assertFalse(json().get("steps").findValuesAsText("id").contains("buy"));
    assertFalse(json().has("purchase"));
  }

  /** Salt that comes late costs depth; what is left of the slack goes with the time that passed. */
  @Test
  void afterItsTime_itIsBoughtNow_withTheSlackThatIsLeft() throws IOException {
    plan(cook);
    double end = lastTimeToBuy();
    Run run = plan(cook, "--now", "2026-06-13T09:00");
    assertTrue(run.step("now: buy ").startsWith("09:00 "), run.out());
    assertEquals(end, lastTimeToBuy(), 1);
    assertTrue(step("buy").get("slack_s").asDouble() < 6 * 3600, run.out());
  }

  private double lastTimeToBuy() throws IOException {
    return step("buy").at("/time_s/q50").asDouble() + step("buy").get("slack_s").asDouble();
  }

  /** Nobody goes shopping while the fire is lit. */
  @Test
  void onceTheFireShouldBeLit_itIsThereAlready() {
    Run run = plan(cook, "--now", "2026-06-13T16:10");
    assertTrue(run.step("bought by now: ").startsWith("16:10 "), run.out());
    assertFalse(run.out().contains("now: buy"), run.out());
  }
}
