package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/** Drying faces under a moving lid, wrapped, basted, turned over metal, and resting: all of it. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class DryingCookPropertiesTest {

  private static final double ROUND_OFF = 1e-12;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  /**
   * Of a step, as the mean temperature of the body: in a slab of 10 cm 1e-5 K are 0.02 g/m² of
   * water.
   */
  private static final double ACCURACY = 1e-5;

  /**
   * Share of the turnover that the dense output misses where faces begin to boil, run over or are
   * cooled.
   */
  private static final double HEAT = 2e-4;

  /** The same for water [kg/m²]; at 1e-4 K one cook in some hundreds was beyond it. */
  private static final double WATER = 2e-4;

  @Property(tries = 60)
  void lidsWrapsAndTurnsOfDryingFaces_conserveHeatAndWater(@ForAll("cooks") Cook cook) {
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    double heat = result.energy().relativeResidual();
    double upper = result.upperFaceWater().orElseThrow().relativeResidual();
    double lower = result.lowerFaceWater().orElseThrow().relativeResidual();
    assertTrue(Math.abs(heat) <= ROUND_OFF, () -> "relative residual of heat " + heat);
    assertTrue(Math.abs(upper) <= ROUND_OFF, () -> "relative residual of water above " + upper);
    assertTrue(Math.abs(lower) <= ROUND_OFF, () -> "relative residual of water below " + lower);
    assertAccount(result.water().upper(), result.upperFaceWater().orElseThrow());
    assertAccount(result.water().lower(), result.lowerFaceWater().orElseThrow());
  }

  /** The account closes, and no more leaves the cut than is in it, but for thick crusts. */
  private static void assertAccount(WaterAccount account, FaceWater face) {
    assertEquals(0, account.relativeResidual(), ROUND_OFF);
    assertTrue(account.pressedOut() >= 0 && account.ranOff() >= 0);
    if (account.stock() == 0) {
      return;
    }
    double inside = account.left() - Math.max(0, face.held());
    double crust = Math.max(0, -face.held() - face.initial());
    assertTrue(inside >= -crust - ROUND_OFF * account.stock(), () -> "inside " + inside);
  }

  @Property(tries = 40)
  void lidsWrapsAndTurnsOfDryingFaces_integrateToTheBalances(@ForAll("cooks") Cook cook) {
    FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, 40);
    double heat = integral.heatDiscrepancy();
    double upper = integral.waterUpper() - integral.cook().evaporatedUpper();
    double lower = integral.waterLower() - integral.cook().evaporatedLower();
    assertTrue(heat <= HEAT, () -> "heat differs by " + heat);
    assertTrue(Math.abs(upper) <= WATER, () -> "water differs by " + upper);
    assertTrue(Math.abs(lower) <= WATER, () -> "water differs by " + lower);
  }

  @Provide
  static Arbitrary<Cook> cooks() {
    return Combinators.combine(
            uniform(0.02, 0.1),
            Arbitraries.of(Bodies.CONSTANT, Bodies.LOIN, SampleCooks.BRISKET),
            Arbitraries.of(Wrap.FOIL, Wrap.PAPER, Wrap.TENT),
            uniform(0, 2),
            uniform(90, 180),
            uniform(120, 280),
            uniform(10, 90),
            Arbitraries.integers().between(1, 5))
        .as(DryingCookPropertiesTest::cook);
  }

  private static Cook cook(
      double thickness,
      Material material,
      Wrap wrap,
      double drive,
      double pit,
      double metal,
      double period,
      int legs) {
    Lid lid = Lid.openedAt(300, 80);
    Chamber chamber =
        Chamber.steady(Temperatures.celsius(pit), 0.03, PRESSURE).withLid(lid, 330, 350, 0.008);
    SurfaceLaw gentle = drying(chamber, 10, drive, SurfaceLaw.insulated());
    Touch plate = Touch.ofPlate(Signal.constant(Temperatures.celsius(metal)));
    SurfaceLaw grate = drying(chamber, 4, drive, plate);
    Chamber room = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);
    SurfaceLaw rest = drying(room, 5, drive, SurfaceLaw.insulated());
    List<Stage> stages = new ArrayList<>();
    Stage open = Stage.allRound("gentle", gentle, StageEnd.at(1500));
    stages.addAll(open.with(new Wetting(0.1, 0)).cutAt(lid.edges()));
    stages.add(Stage.allRound("wrapped", gentle.under(wrap), StageEnd.after(600)));
    stages.addAll(Turns.every(period, legs).flips("sear", gentle, grate));
    stages.add(Stage.allRound("rest", rest.under(wrap), StageEnd.after(600)));
    Cut cut = new Cut(Slab.ofThickness(thickness), material, Bodies.START);
    return new Cook(cut, stages, List.of());
  }

  private static SurfaceLaw drying(Chamber chamber, double h, double drive, SurfaceLaw more) {
    SurfaceLaw dry = SurfaceLaw.sum(chamber.around(h, 0.9, 0, 1), more);
    SurfaceLaw wet = Evaporation.of(1, h, 0.98, chamber.vapourPressure(), PRESSURE);
    return DryingFace.ofMeat(dry, wet, drive, PRESSURE);
  }

  private static Arbitrary<Double> uniform(double low, double high) {
    return Arbitraries.doubles().between(low, high).withDistribution(RandomDistribution.uniform());
  }
}
