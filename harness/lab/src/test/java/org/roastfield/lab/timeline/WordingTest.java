package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;
import org.roastfield.lab.files.Food;
import org.roastfield.lab.report.SimulationReport;
import org.roastfield.lab.result.ResultJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.SaltJson;
import org.roastfield.lab.salting.SaltPlan;
import org.roastfield.lab.salting.SaltWish;

/** No string in the sources of library and lab may read as leave to serve or eat. */
class WordingTest {

  private static final List<String> FORBIDDEN =
      List.of(
          "safe to eat",
          "safe to serve",
          "is safe",
          "are safe",
          "food-safe",
          "guarantee",
          "ready to eat",
          "ready to serve",
          "may be served",
          "may be eaten",
          "can be served",
          "can be eaten",
          "no risk",
          "harmless",
          "pasteuri",
          "steril",
          "is fine",
          "okay",
          "without danger",
          "permitted to");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  /** A literal that goes on in the next line is one string to its reader. */
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

  @Test
  void noString_readsAsAPermission() throws IOException {
    int seen = 0;
    for (Path root :
        List.of(Path.of("src/main"), Path.of("..", "..", "thermal-core", "src", "main"))) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          seen += check(file);
        }
      }
    }
    assertTrue(seen > 1000, "strings seen: " + seen);
  }

  /** What literals and words of files make together, over every kind of food and handling. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "food: beef",
        "food: pork\n  handling: intact",
        "food: lamb\n  handling: rolled",
        "food: beef\n  handling: tenderised",
        "food: beef\n  handling: ground",
        "food: ground",
        "food: poultry",
        "food: fish",
        "food: vegetable"
      })
  void noResult_readsAsAPermission(String food) {
    for (String core : List.of("core: 46 °C", "core: 80 °C")) {
      String text = CookTexts.SLAB.replace("food: beef", food).replace("core: 46 °C", core);
      CookFile file = CookTexts.read(text.replace("wetness: 0.3", "wetness: 0"));
      SimulationResult result = Simulator.withDefaults().run(file.cook()).orElseThrow();
      ComputedCook plain = ComputedCook.of(file, result);
      ComputedCook computed = plain.with(DrawnCooks.spread(plain, 4, 1));
      List<Milestone> milestones = Timeline.of(file, result, TemperatureScale.CELSIUS);
      RunManifest manifest = new RunManifest("0", "simulate", List.of(), List.of(), "17");
      assertEquals(List.of(), permits(ResultJson.text(computed, milestones)));
      String page = SimulationReport.html(computed, milestones, manifest);
      assertEquals(List.of(), permits(page.replaceAll("<[^>]*>", "")));
      if (file.food() != Food.VEGETABLE) {
        SaltPlan salt = SaltPlan.of(file, new SaltWish(0.012, OptionalDouble.empty(), 0.5, false));
        assertEquals(List.of(), permits(SaltJson.text(salt)));
      }
    }
  }

  private static int check(Path file) throws IOException {
    String source = Files.readString(file, StandardCharsets.UTF_8);
    Matcher literals = LITERAL.matcher(JOINED.matcher(source).replaceAll(""));
    int seen = 0;
    while (literals.find()) {
      seen++;
      assertTrue(permits(literals.group(1)).isEmpty(), file + ": " + literals.group(1));
    }
    return seen;
  }

  private static List<String> permits(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return FORBIDDEN.stream().filter(lower::contains).toList();
  }

  @Test
  void permission_isFoundAcrossABrokenLine() {
    String source = "\"This roast is sa\"\n    + \"fe to eat\"";
    Matcher literals = LITERAL.matcher(JOINED.matcher(source).replaceAll(""));
    assertTrue(literals.find());
    assertFalse(permits(literals.group(1)).isEmpty());
  }
}
