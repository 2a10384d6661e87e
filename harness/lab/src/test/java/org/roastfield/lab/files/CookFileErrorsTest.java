package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of mistake in a cook file is named with its place, to the letter. */
class CookFileErrorsTest {

  private static final String CONSTANT =
      "conductivity: 0.48 W/(m·K), density: 1060 kg/m³, heat-capacity: 3500 J/(kg·K)";

  private static final String STAGE_KEYS =
      "one of name, chamber, box, wetness, baste, emissivity, contact, board, coal-bed, wrap, lid, faces,"
          + " turns, end";

  private static final String TOP_KEYS =
      "roastfield, name, made-up, starts, serves, altitude, cooker, cut, probes, stages, wishes, plan";

  static Stream<Arguments> keys() {
    return Stream.of(
        arguments(
            "wetness: 0.3",
            "wetnes: 0.3",
            "16:5: found \"wetnes\", expected " + STAGE_KEYS + "; nearest known key: wetness"),
        arguments(
            "wetness: 0.3", "drizzle: 0.3", "16:5: found \"drizzle\", expected " + STAGE_KEYS),
        arguments(
            "altitude: 0 m\n",
            "altitude: 0 m\naltitude: 12 m\n",
            "5:1: found \"altitude\" a second time, expected each key once"),
        arguments(
            "roastfield: cook/1\n",
            "",
            "1:1: found no key \"roastfield\", expected it among these keys"),
        arguments("cook/1", "cook/2", "1:13: found \"cook/2\", expected cook/1"),
        arguments(
            "  food: beef",
            "  {a: b}: beef",
            "6:3: found a key that is no single word, expected one of food, handling, shape, thickness,"
                + " diameter, girth, diameters, girths, length, width, weight, biot-number,"
                + " start-temperature, material, emissivity, water-activity, surface"),
        arguments(
            "thickness: 40 mm",
            "diameter: 40 mm",
            "8:13: found \"40 mm\", expected no diameter for a slab"),
        arguments(
            "humidity-ratio: 0.03, ",
            "",
            "15:14: found no key \"humidity-ratio\", expected it among these keys"));
  }

  static Stream<Arguments> quantities() {
    String length = "expected a length, such as 96 mm (mm, cm, m, in)";
    return Stream.of(
        arguments(
            "thickness: 40 mm",
            "thickness: 40",
            "8:14: found \"40\", " + length + "; 40 of mm, cm or in?"),
        arguments("thickness: 40 mm", "thickness: NaN mm", "8:14: found \"NaN mm\", " + length),
        arguments("thickness: 40 mm", "thickness: .inf", "8:14: found \".inf\", " + length),
        arguments(
            "thickness: 40 mm",
            "thickness: 4,0 cm",
            "8:14: found \"4,0 cm\", " + length + "; decimals stand after a point: 4.0 cm"),
        arguments("thickness: 40 mm", "thickness: 40 °C", "8:14: found \"40 °C\", " + length),
        arguments(
            "thickness: 40 mm",
            "thickness: -40 mm",
            "8:14: found \"-40 mm\", expected a value from 1 mm to 1000 mm"),
        arguments(
            "thickness: 40 mm",
            "thickness: [40, mm]",
            "8:14: found a list, expected a single value"),
        arguments("thickness: 40 mm", "thickness:", "8:13: found nothing, expected a single value"),
        arguments(
            "conductivity: 0.48 W/(m·K)",
            "conductivity: 0.48 W/(m²·K)",
            "10:40: found \"0.48 W/(m²·K)\", expected a conductivity, such as 0.48 W/(m·K)"),
        arguments(
            "wetness: 0.3", "wetness: 1.3", "16:14: found \"1.3\", expected a value from 0 to 1"),
        arguments(
            "{after: 20 min}",
            "{after: 20 °C}",
            "21:18: found \"20 °C\", expected a time, such as 20 min or 1 h 30 min (s, min, h)"),
        arguments(
            "{after: 20 min}",
            "{after: 0 min}",
            "21:18: found \"0 min\", expected a value from 1 s to 864000 s"),
        arguments(
            "start-temperature: 5 °C",
            "start-temperature: -18 °C",
            "9:22: found \"-18 °C\", expected at least -1 °C: freezing and thawing are not"
                + " represented, so thaw the cut fully, in the cold, and state the temperature in"
                + " its middle"),
        arguments(
            "{air: 20 °C, heat",
            "{air: 20 °C, humidity-ratio: 0.05, heat",
            "19:43: found \"0.05\", expected at most 0.0147, where air of 20 °C is saturated"),
        arguments(
            "depth: 15 mm",
            "depth: 45 mm",
            "12:24: found \"45 mm\", expected a value from 0 mm to 40 mm"),
        arguments(
            "shape: slab",
            "shape: finite-cylinder",
            "8:14: found \"40 mm\", expected no thickness for a finite-cylinder"),
        arguments(
            "slab\n  thickness: 40 mm",
            "box\n  thickness: 40 mm\n  width: 8 cm\n  length: 9 cm\n  biot-number: 0.1",
            "11:16: found \"0.1\", expected a value from 0.2 to 50"),
        arguments(
            "slab\n  thickness: 40 mm",
            "taper\n  diameters: [40 mm]\n  length: 9 cm",
            "8:14: found a list, expected a value that can be computed with: number of diameters"
                + " must be in [2, 1000], was 1"),
        arguments(
            CONSTANT,
            "composition: {water: 72, protein: 8 %}",
            "10:47: found \"72\", expected a value from 0 to 1"),
        arguments(
            CONSTANT,
            "composition: {water: 72 %, protein: 8 %}",
            "10:39: found keys and values, expected shares that sum to 95 % … 105 %; these sum to"
                + " 80.0 %"),
        arguments(
            "conductivity: 0.48 W/(m·K), ",
            "composition: {water: 72 %, protein: 28 %}, ",
            "10:78: found \"1060 kg/m³\", expected no density beside a composition, which gives"
                + " it"));
  }

  static Stream<Arguments> words() {
    return Stream.of(
        arguments(
            "shape: slab",
            "shape: cube",
            "7:10: found \"cube\", expected one of slab, cylinder, sphere, finite-cylinder, box,"
                + " taper"),
        arguments(
            "shape: slab",
            "shape: slap",
            "7:10: found \"slap\", expected one of slab, cylinder, sphere, finite-cylinder, box,"
                + " taper; nearest known: slab"),
        arguments(
            "food: beef",
            "food: beaf",
            "6:9: found \"beaf\", expected one of pork, beef, lamb, poultry, fish, ground,"
                + " vegetable; nearest known: beef"),
        arguments(
            "name: Strip steak",
            "name: \"a\\eb\"",
            "2:7: found \"a\\u001bb\", expected a name of 1 to 120 printable characters"),
        arguments(
            "starts: 2026-06-13T18:00",
            "starts: 18:00",
            "3:9: found \"18:00\", expected a date and a clock time, such as 2026-06-13T14:05"),
        arguments(
            "name: tip",
            "name: core",
            "12:12: found \"core\", expected a name of its own, neither core nor surface nor an"
                + " earlier probe's"),
        arguments(
            "name: rest",
            "name: gentle heat",
            "18:11: found \"gentle heat\", expected a name that no earlier stage has"));
  }

  static Stream<Arguments> foods() {
    String material = "{name: beef, " + CONSTANT + "}";
    String names =
        "expected one of beef loin, beef brisket, pork loin, pork shoulder, lamb leg, venison,"
            + " bison, chicken breast, chicken thigh, turkey breast, turkey thigh, duck breast,"
            + " salmon, tuna, beetroot, cauliflower, or keys and values (name, composition)";
    return Stream.of(
        arguments(
            material,
            "beef lion",
            "10:13: found \"beef lion\", " + names + "; nearest known: beef loin"),
        arguments(material, "xyz", "10:13: found \"xyz\", " + names),
        arguments(
            material,
            "chicken breast",
            "10:13: found \"chicken breast\", expected meat, which the food of this cut is said to"
                + " be: beef"),
        arguments(
            "start-temperature: 5 °C\n  material: " + material,
            "start-temperature: -18 °C\n  material: beef loin",
            "9:22: found \"-18 °C\", expected at least -1 °C: freezing and thawing are not"
                + " represented, so thaw the cut fully, in the cold, and state the temperature in"
                + " its middle"),
        arguments(
            "start-temperature: 5 °C\n  material: " + material,
            "start-temperature: -1.5 °C\n  material: beef loin",
            "9:22: found \"-1.5 °C\", expected at least -1 °C: freezing and thawing are not"
                + " represented, so thaw the cut fully, in the cold, and state the temperature in"
                + " its middle"));
  }

  static Stream<Arguments> ends() {
    String end = "{core: 46 °C, at-latest: 3 h}";
    return Stream.of(
        arguments(
            "core: 46 °C",
            "core: 110 °C",
            "17:17: found \"110 °C\", expected a temperature below 110 °C, the hottest that the cut"
                + " meets up to here"),
        arguments(
            end,
            "{probe: tip, falls-to: 2 °C, at-latest: 3 h}",
            "17:33: found \"2 °C\", expected a temperature above 5 °C, the coldest that the cut"
                + " meets up to here"),
        arguments(
            end,
            "{probe: tap, reaches: 40 °C, at-latest: 3 h}",
            "17:18: found \"tap\", expected core, surface, or a probe listed under probes"),
        arguments(
            end,
            "{core: 46 °C}",
            "17:10: found no key \"at-latest\", expected it among these keys"),
        arguments(
            end,
            "{core: 46 °C, after: 3 h}",
            "17:10: found keys and values, expected exactly one of after, at, core, probe"),
        arguments(
            end,
            "{probe: tip, at-latest: 3 h}",
            "17:10: found keys and values, expected either reaches or falls-to"),
        arguments(
            "{after: 20 min}",
            "{at: 2026-06-13T17:00}",
            "21:15: found \"2026-06-13T17:00\", expected a clock time after 2026-06-13T18:00 and"
                + " within ten days of it"),
        arguments(
            "{after: 20 min}",
            "{after: 20 min, at-latest: 1 h}",
            "21:37: found \"1 h\", expected no at-latest beside after"));
  }

  static Stream<Arguments> turnsAndFaces() {
    return Stream.of(
        arguments(
            "wetness: 0.3",
            "turns: {count: 4, every: 30 s}\n    wetness: 0.3",
            "18:10: found keys and values, expected neither faces nor end beside turns, which say"
                + " both"),
        arguments(
            "wetness: 0.3\n    end: {core: 46 °C, at-latest: 3 h}",
            "turns: {count: 4, every: 30 s}\n    wetness: 0.3",
            "14:5: found no key \"contact\", expected it among these keys"),
        arguments(
            "wetness: 0.3",
            "contact: {plate: 260 °C, conductance: 300 W/m2K, share: 0}\n    wetness: 0.3",
            "16:61: found \"0\", expected a value from 0.001 to 1"),
        arguments(
            "wetness: 0.3",
            "faces: {upper: {wetness: 0.1}}\n    wetness: 0.3",
            "16:12: found no key \"lower\", expected it among these keys"));
  }

  static Stream<Arguments> yaml() {
    return Stream.of(
        arguments("  food: beef", "\tfood: beef", "6:1: found a tab, expected spaces"),
        arguments(
            "  food: beef",
            "  food: *beef",
            "6:9: found an anchor or alias (& or *), expected the value itself"),
        arguments(
            "  food: beef",
            "  food: &b beef",
            "6:9: found an anchor or alias (& or *), expected the value itself"),
        arguments(
            "  food: beef",
            "  food: !!str beef",
            "6:9: found a tag (!), expected a value without one"),
        arguments(
            "  food: beef",
            "  food: beef: pork",
            "6:13: found a colon that ends no key, expected each key on a line of its own, with a"
                + " space after its colon, as far in as its neighbours"));
  }

  @ParameterizedTest
  @MethodSource({"keys", "quantities", "words", "foods", "ends", "turnsAndFaces", "yaml"})
  void mistakeInOnePlace_isNamedWithItsPlace(String piece, String by, String message) {
    assertEquals("cook.yaml:" + message, error(CookTexts.spoilt(piece, by)));
  }

  static Stream<Arguments> wholeTexts() {
    return Stream.of(
        arguments(
            CookTexts.SLAB + "---\n" + CookTexts.SLAB,
            "22:1: found a second document, expected one in a file"),
        arguments("", "1:1: found nothing, expected keys and values"),
        arguments("# nothing\n", "1:1: found nothing, expected keys and values"),
        arguments("- 1\n", "1:1: found a list, expected keys and values (" + TOP_KEYS + ")"),
        arguments(
            "just text\n", "1:1: found \"just text\", expected keys and values (" + TOP_KEYS + ")"),
        arguments(
            "[".repeat(5000), "1:13: found nesting beyond 12 levels, expected no more than that"),
        arguments("a: \"\u0007\"\n", "1:5: found character U+0007, expected printable characters"),
        arguments(
            CookTexts.SLAB.substring(0, CookTexts.SLAB.indexOf("stages:")) + "stages: []\n",
            "13:9: found an empty list, expected a list with at least one item"));
  }

  @ParameterizedTest
  @MethodSource("wholeTexts")
  void textThatIsNoCook_isNamedWithItsPlace(String text, String message) {
    assertEquals("cook.yaml:" + message, error(text));
  }

  @Test
  void brokenUtf8_isNamedWithItsPlace() {
    byte[] bytes = "name: a\nfood: x".getBytes(StandardCharsets.UTF_8);
    bytes[14] = (byte) 0xff;
    CookFileException e =
        assertThrows(CookFileException.class, () -> CookFileReader.parse("cook.yaml", bytes));
    assertEquals("cook.yaml:2:7: found byte 0xFF, expected text in UTF-8", e.getMessage());
  }

  @Test
  void hugeFile_isRefusedUnread() {
    byte[] bytes = new byte[CookFileReader.LARGEST + 1];
    CookFileException e =
        assertThrows(CookFileException.class, () -> CookFileReader.parse("cook.yaml", bytes));
    assertEquals(
        "cook.yaml:1:1: found 1048577 bytes, expected at most 1048576 bytes", e.getMessage());
  }

  @Test
  void turnsOfARoundCut_needSidesThatDivideTheirCount() {
    String sphere = CookTexts.SLAB.replace("slab\n  thickness", "sphere\n  diameter");
    String rest = "wetness: 0\n    end: {after: 20 min}";
    String contact =
        "wetness: 0\n    contact: {plate: 500 °F, conductance: 300 W/m2K}\n    turns: ";
    assertEquals(
        "cook.yaml:22:12: found no key \"sides\", expected it among these keys",
        error(sphere.replace(rest, contact + "{count: 3, every: 30 s}")));
    assertEquals(
        "cook.yaml:22:20: found \"3\", expected a multiple of the 2 sides",
        error(sphere.replace(rest, contact + "{count: 3, every: 30 s, sides: 2}")));
  }

  @Test
  void errorCarriesItsParts() {
    CookFileException e =
        assertThrows(
            CookFileException.class, () -> CookTexts.read(CookTexts.spoilt("cook/1", "cook/9")));
    assertEquals("cook.yaml", e.file());
    assertEquals(1, e.line());
    assertEquals(13, e.column());
    assertEquals("\"cook/9\"", e.found());
    assertEquals("cook/1", e.expected());
  }

  private static String error(String text) {
    CookFileException e = assertThrows(CookFileException.class, () -> CookTexts.read(text));
    return String.valueOf(e.getMessage());
  }
}
