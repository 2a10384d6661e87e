package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RampTest {

  @Test
  void lightness_fallsEvenlySoThatGreyKeepsTheOrder() {
    double before = lightness(0);
    for (int i = 1; i <= 20; i++) {
      double here = lightness(i / 20.0);
      assertEquals(84 / 20.0, before - here, 0.8);
      before = here;
    }
  }

  @Test
  void letters_showOnTheirBand() {
    for (int i = 0; i <= 40; i++) {
      double place = i / 40.0;
      String letters = Ramp.isPale(place) ? "#000000" : "#ffffff";
      double contrast = Contrast.between(letters, Ramp.colour(place));
      assertTrue(contrast >= 4.5, () -> place + ": " + contrast);
    }
  }

  @Test
  void ends_areStrictAboutPlacesOutside() {
    assertEquals(Ramp.colour(0), Ramp.colour(-1));
    assertEquals(Ramp.colour(1), Ramp.colour(7));
  }

  private static double lightness(double place) {
    double luminance = Contrast.luminance(Ramp.colour(place));
    return 116 * Math.cbrt(luminance) - 16;
  }
}
