package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Slabs whose faces dry, from the other side, and with faces alike. */
class MirrorPropertiesTest {

  /**
   * What a settled face or front may move by, in the field [K]: 1e-9 in most pairs of cooks, 1.2e-7
   * in one of 3000 where one of them settled an iteration later.
   */
  private static final double SETTLED = 1e-6;

  private static final double THICK = 0.04;

  private static final double BOILING = SaturationPressure.boilingPoint(MoistAir.STANDARD_PRESSURE);

  /** Faces that dry, changed over: the field is mirrored to what faces and fronts settle to. */
  @Property(tries = 100)
  void facesChangedOver_mirrorTheField(
      @ForAll("dryingLaws") SurfaceLaw one,
      @ForAll("dryingLaws") SurfaceLaw other,
      @ForAll("dryingLaws") SurfaceLaw third) {
    Assume.that(!one.equals(other));
    SimulationResult up = faces(one, other, third);
    SimulationResult down = mirrored(one, other, third);
    double apart = apart(up, down);
    assertTrue(apart <= SETTLED, () -> apart + " K");
  }

  /** How far two fields are from each other's mirror image, water as the heat that it is worth. */
  private static double apart(SimulationResult up, SimulationResult down) {
    TemperatureProfile upward = up.profile(up.endTime());
    TemperatureProfile downward = down.profile(up.endTime());
    double apart = 0;
    for (double share = -0.48; share <= 0.48; share += 0.06) {
      apart = Math.max(apart, Math.abs(upward.at(share * THICK) - downward.at(-share * THICK)));
    }
    double water = up.upperFaceWater().orElseThrow().held();
    double mirrored = down.lowerFaceWater().orElseThrow().held();
    double perKelvin = Bodies.heldPerKelvin(up.cook()) / MoistAir.latentHeat(BOILING);
    return Math.max(apart, Math.abs(water - mirrored) / perKelvin);
  }

  private static SimulationResult faces(SurfaceLaw one, SurfaceLaw other, SurfaceLaw third) {
    return twoStages(
        Stage.ofFaces("first", one, other, StageEnd.after(400)),
        Stage.ofFaces("second", third, one, StageEnd.after(200)));
  }

  private static SimulationResult mirrored(SurfaceLaw one, SurfaceLaw other, SurfaceLaw third) {
    return twoStages(
        Stage.ofFaces("first", other, one, StageEnd.after(400)),
        Stage.ofFaces("second", one, third, StageEnd.after(200)));
  }

  private static SimulationResult twoStages(Stage first, Stage second) {
    Cut cut = new Cut(Slab.ofThickness(THICK), SampleCooks.CONSTANT, Temperatures.celsius(5));
    return Bodies.run(Settings.withDefaults(), Cook.of(cut, first, second));
  }

  @Provide
  static Arbitrary<SurfaceLaw> dryingLaws() {
    return AnyLaws.drying();
  }

  /** Faces that are alike but told apart, since one is written otherwise: the field stays even. */
  @Property(tries = 100)
  void facesAlike_keepTheFieldSymmetric(
      @ForAll("dryingLaws") SurfaceLaw first, @ForAll("dryingLaws") SurfaceLaw second) {
    SimulationResult result =
        twoStages(
            Stage.ofFaces("first", first, writtenOtherwise(first), StageEnd.after(400)),
            Stage.ofFaces("second", writtenOtherwise(second), second, StageEnd.after(200)));
    assertFalse(result.cook().isSymmetric());
    assertEquals(0, apart(result, result), SETTLED);
  }

  private static SurfaceLaw writtenOtherwise(SurfaceLaw law) {
    return SurfaceLaw.shared(0, SurfaceLaw.insulated(), law);
  }
}
