package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.WaterBalance;

/** What the surface of a cut does where a stage says nothing of its wetness. */
class SurfaceStateTest {

  private static final String DRYING = "wetness: drying";

  /** A slab in gentle heat and a rest. */
  private static String cook(String surface, String wetness) {
    return """
        roastfield: cook/1
        name: surface
        starts: 2026-06-13T18:00
        cut:
          food: pork
          shape: slab
          thickness: 50 mm
          start-temperature: 5 °C
          material: pork loin
        SURFACE
        stages:
          - name: gentle heat
            chamber: {air: 110 °C, humidity-ratio: 0.035, heat-transfer: 8 W/(m²·K)}
            WETNESS
            end: {after: 2 h}
        """
        .replace("SURFACE\n", surface.isEmpty() ? "" : "  surface: {" + surface + "}\n")
        .replace("    WETNESS\n", wetness.isEmpty() ? "" : "    " + wetness + "\n");
  }

  private static CookFile read(String surface, String wetness) {
    return CookTexts.read(cook(surface, wetness));
  }

  private static SimulationResult run(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "patted-dry: true | 1",
        "patted-dry: false | 1",
        "rub: salt | 0.58",
        "fat-cap: 6 mm | 0.25",
        "fat-cap: 0 mm | 1",
        "'rub: salt, fat-cap: 6 mm' | 0.25",
        "'rub: salt, fat-cap: 0 mm' | 0.58"
      })
  void wetnessThatIsNotStated_isThatOfTheSurface(String surface, double drive) {
    FaceSetup face = read(surface, "").stages().get(0).upper();
    assertTrue(face.drying());
    assertEquals(drive, face.surfaceDrive());
    assertEquals(drive, read(surface, DRYING).stages().get(0).upper().surfaceDrive());
  }

  /** Less water to give: less evaporates, and the core is the hotter for it. */
  @Test
  void rubAndFat_evaporateLess_andHeatFaster() {
    SimulationResult bare = run(read("patted-dry: true", ""));
    SimulationResult rubbed = run(read("rub: salt", ""));
    SimulationResult fat = run(read("fat-cap: 6 mm", ""));
    assertTrue(lost(bare) > 1.05 * lost(rubbed), lost(bare) + " and " + lost(rubbed));
    assertTrue(lost(rubbed) > 1.05 * lost(fat), lost(rubbed) + " and " + lost(fat));
    assertTrue(core(fat) > core(rubbed) && core(rubbed) > core(bare));
  }

  private static double lost(SimulationResult result) {
    WaterBalance water = result.water();
    return water.evaporatedUpper();
  }

  private static double core(SimulationResult result) {
    return result.core().at(result.endTime());
  }

  @Test
  void statedWetness_isKept() {
    FaceSetup face = read("fat-cap: 6 mm", "wetness: 0.3").stages().get(0).upper();
    assertTrue(!face.drying());
    assertEquals(0.3, face.wetness());
    assertEquals(
        core(run(read("", "wetness: 0.3"))), core(run(read("fat-cap: 6 mm", "wetness: 0.3"))));
  }

  @Test
  void bareSurface_isTheFaceThatDries() {
    assertEquals(core(run(read("", DRYING))), core(run(read("patted-dry: true", ""))));
  }

  @Test
  void whatIsTaken_isAmongTheFacts_asAssumed() {
    List<Fact> facts = read("rub: salt", "").stages().get(0).facts();
    assertTrue(
        facts.contains(
            new Fact(
                "wetness (not stated, so by the surface)",
                "as it dries and is fed, drive 0.58 (assumed)")),
        facts.toString());
  }

  @Test
  void withoutEither_theWetnessIsMissed() {
    CookFileException e = assertThrows(CookFileException.class, () -> read("", ""));
    assertEquals(
        "cook.yaml:11:5: found no key \"wetness\", expected it among these keys",
        String.valueOf(e.getMessage()));
  }
}
