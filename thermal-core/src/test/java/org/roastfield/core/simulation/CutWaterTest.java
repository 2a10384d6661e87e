package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.units.Temperatures;

/** The water of the cut itself: what feeds its faces and drips comes to an end, eqs. (97)-(98). */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class CutWaterTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double HOUR = 3600;
  private static final double ROUND_OFF = 1e-12;

  /**
   * One cook of a drying face.
   *
   * @param shape of the cut
   * @param food by its name in the catalogue
   * @param oven [°C]
   * @param convection [W/(m²·K)]
   * @param drive factor of the face's water
   * @param hours of it
   */
  record Case(
      Shape shape, String food, double oven, double convection, double drive, double hours) {

    SimulationResult run() {
      Chamber chamber = Chamber.steady(Temperatures.celsius(oven), 0.02, PRESSURE);
      DryingFace face =
          DryingFace.ofMeat(
              chamber.around(convection, 0.9, 0, 1),
              Evaporation.of(1, convection, 0.98, chamber.vapourPressure(), PRESSURE),
              drive,
              PRESSURE);
      Material material = Materials.named(food).material();
      Cook cook =
          Cook.of(
              new Cut(shape, material, Temperatures.celsius(8)),
              Stage.allRound("heat", face, StageEnd.after(hours * HOUR)));
      return Simulator.withDefaults().run(cook).orElseThrow();
    }

    double kept() {
      return Materials.named(food).material().moisture().kept() * shape.volumePerArea();
    }
  }

  /**
   * Faces are fed no more than heat cannot press out, and the whole cut loses no more than it has.
   */
  @Property(tries = 100)
  void lostWater_isNeverMoreThanTheCutHas(@ForAll("cases") Case one) {
    SimulationResult result = one.run();
    FaceWater face = result.upperFaceWater().orElseThrow();
    WaterAccount account = result.water().upper();
    double slack = ROUND_OFF * account.stock();
    assertTrue(face.initial() + face.fed() <= one.kept() + slack, () -> "fed " + face.fed());
    assertTrue(face.fed() >= 0);
    assertEquals(0, account.relativeResidual(), ROUND_OFF);
    double inside = account.left() - Math.max(0, face.held());
    double reserve = Math.min(face.initial(), account.stock() - one.kept());
    double crust = Math.max(0, -face.held() - reserve);
    assertTrue(inside >= -crust - slack, () -> "inside " + inside + " of " + account.stock());
  }

  /** Two days in a smoker: the supply ends just below all that heat cannot press out. */
  @Example
  void longCook_comesToAnEndOfItsSupply() {
    Case one = new Case(Sphere.ofRadius(0.03), "turkey breast", 110, 10, 1, 48);
    FaceWater face = one.run().upperFaceWater().orElseThrow();
    double share = (face.initial() + face.fed()) / one.kept();
    assertTrue(share > 0.99 && share <= 1 + ROUND_OFF, () -> "share fed " + share);
  }

  /** A thin cut that dries to its middle stops boiling there, and gets as warm as its oven. */
  @Example
  void thinCut_driesThrough() {
    Case one = new Case(Slab.ofHalfThickness(0.0105), "beetroot", 129, 20, 2.87, 60);
    SimulationResult result = one.run();
    assertEquals(0.0105, result.upperFaceWater().orElseThrow().crust(), 1e-6);
    assertEquals(Temperatures.celsius(129), result.coreNow(), 0.01);
    assertTrue(Math.abs(result.energy().relativeResidual()) <= ROUND_OFF);
  }

  /** What a face takes of the juice does not drip: no water is counted twice. */
  @Example
  void juiceThatTheFaceTakes_doesNotDrip() {
    WaterAccount account =
        new Case(Cylinder.ofRadius(0.04), "pork loin", 110, 8, 1, 5).run().water().upper();
    double most = 0.345 / 0.72 * account.stock();
    assertTrue(account.evaporated() > 0.2 * account.stock());
    assertTrue(account.pressedOut() < most - 0.1 * account.stock());
  }

  /** Where nothing is evaporated, all that heat presses out drips: to its limit in hot meat. */
  @Example
  void juiceThatNoFaceTakes_drips() {
    WaterAccount account =
        new Case(Cylinder.ofRadius(0.02), "pork loin", 98, 10, 0, 6).run().water().upper();
    assertTrue(account.evaporated() <= 0);
    assertEquals(0.345 / 0.72 * account.stock(), account.pressedOut(), 0.01 * account.stock());
  }

  /** A slower lag drips less in the same time; a lag of a second drips as if there were none. */
  @Example
  void slowerDrainage_dripsLess() {
    SimulationResult result = new Case(Cylinder.ofRadius(0.03), "pork loin", 98, 10, 0, 1.2).run();
    double[] drips = new double[4];
    double[] times = {1, 150, 300, 3600};
    for (int i = 0; i < times.length; i++) {
      drips[i] = drained(result, times[i]).pressedOut();
      assertTrue(i == 0 || drips[i] < 0.97 * drips[i - 1], "drip after a lag of " + times[i]);
    }
    double free = drips[0];
    assertEquals(free, drained(result, 1e-3).pressedOut(), 1e-3 * free);
    assertEquals(drips[2], result.water().upper().pressedOut(), 0);
  }

  private static WaterAccount drained(SimulationResult result, double seconds) {
    Moisture moisture = result.cook().cut().material().moisture();
    return result.water(moisture.held(WaterHolding.BEEF.draining(seconds))).upper();
  }

  /** Nothing is pressed out of vegetables. */
  @Example
  void vegetables_doNotDrip() {
    WaterAccount account =
        new Case(Sphere.ofRadius(0.04), "beetroot", 150, 10, 1, 2).run().water().upper();
    assertEquals(0, account.pressedOut(), 0);
  }

  @Provide
  static Arbitrary<Case> cases() {
    return Combinators.combine(
            uniform(0.01, 0.06).flatMap(CutWaterTest::shapes),
            Arbitraries.of("beef loin", "beef brisket", "turkey breast", "beetroot"),
            uniform(80, 130),
            uniform(4, 30),
            uniform(0, 3),
            uniform(0.2, 24))
        .as(Case::new);
  }

  private static Arbitrary<Shape> shapes(double r) {
    return Arbitraries.of(
        Slab.ofHalfThickness(r),
        Cylinder.ofRadius(r),
        Sphere.ofRadius(r),
        Compact.ofBox(2 * r, 3 * r, 6 * r));
  }

  private static Arbitrary<Double> uniform(double low, double high) {
    return Arbitraries.doubles()
        .between(low, high)
        .ofScale(6)
        .withDistribution(RandomDistribution.uniform());
  }
}
