package org.roastfield.lab.synthetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

class TimedLawTest {

  private static final SurfaceLaw LAW =
      SurfaceLaw.sum(
          new Convection(6, Signal.constant(383)),
          Evaporation.of(1, 6, 0.98, Signal.constant(3000), 101_325));

  /** A half more of the law alone; what stood in the sum before stays as it was. */
  @Test
  void factor_scalesHeatAndVapourOfItsLawOnly() {
    SurfaceFlux once = new SurfaceFlux();
    LAW.evaluate(330, 50, once);
    SurfaceFlux timed = new SurfaceFlux();
    timed.addHeat(100, -2);
    timed.addEvaporation(1e-4, 1e-6);
    new TimedLaw(LAW, time -> 1 + time / 100).evaluate(330, 50, timed);
    assertEquals(100 + 1.5 * once.heatFlux(), timed.heatFlux(), 1e-12 * Math.abs(once.heatFlux()));
    assertEquals(-2 + 1.5 * once.slope(), timed.slope(), 1e-12 * Math.abs(once.slope()));
    assertEquals(1e-4 + 1.5 * once.evaporation(), timed.evaporation(), 1e-16);
    assertEquals(1e-6 + 1.5 * once.evaporationSlope(), timed.evaporationSlope(), 1e-18);
  }
}
