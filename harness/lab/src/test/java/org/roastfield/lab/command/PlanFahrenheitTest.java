package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** With --fahrenheit nothing that a plan says, draws or tabulates is in kelvins. */
class PlanFahrenheitTest extends PlanRuns {

  /** A difference in kelvins as words, or as a unit of a column or an axis. */
  private static final Pattern KELVIN =
      Pattern.compile("(?:[\\d.]+[\\s\\u00a0]|, |[sS]quare of )(?:K\\b|kelvins?\\b).{0,40}");

  private static final Pattern CELSIUS = Pattern.compile(".{0,40}°C");

  private static String withoutDeepRings() {
    return published().replace("crust: golden}", "crust: golden, ring: 3 mm}");
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(java.util.regex.MatchResult::group).toList();
  }

  /** All of the page but what the cook file says itself, and sources and cautions beside it. */
  private String page() throws IOException {
    String html = Files.readString(Path.of(out, "plan.html"));
    String told =
        html.replaceAll("(?s)<ul class=\"cautions\">.*?</ul>", "")
            .replaceAll("(?s)<style.*?</style>", "");
    int file = told.indexOf("The cook, as its file states it");
    assertTrue(file > 0, "no table of what the file states");
    return told.substring(0, file).replaceAll("<[^>]+>", " ");
  }

  @Test
  void screenPageAndStatements_haveNoKelvins() throws IOException {
    String file = write("even.yaml", withoutDeepRings());
    Run run = plan(file, "--fahrenheit");
    assertEquals(0, run.code(), run.err());
    String screen = run.said();
    assertEquals(List.of(), found(KELVIN, screen));
    assertEquals(List.of(), found(CELSIUS, screen));
    assertEquals(List.of(), found(KELVIN, page()));
    assertEquals(List.of(), found(CELSIUS, page()));
    for (String list : List.of("statements", "assumed", "not_met")) {
      for (JsonNode one : json().get(list)) {
        assertEquals(List.of(), found(KELVIN, one.get("text").asText()));
      }
    }
  }

  @Test
  void wishAtOneTemperature_isToldInFahrenheit() throws IOException {
    String one =
        published()
            .replace("scale: trade, doneness: medium, ", "")
            .replace("  people: 10\n", "  people: 10\n  core: 62 °C\n");
    Run run = plan(write("one.yaml", one), "--fahrenheit");
    String screen = run.said();
    assertTrue(screen.contains("wished 140.0 to 147.2 °F (143.6 °F, 4 °F either way)"), screen);
    assertEquals(List.of(), found(CELSIUS, screen));
  }

  /** The same numbers as in kelvins, times 1.8. */
  @Test
  void differences_areThoseInKelvins() throws IOException {
    plan(cook);
    String kelvins = fireRule();
    plan(cook, "--fahrenheit");
    String fahrenheit = fireRule();
    Matcher in = Pattern.compile("(\\d+) K (hotter|cooler)").matcher(kelvins);
    assertTrue(in.find(), kelvins);
    long expected = Math.round(1.8 * Double.parseDouble(in.group(1)));
    assertTrue(fahrenheit.contains(expected + " °F " + in.group(2)), fahrenheit);
    assertFalse(fahrenheit.contains(" K"), fahrenheit);
    double core = json().at("/what_if/0/final_core_hotter_K").asDouble();
    String row = page();
    row = row.substring(row.lastIndexOf(json().at("/what_if/0/what").asText()));
    String value = String.format(java.util.Locale.ROOT, "%.1f", Math.abs(1.8 * core));
    assertTrue(row.substring(0, 200).contains(value), value + " in " + row.substring(0, 200));
  }

  private String fireRule() throws IOException {
    for (JsonNode one : json().get("statements")) {
      if (one.get("subject").asText().equals("fire")) {
        return one.get("text").asText();
      }
    }
    throw new AssertionError("no rule of the fire");
  }
}
