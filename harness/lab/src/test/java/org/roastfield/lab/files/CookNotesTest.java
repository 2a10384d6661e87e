package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.lab.Published;

/** What a cook file says beside the cook: service, wishes, cooker, state of the surface. */
class CookNotesTest {

  private static final String PROFILE = "{\"schema\": \"cooker/1\", \"id\": \"slipway-pit\"}";

  @TempDir Path folder = Path.of("");

  private static CookNotes notes(String lines) {
    return CookTexts.read(CookTexts.SLAB + lines).notes();
  }

  private static String error(String lines) {
    return String.valueOf(assertThrows(CookFileException.class, () -> notes(lines)).getMessage());
  }

  @Test
  void nothingSaid_isNothingKnown() {
    assertEquals(CookNotes.none(), notes(""));
  }

  @Test
  void publishedCook_isServedAtHalfPastSix() {
    CookNotes notes = Published.porkLoin().notes();
    assertEquals(Optional.of(LocalDateTime.of(2026, 6, 13, 18, 30)), notes.serves());
    assertEquals(
        new Wishes(
            Optional.of(DonenessScale.TRADE),
            List.of("medium"),
            Optional.of(Wishes.Crust.GOLDEN),
            OptionalDouble.empty()),
        notes.wishes());
    assertEquals(Optional.of(true), notes.surface().pattedDry());
  }

  @Test
  void taper_hasAWishForEachStation() {
    String text =
        CookTexts.spoilt(
                "  shape: slab\n  thickness: 40 mm\n",
                "  shape: taper\n  diameters: [11 cm, 6 cm]\n  length: 30 cm\n")
            + "wishes: {scale: research, doneness: {first-end: rare, middle: medium, last-end:"
            + " well done}}\n";
    assertEquals(
        List.of("rare", "medium", "well done"), CookTexts.read(text).notes().wishes().doneness());
  }

  @Test
  void stateOfTheSurface_isStated_andPattingDryIsRecorded() {
    CookFile file =
        CookTexts.read(
            CookTexts.spoilt(
                "  food: beef\n",
                "  food: beef\n  surface: {patted-dry: false, rub: salt <b>, fat-cap: 6 mm}\n"));
    assertEquals(
        new SurfaceState(Optional.of(false), Optional.of("salt <b>"), Optional.of(0.006)),
        file.notes().surface());
    assertEquals(
        List.of(
            new Fact("surface, patted dry", "false (recorded; nothing is computed from it)"),
            new Fact("surface, rub", "salt <b>"),
            new Fact("surface, fat cap", "6 mm"),
            new Fact("surface drive", "0.25 of bare meat's, where it dries (assumed)")),
        file.facts().stream().filter(fact -> fact.subject().startsWith("surface")).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "serves: 2026-06-13T17:00 | 22:9: found \"2026-06-13T17:00\", expected a clock time after"
            + " 2026-06-13T18:00 and within ten days of it",
        "serves: 18:30 | 22:9: found \"18:30\", expected a date and a clock time, such as"
            + " 2026-06-13T14:05",
        "'wishes: {doneness: medium}' | 22:9: found no key \"scale\", expected trade or research"
            + " beside doneness, since the words differ by 5 to 11 K",
        "'wishes: {scale: trade}' | 22:9: found no key \"doneness\", expected it beside scale",
        "'wishes: {scale: trad, doneness: medium}' | 22:17: found \"trad\", expected one of trade,"
            + " research; nearest known: trade",
        "'wishes: {scale: research, doneness: medium-well}' | 22:37: found \"medium-well\", expected"
            + " one of very rare, rare, medium-rare, medium, well done; nearest known: medium-rare"
            + " (the research scale)",
        "'wishes: {scale: trade, doneness: {middle: medium}}' | 22:34: found keys and values,"
            + " expected one degree of doneness, since only a taper has stations",
        "'wishes: {crust: brwn}' | 22:17: found \"brwn\", expected one of pale, golden, brown, dark;"
            + " nearest known: brown",
        "'wishes: {}' | 22:9: found no keys, expected a wish: doneness with its scale,"
            + " crust, or ring",
        "cooker: ../pit | 22:9: found \"../pit\", expected the name of a cooker: words in lower case"
            + " joined by hyphens",
      })
  void mistakes_areNamed(String line, String message) {
    assertEquals("cook.yaml:" + message, error(line + "\n"));
  }

  private Path cook(String line) throws IOException {
    Path cooks = Files.createDirectories(folder.resolve("cooks").resolve("one"));
    return Files.writeString(cooks.resolve("cook.yaml"), CookTexts.SLAB + line + "\n");
  }

  @Test
  void cooker_isFoundAboveTheCookFile() throws IOException {
    Path cookers = Files.createDirectories(folder.resolve("cookers"));
    Files.writeString(cookers.resolve("slipway-pit.json"), PROFILE);
    CookerReference cooker =
        CookFileReader.read(cook("cooker: slipway-pit")).notes().cooker().orElseThrow();
    assertEquals(PROFILE, cooker.profile().orElseThrow().json());
  }

  @Test
  void unknownCooker_isRefusedWithThePath() throws IOException {
    Path cookers = Files.createDirectories(folder.resolve("cookers"));
    Files.writeString(cookers.resolve("slipway-pit.json"), PROFILE);
    Path cook = cook("cooker: slipway-pti");
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(cook));
    assertEquals(
        "cook.yaml:22:9: found \"slipway-pti\", expected a cooker with a profile slipway-pti.json in "
            + cookers.toAbsolutePath().normalize()
            + "; nearest known: slipway-pit",
        e.getMessage());
  }

  @Test
  void cookFileWithoutCookers_saysWhereTheyAreLookedFor() throws IOException {
    Path cook = cook("cooker: slipway-pit");
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(cook));
    assertEquals(
        "cook.yaml:22:9: found \"slipway-pit\", expected a cooker with a profile"
            + " cookers/slipway-pit.json, in the cook file's folder or up to 2 above it",
        e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{\"schema\": \"cooker/2\", \"id\": \"slipway-pit\"}",
        "{\"schema\": \"cooker/1\", \"id\": \"another\"}",
        "{\"schema\": \"cooker/1\", \"id\": \"slipway-pit\", \"id\": \"slipway-pit\"}",
        "{\"schema\": \"cooker/1\", \"id\": \"slipway-pit\"} x"
      })
  void profileThatIsNone_isRefusedUnderItsOwnName(String json) throws IOException {
    Path cookers = Files.createDirectories(folder.resolve("cookers"));
    Files.writeString(cookers.resolve("slipway-pit.json"), json);
    Path cook = cook("cooker: slipway-pit");
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(cook));
    String message = String.valueOf(e.getMessage());
    assertTrue(message.startsWith("slipway-pit.json:1:"), message);
  }
}
