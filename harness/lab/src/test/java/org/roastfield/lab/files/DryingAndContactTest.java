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
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.surface.Touch;

/** Faces that dry beside everything else, and contact from its beginning. */
class DryingAndContactTest {

  private static final String GENTLE =
      """
      chamber: {air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)}
          wetness: 0.3
          end: {core: 46 °C, at-latest: 3 h}
      """
          .stripTrailing();
  private static final String DRYING = GENTLE.replace("0.3\n", "drying\n");
  private static final String STATED = "heat-transfer: 6 W/(m²·K)";
  private static final String STILL = "heat-transfer: still air";
  private static final String LID =
      "lid: {open-air: 50 °C, openings: [{at: 2026-06-13T18:20, for: 90 s}]}\n    end:";
  private static final double METAL = 503.15;

  @ParameterizedTest
  @ValueSource(strings = {STATED, STILL, "heat-transfer: {wind: 0.4 m/s}"})
  void dryingFaceUnderALid_conservesHeatAndWater(String transfer) {
    CookFile file = gentle(DRYING.replace("end:", LID).replace(STATED, transfer));
    assertEquals(4, file.cook().stages().size());
    SimulationResult result = Simulator.withDefaults().run(file.cook()).orElseThrow();
    assertEquals(0, result.energy().relativeResidual(), 1e-12);
    assertEquals(0, result.upperFaceWater().orElseThrow().relativeResidual(), 1e-12);
    SimulationResult closed =
        Simulator.withDefaults().run(gentle(DRYING.replace(STATED, transfer)).cook()).orElseThrow();
    double cooled = closed.upperSurface().at(1290) - result.upperSurface().at(1290);
    assertTrue(cooled > 2, () -> "cooled by " + cooled);
  }

  /** A fresh face of meat has the exchange of one that is as wet as its water makes it. */
  @ParameterizedTest
  @ValueSource(strings = {STATED, STILL})
  void freshFaceThatDries_isOneOfItsWetness(String transfer) {
    SurfaceWater water = SurfaceWater.ofMeat();
    double wetness = water.capacity() / (water.capacity() + water.halfWet());
    SurfaceLaw drying = law(DRYING.replace(STATED, transfer));
    SurfaceLaw constant = law(GENTLE.replace("0.3\n", wetness + "\n").replace(STATED, transfer));
    for (double face : new double[] {310, 325, 340}) {
      SurfaceFlux one = flux(drying, face, 0);
      SurfaceFlux other = flux(constant, face, 0);
      assertEquals(other.evaporation(), one.evaporation(), 1e-12);
      assertEquals(other.heatFlux(), one.heatFlux(), 0.002 * Math.abs(other.heatFlux()));
    }
  }

  @Test
  void contactWithoutAConductance_isThatOfAPlate_orOfBars() {
    SurfaceLaw plate = contact("{plate: 230 °C}").from(100);
    SurfaceLaw bars = contact("{plate: 230 °C, share: 22 %}").from(100);
    Signal metal = Signal.constant(METAL);
    for (double time : new double[] {100, 130, 400}) {
      assertEquals(
          flux(Touch.ofPlate(metal).from(100), 350, time).heatFlux(),
          flux(plate, 350, time).heatFlux(),
          1e-6);
      assertEquals(
          flux(Touch.ofBars(metal).from(100), 350, time).heatFlux(),
          flux(bars, 350, time).heatFlux() - 0.78 * bare().heatFlux(),
          1e-6);
    }
  }

  @Test
  void contactOverTime_takesEveryNumberStated() {
    CookFile file =
        seared(
            "{plate: 230 °C, conductance: 300 W/(m²·K), first-conductance: 700 W/(m²·K),"
                + " settling-time: 20 s, plate-drop: 30 K, cooling-time: 2 min}");
    ContactSetup metal = file.stages().get(0).lower().contact().orElseThrow();
    assertEquals(new ContactSetup.Settling(700, 20, 30, 120), metal.settling().orElseThrow());
    assertEquals("700 to 300 W/(m²·K) in 20 s, 30 K cooler in 120 s", metal.words());
    assertTrue(file.stages().get(0).facts().contains(new Fact("contact over time", metal.words())));
    assertEquals(
        new ContactSetup(METAL, 300, 1),
        seared("{plate: 230 °C, conductance: 300 W/(m²·K)}")
            .stages()
            .get(0)
            .lower()
            .contact()
            .orElseThrow());
  }

  /**
   * Each turn puts the face on hot metal anew: the heat of equal legs from equal faces is equal.
   */
  @Test
  void turnedSear_beginsItsContactAtEachTurn() {
    CookFile file = seared("{plate: 230 °C}");
    List<Stage> legs = file.cook().stages().subList(0, 4);
    assertEquals("gentle heat, turn 2", legs.get(1).name());
    double first = flux(legs.get(0).lower().from(0), 350, 0).heatFlux();
    double later = flux(legs.get(3).upper().from(180), 350, 180).heatFlux();
    assertEquals(first, later, 1e-9);
    SimulationResult settled =
        Simulator.withDefaults()
            .run(seared("{plate: 230 °C, conductance: 250 W/(m²·K)}").cook())
            .orElseThrow();
    SimulationResult begun = Simulator.withDefaults().run(file.cook()).orElseThrow();
    double more = begun.lowerSurface().at(5) - settled.lowerSurface().at(5);
    assertTrue(more > 10, () -> "warmer by " + more);
  }

  static Stream<Arguments> mistakes() {
    String sear = sear("{plate: 230 °C}");
    return Stream.of(
        arguments(
            sear.replace("{plate: 230 °C}", "{plate: 230 °C, settling: 3 s}"),
            "19:30: found \"settling\", expected one of plate, conductance, share,"
                + " first-conductance, settling-time, plate-drop, cooling-time"),
        arguments(
            sear.replace("{plate: 230 °C}", "{plate: 230 °C, plate-drop: 400 K}"),
            "19:42: found \"400 K\", expected a value from 0 K to 300 K"),
        arguments(
            sear.replace("{plate: 230 °C}", "{plate: 230 °C, settling-time: 0 s}"),
            "19:45: found \"0 s\", expected a value from 1 s to 3600 s"),
        arguments(
            sear.replace("{plate: 230 °C}", "{plate: 230 °C, first-conductance: 500 K}"),
            "19:49: found \"500 K\", expected a coefficient, such as 7 W/(m²·K)"),
        arguments(
            DRYING.replace(
                ", humidity-ratio: 0.03", ", draught: {air-flow: 1 g/s, air-volume: 60 kg}"),
            "a volume, such as 60 L (L, m³)"));
  }

  /** The vapour of a face that dries counts in the draught, and slows its loss. */
  @Test
  void faceThatDries_makesItsDraughtMoreHumid() {
    double free = evaporated(DRYING.replace("0.03", "0.01"));
    String drawn =
        DRYING.replace(
            "humidity-ratio: 0.03", "draught: {air-flow: 0.2 g/s, outside-humidity-ratio: 0.01}");
    double loaded = evaporated(drawn);
    double filling = evaporated(drawn.replace("0.01}", "0.01, air-volume: 200 L}"));
    double crowded = evaporated(drawn.replace("0.01}", "0.01, pieces: 4}"));
    assertTrue(
        free > 1.02 * filling && filling > 1.001 * loaded && loaded > 1.02 * crowded,
        () -> free + ", " + filling + ", " + loaded + ", " + crowded);
  }

  private static double evaporated(String stage) {
    Cook cook = gentle(stage).cook();
    Cook shortened =
        Cook.of(
            cook.cut(),
            new Stage(
                "drying",
                cook.stages().get(0).upper(),
                cook.stages().get(0).lower(),
                StageEnd.after(1800)));
    return Simulator.withDefaults().run(shortened).orElseThrow().water().evaporatedUpper();
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void mistake_isSaidWithItsPlace(String stage, String message) {
    CookFileException e = assertThrows(CookFileException.class, () -> gentle(stage));
    assertTrue(String.valueOf(e.getMessage()).contains(message), e::getMessage);
  }

  private static CookFile gentle(String stage) {
    String sized = "thickness: 40 mm\n  length: 200 mm\n  width: 100 mm";
    return CookTexts.read(CookTexts.spoilt(GENTLE, stage).replace("thickness: 40 mm", sized));
  }

  private static CookFile seared(String contact) {
    return gentle(sear(contact));
  }

  private static String sear(String contact) {
    return "chamber: {air: 110 °C, heat-transfer: 6 W/(m²·K)}\n    wetness: 0\n    contact: "
        + contact
        + "\n    turns: {count: 4, every: 60 s}";
  }

  private static SurfaceLaw contact(String text) {
    return seared(text).cook().stages().get(0).lower();
  }

  private static SurfaceFlux bare() {
    return flux(seared("{plate: 230 °C}").cook().stages().get(0).upper(), 350, 0);
  }

  private static SurfaceLaw law(String stage) {
    return gentle(stage).cook().stages().get(0).upper();
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face, double time) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, time, flux);
    return flux;
  }
}
