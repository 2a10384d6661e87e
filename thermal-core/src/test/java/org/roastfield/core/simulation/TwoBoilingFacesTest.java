package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.units.Temperatures;

/** A thin slab that boils under a crust on both faces, each of which cools the other. */
class TwoBoilingFacesTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Chamber OVEN = Chamber.steady(Temperatures.celsius(220), 0.01, PRESSURE);

  private static DryingFace face(double convection) {
    return DryingFace.ofMeat(
        OVEN.around(convection, 0.9, 0, 1),
        Evaporation.of(1, convection, 0.98, OVEN.vapourPressure(), PRESSURE),
        0.3,
        PRESSURE);
  }

  private static SimulationResult run(Settings settings) {
    Cut slice =
        new Cut(
            Slab.ofThickness(0.006),
            Materials.named("beef loin").material(),
            Temperatures.celsius(8));
    Stage oven = Stage.ofFaces("oven", face(40), face(36), StageEnd.after(360));
    return Bodies.run(settings, Cook.of(slice, oven));
  }

  /** 0.006 K; 0.041 K where the balance of a face leaves out what boils below the other. */
  @Test
  void faceOfLongSteps_isThatOfShortOnes() {
    SimulationResult usual = run(Settings.withDefaults());
    SimulationResult fine = run(Bodies.accuracy(1e-4));
    double end = usual.endTime();
    assertEquals(fine.upperSurface().at(end), usual.upperSurface().at(end), 0.02);
    assertEquals(fine.core().at(end), usual.core().at(end), 0.02);
  }
}
