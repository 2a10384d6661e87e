package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.SurfaceFlux;

/** Probes with errors, wraps, boards, boxes, lids, draughts and turns at given times. */
class WholeCookFileTest {

  private static final String TIP = "{name: tip, depth: 15 mm}";
  private static final String PIT =
      "chamber: {air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)}";
  private static final String REST =
      """
      chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}
          wetness: 0
      """
          .stripTrailing();
  private static final String PULL = "end: {core: 46 °C, at-latest: 3 h}";
  private static final String LID =
      "lid: {open-air: 50 °C, openings: [{at: 2026-06-13T18:20, for: 90 s}]}\n    ";
  private static final String SIZED = "thickness: 40 mm\n  length: 200 mm\n  width: 100 mm";
  private static final String DRAUGHT =
      "chamber: {air: 110 °C, heat-transfer: 6 W/(m²·K), draught: {fuel: charcoal, burn-rate: 0.25"
          + " kg/h, excess-air: 3}}";

  @Test
  void probe_withAllItsErrors() {
    CookFile file =
        with(
            TIP,
            "{name: tip, off-centre: -3 mm, response: 40 s, stem: {fin-length: 8 mm, excess: 20 K,"
                + " inserted: 60 mm}, bias: 0.3 K, resolution: 0.5 K}");
    Probe probe = file.cook().probes().get(0);
    assertEquals(-0.003, probe.offset(), 1e-12);
    assertEquals(40, probe.instrument().responseTime(), 0);
    assertEquals(0.008, probe.instrument().stem().finLength(), 1e-12);
    assertEquals(20, probe.instrument().stem().entryExcess(), 0);
    assertEquals(0.06, probe.instrument().stem().inserted(), 1e-12);
    assertEquals(0.3, probe.instrument().bias(), 0);
    assertEquals(0.5, probe.instrument().resolution(), 0);
    assertTrue(file.facts().contains(new Fact("probe tip, response", "40 s")));
    assertTrue(file.facts().contains(new Fact("probe tip", "-3 mm off the core")));
  }

  @Test
  void wetnessDrying_isAFaceThatHoldsWater_andCanBeBasted() {
    String drying =
        REST.replace("wetness: 0", "wetness: drying")
            .replace("air: 20 °C", "air: 20 °C, humidity-ratio: 0.008");
    CookFile file = with(REST, drying + "\n    baste: 120 g/m²");
    Stage rest = file.cook().stages().get(1);
    assertTrue(rest.upper().holdsWater());
    assertEquals(0.12, rest.wetting().upper(), 1e-12);
    SimulationResult result = Simulator.withDefaults().run(file.cook()).orElseThrow();
    assertEquals(0.12, result.upperFaceWater().orElseThrow().poured(), 1e-12);
    assertEquals(0, result.upperFaceWater().orElseThrow().relativeResidual(), 1e-12);
    assertTrue(file.stages().get(1).facts().contains(new Fact("baste", "120 g/m²")));
  }

  @Test
  void wetnessDrying_refusesWhatItCannotHaveBesideIt() {
    String drying =
        REST.replace("wetness: 0", "wetness: drying")
            .replace("air: 20 °C", "air: 20 °C, humidity-ratio: 0.008");
    assertTrue(
        message(REST, REST + "\n    baste: 120 g/m²")
            .endsWith("no water beside a face of constant wetness: say wetness: drying"));
    assertTrue(
        message(REST, drying.replace("drying", "dring"))
            .endsWith("found \"dring\", expected a share, such as 0.3 or 30 %, or drying"));
    assertTrue(
        message(REST, drying + "\n    baste: wet")
            .endsWith("expected an amount of water, such as 100 g/m² (g/m², kg/m²)"));
  }

  private static String message(String piece, String by) {
    return String.valueOf(
        assertThrows(CookFileException.class, () -> with(piece, by)).getMessage());
  }

  @Test
  void wrap_changesTheExchangeOfItsStage() {
    CookFile bare = with(REST, REST);
    CookFile foil = with(REST, REST + "\n    wrap: foil");
    double lossBare = flux(bare.cook().stages().get(1), 330).heatFlux();
    double lossFoil = flux(foil.cook().stages().get(1), 330).heatFlux();
    assertTrue(lossFoil / lossBare > 0.3 && lossFoil / lossBare < 0.45);
  }

  @Test
  void boxAndBoard_areConvectionAndContact() {
    Stage box = with(REST, "box: {room: 20 °C}").cook().stages().get(1);
    assertEquals(-1 * (330 - 293.15), flux(box, 330).heatFlux(), 1e-9);
    Stage loose = with(REST, "box: {room: 20 °C, loss: 1.4 W/(m²·K)}").cook().stages().get(1);
    assertEquals(-1.4 * (330 - 293.15), flux(loose, 330).heatFlux(), 1e-9);
    Stage board =
        with(REST, REST + "\n    faces: {upper: {}, lower: {board: {temperature: 22 °C}}}")
            .cook()
            .stages()
            .get(1);
    SurfaceFlux lower = new SurfaceFlux();
    board.lower().evaluate(330, 0, lower);
    assertEquals(-Contact.BOARD_CONDUCTANCE * (330 - 295.15), lower.heatFlux(), 1e-9);
  }

  @Test
  void lid_cutsItsStageAndCoolsTheSurface() {
    CookFile opened = with(PULL, LID + PULL);
    List<Stage> stages = opened.cook().stages();
    assertEquals(4, stages.size());
    assertEquals(StageEnd.at(1200), stages.get(0).end());
    assertEquals(StageEnd.at(1290), stages.get(1).end());
    assertEquals(3, opened.stages().get(0).stageCount());
    SimulationResult with = Simulator.withDefaults().run(opened.cook()).orElseThrow();
    SimulationResult without = Simulator.withDefaults().run(with(PULL, PULL).cook()).orElseThrow();
    assertTrue(with.upperSurface().at(1290) < without.upperSurface().at(1290) - 2);
    assertTrue(with.stage("gentle heat").end() > without.stage("gentle heat").end() + 20);
  }

  @Test
  void draught_givesTheHumidityOfFireAndMeat() {
    String sized = CookTexts.spoilt("thickness: 40 mm", SIZED);
    CookFile given = CookTexts.read(sized);
    CookFile computed = CookTexts.read(sized.replace(PIT, DRAUGHT));
    FaceSetup face = computed.stages().get(0).upper();
    assertEquals(0.008 + 0.31 / (3 * 10.3 + 0.69), face.humidityRatio(), 1e-9);
    double flow = 0.25 / 3600 * (3 * 10.3 + 0.69);
    assertEquals(2 * 0.02 / flow, face.cover().load().load(), 1e-9);
    assertTrue(
        computed.stages().get(0).facts().stream()
            .anyMatch(fact -> fact.subject().equals("humidity ratio without the cut")));
    double free = flux(given.cook().stages().get(0), 330).evaporation();
    assertTrue(flux(computed.cook().stages().get(0), 330).evaporation() < 1.2 * free);
  }

  @Test
  void turnsAtTimes_flipTheSlab() {
    String sear =
        PIT
            + "\n    contact: {plate: 240 °C, conductance: 300 W/(m²·K)}"
            + "\n    turns: {at: [60 s, 100 s], until: 150 s}";
    CookFile file = CookTexts.read(CookTexts.spoilt(PIT, sear).replace("    " + PULL + "\n", ""));
    List<Stage> stages = file.cook().stages();
    assertEquals(StageEnd.after(40), stages.get(1).end());
    assertEquals(stages.get(0).upper(), stages.get(1).lower());
    assertEquals("turned after 60 s, 100 s, until 150 s", file.stages().get(0).end());
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments(TIP, "{name: tip, depth: 15 mm, off-centre: 2 mm}", "either depth or off-centre"),
        arguments(TIP, "{name: tip, off-centre: 25 mm}", "a value from -20 mm to 20 mm"),
        arguments(
            TIP,
            "{name: tip, depth: 5 mm, stem: {diameter: 6 mm}}",
            "insertion of probe tip must be at least 1.5 fin lengths"),
        arguments(
            TIP,
            "{name: tip, depth: 15 mm, stem: {diameter: 3 mm, fin-length: 8 mm}}",
            "either diameter or fin-length"),
        arguments(
            TIP,
            "{name: tip, depth: 15 mm, stem: {diameter: 3 mm, inserted: 14 mm}}",
            "inserted of probe tip must be at least the depth of its tip, 0.015 m, was 0.014 m"),
        arguments(
            TIP,
            "{name: tip, depth: 15 mm, bias: 0.3 °C}",
            "a temperature difference in K, such as 0.5 K"),
        arguments(TIP, "{name: tip, depth: 15 mm, response: -1 s}", "a value from 0 s to 3600 s"),
        arguments(REST, REST + "\n    wrap: foyl", "nearest known: foil"),
        arguments(REST, REST + "\n    box: {room: 20 °C}", "no chamber beside box"),
        arguments(REST, "box: {room: 20 °C, loss: 9 W/(m²·K)}", "a value from 0.1 W/(m²·K) to 5"),
        arguments(
            REST,
            REST
                + "\n    board: {temperature: 20 °C}"
                + "\n    contact: {plate: 20 °C, conductance: 20 W/(m²·K)}",
            "either contact or board"),
        arguments(PULL, LID.replace("90 s", "2 s") + PULL, "a value from 5 s to 3600 s"),
        arguments(PULL, LID.replace("18:20", "17:20") + PULL, "a clock time not before"),
        arguments(
            PULL, LID + "end: {after: 2 h}", "end of a stage that is cut must not be a duration"),
        arguments(PIT, DRAUGHT, "the size of the whole cut beside a draught"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void mistakes_areNamedWithWhatWasExpected(String piece, String by, String expected) {
    String text = CookTexts.spoilt(piece, by);
    CookFileException e = assertThrows(CookFileException.class, () -> CookTexts.read(text));
    assertTrue(String.valueOf(e.getMessage()).contains(expected), e::getMessage);
  }

  @Test
  void endRule_takesNoProbeThatErrs() {
    String text =
        CookTexts.spoilt(TIP, "{name: tip, depth: 15 mm, bias: 0.3 K}")
            .replace(PULL, "end: {probe: tip, reaches: 46 °C, at-latest: 3 h}");
    CookFileException e = assertThrows(CookFileException.class, () -> CookTexts.read(text));
    assertTrue(String.valueOf(e.getMessage()).contains("rules wait for true temperatures"));
  }

  private static CookFile with(String piece, String by) {
    return CookTexts.read(CookTexts.spoilt(piece, by));
  }

  private static SurfaceFlux flux(Stage stage, double surfaceTemperature) {
    SurfaceFlux flux = new SurfaceFlux();
    stage.upper().evaluate(surfaceTemperature, 0, flux);
    return flux;
  }
}
