package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.material.Materials;
import org.roastfield.core.salting.Salting;
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
   * of half a slab, R/√(πDt)·exp(−x²/(4Dt)). Here it goes in over two hours, and the lead is a
   * multiple of a quarter of an hour, in which content rises by up to 0.07.
   */
  @Test
  void leadOfAThickSlab_isThatOfTheHalfSpace() {
    double lead = lead(0.012, 0.008).orElseThrow().before();
    double content = 0;
    for (int i = 0; i < 720; i++) {
      double dt = Salting.COLD_MEAT * (lead - 10 * (i + 0.5));
      content +=
          0.1 / StrictMath.sqrt(StrictMath.PI * dt) * StrictMath.exp(-0.008 * 0.008 / (4 * dt));
    }
    assertEquals(SaltLead.ARRIVED + 0.035, content / 720, 0.045);
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
