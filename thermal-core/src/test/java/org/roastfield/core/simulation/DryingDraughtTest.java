package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.AirExchange;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.AirVapour;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.units.Temperatures;

/** Faces that dry in air which their own vapour makes more humid, eqs. (58), (59), (94). */
class DryingDraughtTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  /** The pork loin of a supper over a small fire: a draught of 1 g/s of dry air. */
  private static final Draught FIRE = new Draught(1e-3, 0.008, 2e-5);

  private static final double AREA = 0.1;

  @Test
  void draught_makesTheAirAsHumidAsItsBalance() {
    AirLoad load = new AirLoad(FIRE.load(AREA), 0);
    Simulator fine = Simulator.with(Settings.withDefaults().withAccuracy(1e-5));
    SimulationResult result = fine.run(loin(120, FIRE.humidityRatio(), load, 3600)).orElseThrow();
    SimulationResult before = fine.run(loin(120, FIRE.humidityRatio(), load, 3590)).orElseThrow();
    double rate = (result.water().evaporatedUpper() - before.water().evaporatedUpper()) / 10;
    double humidity = result.humidityRatio().orElseThrow();
    assertEquals(FIRE.humidityRatio(AREA * rate), humidity, 1e-3 * humidity);
    assertTrue(humidity > FIRE.humidityRatio() + 0.01, () -> "humidity " + humidity);
  }

  /** Without exchange all vapour stays: the air holds what left the face. */
  @Test
  void closedChamber_holdsAllTheVapour() {
    double held = 0.8;
    SimulationResult result = run(loin(175, 0.01, new AirLoad(1e12, held), 1200));
    double gained = held * (result.humidityRatio().orElseThrow() - 0.01);
    double left = result.water().evaporatedUpper();
    assertTrue(left > 0.1, () -> "evaporated " + left);
    assertEquals(left, gained, 1e-9 * left);
    assertEquals(0, result.upperFaceWater().orElseThrow().relativeResidual(), 1e-12);
  }

  /** A dry cut in air of another humidity: w = w₂ + (w₁ − w₂) exp(−t/τ), τ = load · held. */
  @Test
  void fillingAir_relaxesWithTheTimeOfItsExchange() {
    AirLoad air = new AirLoad(500, 0.6);
    Stage first = Stage.allRound("moist", dry(0.02, air), StageEnd.after(60));
    Stage second = Stage.allRound("moister", dry(0.05, air), StageEnd.after(400));
    Cook cook = Cook.of(cut(Cylinder.ofRadius(0.05)), first, second);
    double humidity = run(cook).humidityRatio().orElseThrow();
    double exact = 0.05 - 0.03 * StrictMath.exp(-400 / air.exchangeTime());
    assertEquals(exact, humidity, 2e-5);
  }

  /** Air that is exchanged within a second is in balance. */
  @Test
  void quickExchange_isBalanceAtEachMoment() {
    SimulationResult balance = run(loin(175, 0.01, new AirLoad(100, 0), 2400));
    SimulationResult quick = run(loin(175, 0.01, new AirLoad(100, 0.01), 2400));
    assertEquals(balance.core().at(2400), quick.core().at(2400), 0.01);
    assertEquals(
        balance.water().evaporatedUpper(),
        quick.water().evaporatedUpper(),
        1e-3 * balance.water().evaporatedUpper());
  }

  /**
   * Balance at each moment is enough for a pit: 0.15 m³ through which 1.5 g/s are drawn are
   * exchanged in some 90 s, and the core of a loin differs by less than 0.05 K. Small blocks in an
   * oven of 60 l that exchanges its air in 5 min are another matter.
   */
  @Test
  void balanceAtEachMoment_isEnoughForAPit_notForASmallOvenWithQuickCooks() {
    double density = 0.9;
    double pit = AREA / 1.5e-3;
    SimulationResult moment = run(loin(120, 0.02, new AirLoad(pit, 0), 7200));
    SimulationResult full = run(loin(120, 0.02, new AirLoad(pit, 0.15 * density / AREA), 7200));
    assertEquals(moment.core().at(7200), full.core().at(7200), 0.05);
    double held = 0.06 * 0.78 / 0.034;
    double oven = 300 / held;
    double balanced = run(block(new AirLoad(oven, 0))).core().at(780);
    double filling = run(block(new AirLoad(oven, held))).core().at(780);
    assertTrue(Math.abs(filling - balanced) > 1, () -> "cores " + filling + " and " + balanced);
  }

  /** The heat and the water of the cut close whatever the air does, over stages that change it. */
  @Test
  void stagesOfOtherAir_conserveHeatAndWater() {
    List<Stage> stages = new ArrayList<>();
    double[][] airs = {{200, 0}, {800, 0.5}, {0, 0}, {50, 2}};
    for (double[] air : airs) {
      stages.add(
          Stage.allRound(
              "stage " + stages.size(),
              face(150, 0.02, new AirLoad(air[0], air[1])),
              StageEnd.after(500)));
    }
    SimulationResult result = run(new Cook(cut(Cylinder.ofRadius(0.03)), stages, List.of()));
    assertEquals(0, result.energy().relativeResidual(), 1e-12);
    assertEquals(0, result.upperFaceWater().orElseThrow().relativeResidual(), 1e-12);
  }

  /** By correlation too, and less water leaves the more the air is loaded. */
  @Test
  void load_slowsTheLossByCorrelationToo() {
    double free = correlated(AirLoad.NONE);
    double loaded = correlated(new AirLoad(300, 0));
    double heavier = correlated(new AirLoad(1500, 0));
    assertTrue(
        free > 1.05 * loaded && loaded > 1.05 * heavier,
        () -> free + ", " + loaded + ", " + heavier);
  }

  @Test
  void airThatIsHeldButNotDrawn_isRefused() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> new AirLoad(0, 1));
    assertTrue(String.valueOf(e.getMessage()).startsWith("load of air that is held"));
    DryingFace alone =
        DryingFace.ofMeat(SurfaceLaw.insulated(), SurfaceLaw.insulated(), 1, PRESSURE);
    assertThrows(IllegalArgumentException.class, () -> alone.into(new AirLoad(1, 0)));
  }

  private static double correlated(AirLoad load) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(130), 0.015, PRESSURE);
    FilmCoefficient film = FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.1, PRESSURE);
    AirVapour wet =
        new AirVapour(
            AirExchange.of(film, chamber.airTemperature(), 1, 0.98, chamber.vapourPressure()));
    DryingFace face =
        DryingFace.ofMeat(chamber.around(film, 0.9, 0, 1), wet, 1, PRESSURE).into(load);
    Cook cook =
        Cook.of(cut(Cylinder.ofRadius(0.05)), Stage.allRound("heat", face, StageEnd.after(3600)));
    return run(cook).water().evaporatedUpper();
  }

  private static Cook loin(double oven, double humidity, AirLoad load, double time) {
    return Cook.of(
        cut(Cylinder.ofRadius(0.048)),
        Stage.allRound("gentle", face(oven, humidity, load), StageEnd.after(time)));
  }

  private static Cook block(AirLoad load) {
    Stage stage = Stage.allRound("oven", face(175, 0.01, load), StageEnd.after(780));
    return Cook.of(cut(Compact.ofBox(0.026, 0.05, 0.093)), stage);
  }

  private static Cut cut(Shape shape) {
    return new Cut(shape, Materials.named("pork loin").material(), Temperatures.celsius(8));
  }

  private static DryingFace face(double oven, double humidity, AirLoad load) {
    Chamber chamber = Chamber.steady(Temperatures.celsius(oven), humidity, PRESSURE);
    Evaporation wet = Evaporation.of(1, 15, 0.98, chamber.vapourPressure(), PRESSURE);
    return DryingFace.ofMeat(chamber.around(15, 0.9, 0, 1), wet, 1, PRESSURE).into(load);
  }

  private static DryingFace dry(double humidity, AirLoad load) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidity, PRESSURE));
    return new DryingFace(
        SurfaceLaw.insulated(),
        Evaporation.of(1, 0, 0.98, vapour, PRESSURE),
        SurfaceWater.none(),
        face(60, humidity, load).crust(),
        372,
        load);
  }

  private static SimulationResult run(Cook cook) {
    return Simulator.withDefaults().run(cook).orElseThrow();
  }
}
