package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/** What is stored came in through the faces, to round-off. */
class ConservationTest {

  private static final double ROUND_OFF = 1e-12;

  static Stream<Arguments> plainCooks() {
    return FluxIntegralTest.plainCooks();
  }

  static Stream<Cook> stagedCooks() {
    return Stream.concat(
        FluxIntegralTest.stagedCooks().stream(),
        Stream.of(
            SampleCooks.roast(Slab.ofThickness(0.05), SampleCooks.CONSTANT, 0.12),
            SampleCooks.turned(SampleCooks.CONSTANT, 0.3),
            SampleCooks.turned(SampleCooks.LOIN, 0.3)));
  }

  @ParameterizedTest
  @MethodSource("plainCooks")
  void heat_isConservedForEachLawShapeAndMaterial(
      SampleCooks.NamedLaw named, Shape shape, Material material) {
    assertConserved(SampleCooks.plain(shape, material, named.law()), Settings.withDefaults());
  }

  @ParameterizedTest
  @MethodSource("stagedCooks")
  void heat_isConservedAcrossStagesEventsAndTurns(Cook cook) {
    assertConserved(cook, Settings.withDefaults());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 0.1, 1e-3, 1e-6})
  void heat_isConservedAtEveryAccuracy(double accuracy) {
    Shape shape = SampleCooks.shapes().get(2);
    assertConserved(SampleCooks.roast(shape, SampleCooks.LOIN), Bodies.accuracy(accuracy));
    assertConserved(SampleCooks.roast(shape, SampleCooks.BRISKET), Bodies.accuracy(accuracy));
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 7, 41, 300})
  void heat_isConservedOnEveryGrid(int cells) {
    Settings settings = Settings.withDefaults().withCells(cells);
    assertConserved(SampleCooks.roast(SampleCooks.shapes().get(1), SampleCooks.LOIN), settings);
    assertConserved(SampleCooks.turned(SampleCooks.LOIN), settings);
    assertConserved(SampleCooks.turned(SampleCooks.BRISKET), settings);
  }

  @Test
  void insulatedCut_keepsItsTemperatureAndTurnsNothingOver() {
    Cook cook = SampleCooks.plain(SampleCooks.shapes().get(0), SampleCooks.LOIN, insulated());
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    assertEquals(cook.cut().startTemperature(), result.core().at(result.endTime()), 1e-9);
    assertEquals(0, result.energy().turnover(), 1e-6);
  }

  @Test
  void oneFaceInsulated_takesNothingThroughIt() {
    Cut cut = new Cut(Slab.ofThickness(0.04), Bodies.CONSTANT, Bodies.START);
    SurfaceLaw heated = new Convection(30, Signal.constant(Bodies.START + 80));
    Stage stage = Stage.ofFaces("heat", heated, insulated(), StageEnd.after(1800));
    EnergyBalance energy = Bodies.run(Settings.withDefaults(), Cook.of(cut, stage)).energy();
    assertEquals(0, energy.throughLower(), 1e-9 * energy.throughUpper());
    assertEquals(energy.stored(), energy.throughUpper(), 1e-12 * energy.turnover());
  }

  @Test
  void storedHeat_isHeatCapacityTimesTheRiseOfAnEvenCut() {
    double hours = 20 * 3600;
    SurfaceLaw law = new Convection(60, Signal.constant(Bodies.START + 50));
    Shape shape = SampleCooks.shapes().get(2);
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-6), Bodies.oneStage(shape, law, hours));
    double expected = Bodies.DENSITY * Bodies.HEAT_CAPACITY * shape.volumePerArea() * 50;
    assertEquals(expected, result.energy().stored(), 1e-6 * expected);
  }

  @Test
  void heatOfEvaporation_isLatentHeatTimesTheWater() {
    SampleCooks.NamedLaw wet = SampleCooks.laws().get(5);
    Cook cook = SampleCooks.plain(SampleCooks.shapes().get(0), SampleCooks.CONSTANT, wet.law());
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-5), cook);
    double water = result.water().evaporatedUpper();
    double coldest = result.upperSurface().at(result.endTime());
    double latentLow = MoistAir.latentHeat(cook.cut().startTemperature());
    double latentHigh = MoistAir.latentHeat(coldest);
    double perKilogram = -result.energy().throughUpper() / water;
    assertTrue(
        perKilogram >= Math.min(latentLow, latentHigh) - 1
            && perKilogram <= Math.max(latentLow, latentHigh) + 1,
        () -> "heat per kilogram " + perKilogram);
  }

  private static SurfaceLaw insulated() {
    return SurfaceLaw.insulated();
  }

  private static void assertConserved(Cook cook, Settings settings) {
    SimulationResult result = Bodies.run(settings, cook);
    double residual = result.energy().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual " + residual);
    assertTrue(Math.abs(result.water().upper().relativeResidual()) <= ROUND_OFF);
    assertTrue(Math.abs(result.water().lower().relativeResidual()) <= ROUND_OFF);
  }
}
