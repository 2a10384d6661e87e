package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TouchTest {

  private static final Signal METAL = Signal.constant(500);

  @Test
  void conductanceAndMetal_fallFromTheBeginningOfTheStage() {
    SurfaceLaw touch = Touch.ofPlate(METAL).from(1000);
    assertEquals(500 * 150, flux(touch, 1000, 350), 1e-9);
    double e = Math.exp(-1);
    double h = 250 + 250 * e;
    double cooled = 50 * (1 - Math.exp(-0.5));
    assertEquals(h * (150 - cooled), flux(touch, 1030, 350), 1e-6);
    assertEquals(250 * 100, flux(touch, 3000, 350), 1e-6);
    assertEquals(-h, slope(touch, 1030), 1e-9);
  }

  @Test
  void bars_touchTheirShareAndStayHot() {
    SurfaceLaw bars = Touch.ofBars(METAL).from(0);
    assertEquals(0.22 * 250 * 150, flux(bars, 4000, 350), 1e-6);
  }

  @Test
  void sumsBeginTheirTouchWithTheStage() {
    SurfaceLaw sum = SurfaceLaw.sum(Touch.ofPlate(METAL), new Convection(10, METAL));
    assertTrue(sum.remembers());
    assertEquals(510 * 150, flux(sum.from(700), 700, 350), 1e-9);
  }

  @Test
  void wrongNumbers_areRefused() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> new Touch(1.5, 1, 1, 1, METAL, 0, 1, 0));
    assertEquals("share must be in [0.0, 1.0], was 1.5", e.getMessage());
  }

  private static double flux(SurfaceLaw law, double time, double face) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(face, time, flux);
    return flux.heatFlux();
  }

  private static double slope(SurfaceLaw law, double time) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(350, time, flux);
    return flux.slope();
  }
}
