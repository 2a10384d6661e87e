package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.PlanWishes;

class SaltLeadTest {

  private static final Cut THICK =
      new Cut(
          Slab.ofThickness(0.2), Materials.named("pork loin").material(), Temperatures.celsius(4));

  private static Optional<SaltLead> lead(double share, double depth) {
    return SaltLead.of(new PlanWishes.Salt(share, OptionalDouble.of(depth)), THICK);
  }

  /**
   * Of a dose M/A on a half-space, content at depth x is (M/A)/√(πDt)·exp(−x²/(4Dt)); over the mean
   * of half a slab, R/√(πDt)·exp(−x²/(4Dt)), which is 1/2 at 8 mm at the time below.
   */
  @Test
  void leadOfAThickSlab_isThatOfTheHalfSpace() {
    double time = lead(0.012, 0.008).orElseThrow().before() - 3600;
    double dt = 2.2e-10 * time;
    double content =
        0.1 / StrictMath.sqrt(StrictMath.PI * dt) * StrictMath.exp(-0.008 * 0.008 / (4 * dt));
    assertEquals(SaltLead.ARRIVED, content, 0.08);
  }

  @Test
  void deeperTakesLonger_andTheDoseDoesNotMatter() {
    double shallow = lead(0.012, 0.005).orElseThrow().before();
    double deep = lead(0.012, 0.012).orElseThrow().before();
    assertTrue(deep > 1.5 * shallow, shallow + " " + deep);
    assertEquals(shallow, lead(0.006, 0.005).orElseThrow().before());
  }

  @Test
  void tooDeep_isNever() {
    assertEquals(Optional.empty(), lead(0.012, 0.06));
  }
}
