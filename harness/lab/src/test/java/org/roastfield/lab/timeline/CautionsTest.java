package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;

class CautionsTest {

  /** USDA minima in degrees Fahrenheit, and the side of them that a core of about 48 °C is on. */
  @ParameterizedTest
  @CsvSource({
    "beef, 62.8",
    "pork, 62.8",
    "lamb, 62.8",
    "fish, 62.8",
    "ground, 71.1",
    "poultry, 73.9"
  })
  void coolCore_isSaidToBeBelowThePublishedMinimum(String food, String minimum) {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("food: beef", "food: " + food));
    String text = of(file, TemperatureScale.CELSIUS, "Published minimum").text();
    assertTrue(text.contains(" BELOW the published minimum for "), text);
    assertTrue(text.contains(", " + minimum + " °C"), text);
    assertTrue(
        text.endsWith("Local food codes and trained people decide; this estimate does not."));
  }

  @Test
  void moistFaceInAFanOven_isSaidToBeBeyondTheModel() {
    String pit = "air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)";
    String oven =
        CookTexts.SLAB.replace(
            pit, "air: 200 °C, humidity-ratio: 0.015, " + "heat-transfer: 25 W/(m²·K)");
    String text = of(CookTexts.read(oven), TemperatureScale.CELSIUS, "Hot moving air").text();
    assertTrue(text.startsWith("Loss and time of gentle heat are rough"), text);
    assertTrue(text.contains("wetness: drying in a cook file"), text);
    CookFile drying = CookTexts.read(oven.replace("wetness: 0.3", "wetness: drying"));
    assertTrue(
        of(drying, TemperatureScale.CELSIUS, "Hot moving air")
            .text()
            .contains("Evaporation alone"));
    for (String other :
        List.of(
            CookTexts.SLAB,
            oven.replace("25 W/(m²·K)", "8 W/(m²·K)"),
            oven.replace("200 °C", "140 °C"),
            oven.replace("wetness: 0.3", "wetness: 0"))) {
      assertTrue(
          cautions(CookTexts.read(other), TemperatureScale.CELSIUS).stream()
              .noneMatch(caution -> caution.subject().equals("Hot moving air")));
    }
  }

  @Test
  void minimum_hasItsSource() {
    Caution caution = of(Published.porkLoin(), TemperatureScale.CELSIUS, "Published minimum");
    assertEquals(
        "USDA Food Safety and Inspection Service, Safe Minimum Internal Temperature Chart",
        caution.source());
    assertTrue(caution.text().contains("followed by a rest of 3 minutes"), caution.text());
  }

  @Test
  void unstatedFood_isHeldAgainstEveryMinimum() {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("  food: beef\n", ""));
    String text =
        cautions(file, TemperatureScale.FAHRENHEIT).stream()
            .filter(caution -> caution.subject().equals("Published minimum"))
            .map(Caution::text)
            .collect(Collectors.joining(" "));
    for (String minimum : List.of("145.0 °F", "160.0 °F", "165.0 °F")) {
      assertTrue(text.contains(minimum), text);
    }
  }

  @Test
  void vegetable_hasNoMinimumForMeat() {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("food: beef", "food: vegetable"));
    List<Caution> cautions = cautions(file, TemperatureScale.CELSIUS);
    assertTrue(cautions.stream().noneMatch(c -> c.subject().equals("Opened meat")));
    assertTrue(
        of(file, TemperatureScale.CELSIUS, "Published minimum")
            .text()
            .startsWith("No minimum for meat is applied to a vegetable."));
  }

  @Test
  void hotGrate_isWarnedOfWhereThereIsOne() {
    assertFalse(subjects(CookTexts.read(CookTexts.SLAB)).contains("Hot grate"));
    assertTrue(subjects(Published.porkLoin()).contains("Hot grate"));
    String coals =
        CookTexts.SLAB.replace(
            "wetness: 0.3", "wetness: 0.3\n    coal-bed: {temperature: 700 °C, view-factor: 2 %}");
    assertTrue(subjects(CookTexts.read(coals)).contains("Hot grate"));
  }

  @Test
  void slowRise_isWarnedOfBeyondSixHours() {
    assertFalse(subjects(Published.porkLoin()).contains("Slow rise"));
    String slow =
        CookTexts.SLAB
            .replace("air: 110 °C", "air: 60 °C")
            .replace("thickness: 40 mm", "thickness: 160 mm")
            .replace("wetness: 0.3", "wetness: 0")
            .replace("at-latest: 3 h", "at-latest: 30 h");
    assertTrue(subjects(CookTexts.read(slow)).contains("Slow rise"));
  }

  /** A number may be held against a minimum, but nothing may read as leave to serve. */
  @Test
  void noCaution_permits() {
    String hot = CookTexts.SLAB.replace("core: 46 °C", "core: 80 °C").replace("0.3", "0");
    for (CookFile file :
        List.of(Published.porkLoin(), CookTexts.read(CookTexts.SLAB), CookTexts.read(hot))) {
      for (Caution caution : cautions(file, TemperatureScale.CELSIUS)) {
        String text = caution.text().toLowerCase(Locale.ROOT);
        for (String word : List.of("safe", "ready to eat", "may be served", "is fine", "okay")) {
          assertFalse(text.contains(word), text);
        }
      }
    }
  }

  private static List<String> subjects(CookFile file) {
    return cautions(file, TemperatureScale.CELSIUS).stream().map(Caution::subject).toList();
  }

  private static Caution of(CookFile file, TemperatureScale scale, String subject) {
    return cautions(file, scale).stream()
        .filter(caution -> caution.subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static List<Caution> cautions(CookFile file, TemperatureScale scale) {
    SimulationResult result = Simulator.withDefaults().run(file.cook()).orElseThrow();
    return Cautions.of(file, result, scale);
  }
}
