package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.units.Temperatures;

/** A round cut whose surface dries, rolled over a hot band, eq. (57). */
class RolledFaceTest {

  private static final double ROUND_OFF = 1e-12;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double QUARTER = 0.25;
  private static final Chamber PIT = Chamber.steady(Temperatures.celsius(110), 0.02, PRESSURE);

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.05, QUARTER, 0.6, 1})
  void anyShareOnTheBand_conservesHeatAndWater(double share) {
    SimulationResult result = run(SurfaceLaw.shared(share, band(240), inAir()));
    assertEquals(0, result.energy().relativeResidual(), ROUND_OFF);
    assertEquals(0, water(result).relativeResidual(), ROUND_OFF);
  }

  @Test
  void bandThatTakesNoShare_changesNothing() {
    SimulationResult rolled = run(SurfaceLaw.shared(0, band(240), inAir()));
    SimulationResult still = run(inAir());
    assertEquals(still.core().at(1200), rolled.core().at(1200), 1e-9);
    assertEquals(water(still).held(), water(rolled).held(), 1e-9);
  }

  @Test
  void hotBand_warmsTheCoreAndBoilsTheFaceDry() {
    SimulationResult rolled = run(SurfaceLaw.shared(QUARTER, band(240), inAir()));
    SimulationResult still = run(inAir());
    assertTrue(rolled.core().at(1200) > still.core().at(1200) + 5);
    assertEquals(0, water(still).crust());
    assertTrue(water(rolled).crust() > 1e-4, () -> water(rolled).toString());
  }

  /** Metal keeps vapour in: below boiling a face that lies on it all round loses none. */
  @Test
  void coolBandAllRound_losesNoVapour() {
    assertEquals(0, water(run(SurfaceLaw.shared(1, band(90), inAir()))).evaporated());
    assertTrue(water(run(SurfaceLaw.shared(0.5, band(90), inAir()))).evaporated() > 0.1);
  }

  /**
   * The faster a cut is rolled in turns the less its sides swing, and the nearer it comes to the
   * mean one: the swing, and with it what it does to evaporation, falls with the root of the leg.
   */
  @Test
  void fastTurns_comeNearToTheMeanFace() {
    SimulationResult mean = run(SurfaceLaw.shared(QUARTER, onMetal(band(90)), inAir()));
    SimulationResult slow = rolledInTurns(30);
    SimulationResult fast = rolledInTurns(2);
    double apart = Math.abs(fast.core().at(1200) - mean.core().at(1200));
    assertTrue(apart < 0.5 * Math.abs(slow.core().at(1200) - mean.core().at(1200)));
    assertTrue(apart < 0.4, () -> apart + " K");
    double evaporated = water(mean).evaporated();
    assertTrue(water(slow).evaporated() < water(fast).evaporated());
    assertEquals(evaporated, water(fast).evaporated(), 0.1 * evaporated);
  }

  private static SimulationResult rolledInTurns(double leg) {
    List<Stage> turns =
        Turns.every(leg, (int) (1200 / leg)).rolls("roll", onMetal(band(90)), inAir(), 4);
    return Bodies.run(Bodies.accuracy(1e-4), new Cook(CUT, turns, List.of()));
  }

  /** Coals that one side sees at a time: both sides dry, one of them in more heat. */
  @Test
  void bandOfCoals_driesAsItsMeanHeatDoes() {
    Signal coals = Signal.constant(Temperatures.celsius(600));
    SurfaceLaw bed = new CoalBed(0.4, coals).withWalls(0, coals);
    DryingFace over = drying(SurfaceLaw.sum(PIT.around(9, 0.9, 0, 1), bed), AirLoad.NONE);
    DryingFace mean =
        drying(
            SurfaceLaw.sum(PIT.around(9, 0.9, 0, 1), new CoalBed(0.1, coals).withWalls(0, coals)),
            AirLoad.NONE);
    SimulationResult rolled = run(SurfaceLaw.shared(QUARTER, over, inAir()));
    SimulationResult stated = run(mean);
    assertEquals(stated.core().at(1200), rolled.core().at(1200), 1e-6);
    assertEquals(water(stated).held(), water(rolled).held(), 1e-7);
  }

  @Test
  void vapourOfTheShareInAir_loadsTheAir() {
    DryingFace loading = drying(PIT.around(9, 0.9, 0, 1), new AirLoad(300, 0));
    SimulationResult free = run(SurfaceLaw.shared(0.5, band(90), inAir()));
    SimulationResult loaded = run(SurfaceLaw.shared(0.5, band(90), loading));
    assertTrue(water(loaded).evaporated() < water(free).evaporated());
    assertEquals(0, water(loaded).relativeResidual(), ROUND_OFF);
  }

  @Test
  void facesThatHoldUnlike_areRefused() {
    DryingFace less =
        new DryingFace(
            inAir().dry(),
            inAir().wet(),
            SurfaceWater.ofMeat().times(0.5),
            inAir().crust(),
            inAir().boilingPoint());
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> SurfaceLaw.shared(QUARTER, less, inAir()));
    assertTrue(
        String.valueOf(refused.getMessage())
            .startsWith("faces that dry and share one must have the same water"));
    assertThrows(IllegalArgumentException.class, () -> SurfaceLaw.shared(1.1, band(90), inAir()));
  }

  private static final Cut CUT =
      new Cut(Cylinder.ofRadius(0.03), Bodies.LOIN, Temperatures.celsius(8));

  private static Contact band(double celsius) {
    return new Contact(250, Signal.constant(Temperatures.celsius(celsius)));
  }

  private static DryingFace inAir() {
    return drying(PIT.around(9, 0.9, 0, 1), AirLoad.NONE);
  }

  /** The same face on metal, which gives off no vapour there. */
  private static DryingFace onMetal(SurfaceLaw metal) {
    return DryingFace.ofMeat(metal, SurfaceLaw.insulated(), 0.6, PRESSURE);
  }

  private static DryingFace drying(SurfaceLaw dry, AirLoad load) {
    Evaporation vapour = Evaporation.of(1, 9, 0.98, PIT.vapourPressure(), PRESSURE);
    return DryingFace.ofMeat(dry, vapour, 0.6, PRESSURE).into(load);
  }

  private static FaceWater water(SimulationResult result) {
    return result.upperFaceWater().orElseThrow();
  }

  private static SimulationResult run(SurfaceLaw law) {
    Cook cook = Cook.of(CUT, Stage.allRound("rolled", law, StageEnd.after(1200)));
    return Bodies.run(Bodies.accuracy(1e-4), cook);
  }
}
