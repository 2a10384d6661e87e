package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/** What a face with memory does over a cook. */
class DryingFaceTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double BOILING = Temperatures.celsius(100);

  /** Superheat of a face that boils under 100 kW/m², the strongest contact here. */
  private static final double SUPERHEAT = 0.01;

  @Test
  void slowCook_staysWetForSevenHours() {
    Cook cook = roast(Cylinder.ofRadius(0.05), 110, 7, 7 * 3600);
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    double water = result.upperFaceWaterAt(result.endTime());
    assertTrue(water > 0.05, () -> "water " + water);
    double rate =
        result.water().evaporatedUpper()
            - Bodies.run(Settings.withDefaults(), roast(Cylinder.ofRadius(0.05), 110, 7, 6 * 3600))
                .water()
                .evaporatedUpper();
    assertEquals(1.25, rate, 0.25, "kg/m² in the seventh hour");
    double surface = Temperatures.toCelsius(result.upperSurface().at(result.endTime()));
    assertTrue(surface > 60 && surface < 75, () -> "surface " + surface);
  }

  @Test
  void smallPieceInAHotOven_driesWithinMinutes() {
    SimulationResult result =
        Bodies.run(Settings.withDefaults(), roast(Cylinder.ofRadius(0.016), 175, 35, 1200));
    double water = result.upperFaceWaterAt(780);
    assertTrue(water < 0.1, () -> "water " + water);
    assertTrue(result.upperFaceWaterAt(60) > 0.6);
    assertTrue(result.upperSurface().at(1200) > result.upperSurface().at(600) + 10);
  }

  @ParameterizedTest
  @ValueSource(doubles = {160, 230, 300})
  void faceThatHoldsWater_isNeverAboveBoiling_andOneThatBoiledDryIs(double plate) {
    SurfaceLaw metal = Touch.ofPlate(Signal.constant(Temperatures.celsius(plate)));
    Stage sear = Stage.allRound("sear", face(100, 8, metal, 1), StageEnd.after(240));
    Cook cook = Cook.of(new Cut(Slab.ofThickness(0.04), SampleCooks.CONSTANT, Bodies.START), sear);
    CookIntegration integration =
        CookIntegration.of(cook, new CookIntegration.Accuracy(0.01, 40, 0.2e-3, 200_000));
    Trajectory trajectory = integration.newTrajectory();
    assertEquals(CookIntegration.End.RULE_MET, integration.run(sear, trajectory));
    Reading surface = integration.reading(Probe.SURFACE);
    double hottestDry = 0;
    for (int i = 1; i < 24_000; i++) {
      double time = 0.01 * i;
      int step = trajectory.stepAt(time);
      double value = trajectory.inStep(surface, step, time);
      if (trajectory.water(true, time) > 0) {
        assertTrue(value <= BOILING + SUPERHEAT, () -> value + " K at " + time + " s");
      } else {
        hottestDry = Math.max(hottestDry, value);
      }
    }
    assertEquals(plate > 200, hottestDry > BOILING + 5, "hottest dry face " + hottestDry);
    assertEquals(plate > 200, Objects.requireNonNull(integration.faceWater(true)).crust() > 1e-4);
  }

  /**
   * Where the model is known to fail: a roast of 12 cm in a fan oven of 200 °C to a core of 52 °C.
   * Roasts lose 20-29 %, juice included; at constant wetness half is computed.
   */
  @Test
  void fanOven_takesTooMuchFromAWetFace_andMostOfWhatIsMeasuredFromOneThatDries() {
    Chamber oven = Chamber.steady(Temperatures.celsius(200), 0.015, PRESSURE);
    SurfaceLaw dry = oven.around(25, 0.9, 0, 1);
    SurfaceLaw wet = Evaporation.of(1, 25, 0.98, oven.vapourPressure(), PRESSURE);
    assertEquals(0.51, lossInRoast(oven.around(25, 0.9, 0.35, 0.98)), 0.02);
    assertEquals(0.22, lossInRoast(DryingFace.ofMeat(dry, wet, 1, PRESSURE)), 0.02);
  }

  private static double lossInRoast(SurfaceLaw law) {
    double radius = 0.06;
    Stage roast =
        Stage.allRound("roast", law, StageEnd.coreRisesTo(Temperatures.celsius(52), 20_000));
    Cut cut = new Cut(Cylinder.ofRadius(radius), SampleCooks.CONSTANT, Temperatures.celsius(5));
    SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, roast));
    return 2 * result.water().evaporatedUpper() / (radius * SampleCooks.CONSTANT.density());
  }

  /**
   * In a rest a crust takes up water, as fast as diffusion in food that is half dry can bring it:
   * how fast hardly matters to the core.
   */
  @Test
  void crustInARest_refillsSlowly_andTheCoreHardlyKnows() {
    SimulationResult fed = searedAndRested(SurfaceWater.ofMeat());
    SurfaceWater meat = SurfaceWater.ofMeat();
    SimulationResult set =
        searedAndRested(new SurfaceWater(meat.capacity(), meat.halfWet(), 0, 0, 60));
    double seared = fed.upperFaceWaterAt(fed.stage("rest").start());
    double tenMinutes = fed.upperFaceWaterAt(fed.stage("rest").start() + 600);
    assertTrue(seared < -0.3, () -> "seared " + seared);
    double share = (tenMinutes - seared) / -seared;
    assertTrue(share > 0.4 && share < 0.8, () -> "refilled " + share);
    assertEquals(
        set.corePeak(set.stage("rest")).temperature(),
        fed.corePeak(fed.stage("rest")).temperature(),
        0.1);
  }

  private static SimulationResult searedAndRested(SurfaceWater inRest) {
    SurfaceLaw metal = Touch.ofPlate(Signal.constant(Temperatures.celsius(260)));
    DryingFace open = face(22, 5, SurfaceLaw.insulated(), 1);
    DryingFace rest =
        new DryingFace(open.dry(), open.wet(), inRest, open.crust(), open.boilingPoint());
    Cook cook =
        Cook.of(
            new Cut(Slab.ofThickness(0.04), SampleCooks.CONSTANT, Temperatures.celsius(42)),
            Stage.allRound("sear", face(100, 8, metal, 1), StageEnd.after(120)),
            Stage.allRound("rest", rest, StageEnd.after(1200)));
    return Bodies.run(Settings.withDefaults(), cook);
  }

  /**
   * A sear that says nothing of water after a gentle heat in which the face dries, and the other
   * way round: what the face holds boils off first, and a crust grows, as where the sear dries it
   * too.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void searWithoutWetness_boilsOffWhatTheFaceHolds(boolean last) {
    SurfaceLaw metal = Touch.ofPlate(Signal.constant(Temperatures.celsius(260)));
    Signal air = Signal.constant(Temperatures.celsius(100));
    SurfaceLaw stated = SurfaceLaw.sum(new Convection(8, air), new Radiation(0.9, air), metal);
    SimulationResult plain = seared(stated, last);
    SimulationResult drying = seared(face(100, 8, metal, 1), last);
    FaceWater water = plain.upperFaceWater().orElseThrow();
    assertEquals(0, water.relativeResidual(), 1e-12);
    assertEquals(0, plain.energy().relativeResidual(), 1e-12);
    assertEquals(SurfaceWater.ofMeat().capacity(), water.initial());
    double end = plain.stage("sear").start() + 240;
    double crust = -plain.upperFaceWaterAt(end);
    assertTrue(crust > 0.3, () -> "missing from the crust " + crust);
    assertEquals(-drying.upperFaceWaterAt(end), crust, 0.1 * crust);
    assertEquals(drying.core().at(end), plain.core().at(end), 0.1);
    assertEquals(drying.upperSurface().at(end), plain.upperSurface().at(end), 2);
    assertEquals(drying.water().evaporatedUpper(), plain.water().evaporatedUpper(), 0.05);
    assertBelowBoilingWhileWet(plain);
  }

  private static SimulationResult seared(SurfaceLaw sear, boolean last) {
    Stage gentle =
        Stage.allRound("gentle", face(110, 6, SurfaceLaw.insulated(), 1), StageEnd.after(1800));
    Stage hot = Stage.allRound("sear", sear, StageEnd.after(240));
    Cut cut = new Cut(Slab.ofThickness(0.04), SampleCooks.CONSTANT, Bodies.START);
    Cook cook = last ? Cook.of(cut, gentle, hot) : Cook.of(cut, hot, gentle);
    return Bodies.run(Settings.withDefaults(), cook);
  }

  private static void assertBelowBoilingWhileWet(SimulationResult result) {
    for (double time = 0; time <= result.endTime(); time += 0.1) {
      if (result.upperFaceWaterAt(time) > 0) {
        double at = time;
        double surface = result.upperSurface().at(time);
        assertTrue(surface <= BOILING + SUPERHEAT, () -> surface + " K at " + at + " s");
      }
    }
  }

  /** What a law states of vapour itself comes from inside as it leaves, and is lost to nobody. */
  @Test
  void vapourThatALawBesideTheWaterStates_isCounted() {
    Signal air = Signal.constant(Temperatures.celsius(60));
    SurfaceLaw stated =
        (temperature, time, flux) -> {
          flux.addHeat(20 * (air.at(time) - temperature) - 2.4e6 * 1e-4, -20);
          flux.addEvaporation(1e-4, 0);
        };
    Stage gentle =
        Stage.allRound("gentle", face(110, 6, SurfaceLaw.insulated(), 1), StageEnd.after(600));
    Cut cut = new Cut(Slab.ofThickness(0.04), SampleCooks.CONSTANT, Bodies.START);
    Stage after = Stage.allRound("after", stated, StageEnd.after(900));
    SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, gentle, after));
    SimulationResult before = Bodies.run(Settings.withDefaults(), Cook.of(cut, gentle));
    assertEquals(0.09, result.water().evaporatedUpper() - before.water().evaporatedUpper(), 1e-12);
    assertEquals(0, result.upperFaceWater().orElseThrow().relativeResidual(), 1e-12);
    assertEquals(0, result.energy().relativeResidual(), 1e-12);
  }

  /** A stated wetness keeps the face below boiling itself, and what it holds as it is. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.6})
  void stageOfConstantWetness_keepsWhatTheFaceHolds(double wetness) {
    SurfaceLaw wet =
        Chamber.steady(Temperatures.celsius(200), 0.03, PRESSURE).around(20, 0.9, wetness, 1);
    Stage gentle =
        Stage.allRound("gentle", face(110, 6, SurfaceLaw.insulated(), 1), StageEnd.after(600));
    Cut cut = new Cut(Slab.ofThickness(0.04), SampleCooks.CONSTANT, Bodies.START);
    Stage after = Stage.allRound("after", wet, StageEnd.after(1800));
    SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, gentle, after));
    assertEquals(
        result.upperFaceWaterAt(result.stage("after").start()),
        result.upperFaceWaterAt(result.endTime()),
        1e-12);
    assertBelowBoilingWhileWet(result);
  }

  @Test
  void bastedFace_coolsAndEvaporatesAgain() {
    Stage hot =
        Stage.allRound("hot", face(175, 35, SurfaceLaw.insulated(), 1), StageEnd.after(1200));
    Stage basted =
        Stage.allRound("basted", hot.upper(), StageEnd.after(600)).with(Wetting.allRound(0.15));
    Cut cut = new Cut(Cylinder.ofRadius(0.02), SampleCooks.CONSTANT, Bodies.START);
    SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, hot, basted));
    FaceWater water = result.upperFaceWater().orElseThrow();
    assertEquals(0.15, water.poured());
    assertEquals(0, water.relativeResidual(), 1e-12);
    assertEquals(0, result.energy().relativeResidual(), 1e-12);
    double before = result.upperFaceWaterAt(1199);
    double after = result.upperFaceWaterAt(1201);
    assertEquals(0.15, after - before, 0.01);
    assertTrue(result.upperSurface().at(1230) < result.upperSurface().at(1199) - 5);
    SimulationResult plain =
        Bodies.run(Settings.withDefaults(), Cook.of(cut, hot, basted.with(Wetting.NONE)));
    double more = result.water().evaporatedUpper() - plain.water().evaporatedUpper();
    assertTrue(more > 0.05 && more < 0.15, () -> "more " + more);
  }

  @Test
  void wrappedFace_losesNoMoreThanTheLeak() {
    SurfaceLaw bare = face(175, 35, SurfaceLaw.insulated(), 1);
    Cut cut = new Cut(Cylinder.ofRadius(0.02), SampleCooks.CONSTANT, Bodies.START);
    for (Wrap wrap : List.of(Wrap.FOIL, Wrap.PAPER, Wrap.TENT)) {
      Stage stage = Stage.allRound("wrapped", bare.under(wrap), StageEnd.after(600));
      SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, stage));
      FaceWater water = result.upperFaceWater().orElseThrow();
      double bareRate = wetRate(35, result.upperSurface().at(600));
      double most = 600 * wrap.leak() * bareRate;
      assertTrue(water.evaporated() <= most, () -> wrap.name() + " " + water.evaporated());
      assertEquals(0, water.relativeResidual(), 1e-12);
    }
  }

  @Test
  void turnedPiece_keepsTheCrustsOfBothFaces() {
    SurfaceLaw metal = Touch.ofPlate(Signal.constant(Temperatures.celsius(260)));
    SurfaceLaw hot = face(100, 8, metal, 1);
    SurfaceLaw open = face(40, 8, SurfaceLaw.insulated(), 1);
    Cook cook =
        Cook.of(
            new Cut(Slab.ofThickness(0.03), SampleCooks.CONSTANT, Bodies.START),
            Stage.ofFaces("one side", open, hot, StageEnd.after(120)),
            Stage.ofFaces("other side", hot, open, StageEnd.after(120)));
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    FaceWater upper = result.upperFaceWater().orElseThrow();
    FaceWater lower = result.lowerFaceWater().orElseThrow();
    assertTrue(upper.crust() > 1e-4);
    assertTrue(lower.crust() > 1e-4);
    assertTrue(lower.fed() > 0);
    assertEquals(upper.evaporated(), result.water().evaporatedUpper(), 1e-12);
  }

  @Test
  void ensembleMember_isTheSingleCook() {
    Cook cook = roast(Cylinder.ofRadius(0.03), 150, 12, 3600);
    SimulationResult single = Bodies.run(Settings.withDefaults(), cook);
    EnsembleResult members =
        EnsembleSimulator.with(Settings.withDefaults()).run(cook, 3, i -> cook);
    for (int i = 0; i < 3; i++) {
      assertEquals(single.work().acceptedSteps(), members.acceptedSteps(i));
    }
  }

  @Test
  void errorOfTheFace_shrinksWithTheAccuracyAskedFor() {
    Cook cook = roast(Cylinder.ofRadius(0.05), 110, 7, 4 * 3600);
    Map<Double, Double> allowed = Map.of(0.01, 2e-3, 0.001, 3e-4);
    double exact = water(cook, 1e-6);
    allowed.forEach((accuracy, tolerance) -> assertEquals(exact, water(cook, accuracy), tolerance));
  }

  @Test
  void lawsThatCarrySomething_areRefusedInsideOthers() {
    SurfaceLaw face = face(100, 8, SurfaceLaw.insulated(), 1);
    assertThrows(IllegalArgumentException.class, () -> SurfaceLaw.sum(face, face));
    assertThrows(IllegalArgumentException.class, () -> DryingFace.ofMeat(face, face, 1, PRESSURE));
  }

  private static double water(Cook cook, double accuracy) {
    return Bodies.run(Settings.withDefaults().withAccuracy(accuracy), cook)
        .water()
        .evaporatedUpper();
  }

  /** Vapour flux of a bare, fully wet face. */
  private static double wetRate(double h, double surfaceTemperature) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(0.03, PRESSURE));
    SurfaceFlux flux = new SurfaceFlux();
    Evaporation.of(1, h, 0.98, vapour, PRESSURE).evaluate(surfaceTemperature, 0, flux);
    return flux.evaporation();
  }

  private static Cook roast(Shape shape, double celsius, double h, double seconds) {
    return Cook.of(
        new Cut(shape, SampleCooks.CONSTANT, Temperatures.celsius(9)),
        Stage.allRound(
            "roast", face(celsius, h, SurfaceLaw.insulated(), 1), StageEnd.after(seconds)));
  }

  private static DryingFace face(double celsius, double h, SurfaceLaw more, double drive) {
    Signal air = Signal.constant(Temperatures.celsius(celsius));
    Signal vapour = Signal.constant(MoistAir.vapourPressure(0.03, PRESSURE));
    return DryingFace.ofMeat(
        SurfaceLaw.sum(new Convection(h, air), new Radiation(0.9, air), more),
        Evaporation.of(1, h, 0.98, vapour, PRESSURE),
        drive,
        PRESSURE);
  }
}
