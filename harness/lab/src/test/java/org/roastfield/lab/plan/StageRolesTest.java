package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.lab.files.CookFileReader;

/** What stages are for, by how hot they are and how they end. */
class StageRolesTest {

  private static final String GENTLE =
      "{name: %s, chamber: {air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)},"
          + " wetness: 0.3, end: {core: 46 °C, at-latest: 3 h}}";
  private static final String TIMED =
      "{name: %s, chamber: {air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)},"
          + " wetness: 0.3, end: {after: 10 min}}";
  private static final String SEAR =
      "{name: %s, chamber: {air: 150 °C, heat-transfer: 9 W/(m²·K)}, wetness: 0,"
          + " contact: {plate: 260 °C}, end: {after: 2 min}}";
  private static final String OVEN =
      "{name: %s, chamber: {air: 230 °C, heat-transfer: 9 W/(m²·K)}, wetness: 0, end: {after: 5 min}}";
  private static final String REST =
      "{name: %s, chamber: {air: 22 °C, heat-transfer: 6 W/(m²·K)}, wetness: 0, end: {after: 9 min}}";

  private static String roles(String letters) {
    StringBuilder stages = new StringBuilder();
    for (int i = 0; i < letters.length(); i++) {
      String stage =
          switch (letters.charAt(i)) {
            case 'g' -> GENTLE;
            case 't' -> TIMED;
            case 's' -> SEAR;
            case 'o' -> OVEN;
            default -> REST;
          };
      stages.append("  - ").append(String.format(stage, "stage" + i)).append('\n');
    }
    String text =
        """
        roastfield: cook/1
        name: Steak
        starts: 2026-06-13T18:00
        cut: {food: beef, shape: slab, thickness: 60 mm, start-temperature: 5 °C, material: beef loin}
        stages:
        """
            + stages;
    return StageRoles.of(CookFileReader.parse("cook.yaml", text.getBytes(StandardCharsets.UTF_8)))
        .stream()
        .map(role -> role.name().substring(0, 1))
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource({
    "gsr, GSR",
    "gr, GR",
    "sgr, SGR",
    "sgsr, SGSR",
    "gtsr, GPSR",
    "tgsr, GGSR",
    "gosr, GSSR",
    "gsrr, GSRH"
  })
  void stages_areForWhatTheirHeatAndEndSay(String stages, String expected) {
    assertEquals(expected, roles(stages));
  }

  @ParameterizedTest
  @CsvSource({"tsr", "sr", "gs"})
  void cookThatCannotBePlanned_isRefused(String stages) {
    assertThrows(UnplannableException.class, () -> roles(stages));
  }
}
