package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.junit.jupiter.api.Test;
import org.roastfield.core.support.UniformDraws;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class CoalBedTest {

  private static final Signal WALLS = Signal.constant(450);

  @Test
  void bedAsWarmAsTheWalls_isWallsAlone() {
    SurfaceFlux walls = flux(new Radiation(0.9, WALLS), 340);
    for (double share : new double[] {0, 0.35, 1}) {
      SurfaceFlux both = flux(new CoalBed(share, WALLS).withWalls(0.9, WALLS), 340);
      assertEquals(walls.heatFlux(), both.heatFlux(), 1e-10);
      assertEquals(walls.slope(), both.slope(), 1e-12);
    }
  }

  /** 0.9 · 5.670374e-8 · [0.35 (1023.15⁴ − 340⁴) + 0.65 (450⁴ − 340⁴)] = 20 252 W/m². */
  @Test
  void bedOfGlowingCoals_givesMostOfTheHeat() {
    CoalBed bed = new CoalBed(0.35, Signal.constant(1023.15));
    assertEquals(20_252.3, flux(bed.withWalls(0.9, WALLS), 340).heatFlux(), 1);
  }

  /** Unit discs one radius apart: ½ (3 − √5). */
  @Test
  void discs_seeAsMuchOfOneAnotherAsTheFormulaSays() {
    assertEquals(0.381966, CoalBed.viewFactorOfDiscs(1, 1, 1), 1e-6);
    assertEquals(0.1 * 0.1 / (0.1 * 0.1 + 1), CoalBed.viewFactorOfDiscs(1e-6, 0.1, 1), 1e-12);
    assertEquals(1, CoalBed.viewFactorOfDiscs(0.1, 1000, 0.1), 1e-7);
  }

  @Property(tries = 300)
  void discs_areReciprocalAndSeeLessFromFurtherAway(
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double face,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double bed,
      @ForAll @DoubleRange(min = 0.02, max = 2) double distance) {
    double there = face * face * CoalBed.viewFactorOfDiscs(face, bed, distance);
    double back = bed * bed * CoalBed.viewFactorOfDiscs(bed, face, distance);
    assertEquals(there, back, 1e-14);
    double near = CoalBed.viewFactorOfDiscs(face, bed, distance);
    double far = CoalBed.viewFactorOfDiscs(face, bed, 1.1 * distance);
    assertTrue(near > far && near < 1 && far > 0);
  }

  @Test
  void wrongArguments_areRefused() {
    Exception refused = assertThrows(IllegalArgumentException.class, () -> new CoalBed(1.2, WALLS));
    assertEquals("viewFactor must be in [0.0, 1.0], was 1.2", refused.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> new CoalBed(0.3, WALLS).withWalls(1.1, WALLS));
    assertThrows(IllegalArgumentException.class, () -> CoalBed.viewFactorOfDiscs(0.1, 0.1, 0));
  }

  private static SurfaceFlux flux(SurfaceLaw law, double face) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, 0, flux);
    return flux;
  }
}
