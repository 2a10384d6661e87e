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

  /**
   * Bands of a slice, seen with one kind of cone missing, by the usual linear simulations, and in
   * grey: each is darker than the one before by lightness that shows, 6 of 100.
   */
  @Test
  void bandsOfASlice_keepTheirOrderToEveryEye() {
    double[][] eyes = {
      {0.152, 1.053, -0.205, 0.115, 0.786, 0.099, -0.004, -0.048, 1.052},
      {0.367, 0.861, -0.228, 0.280, 0.673, 0.047, -0.012, 0.043, 0.969},
      {1.256, -0.077, -0.179, -0.078, 0.931, 0.148, 0.005, 0.691, 0.304},
      {0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722}
    };
    for (double[] eye : eyes) {
      for (int bands : new int[] {2, 3, 6, 7}) {
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bands; i++) {
          double lightness = seen(Ramp.colour((double) i / (bands - 1)), eye);
          assertTrue(lightness < before - 6, bands + " bands, " + i + ": " + lightness);
          before = lightness;
        }
      }
    }
  }

  private static double seen(String hex, double[] eye) {
    double[] linear = new double[3];
    for (int c = 0; c < 3; c++) {
      double value = Integer.parseInt(hex.substring(1 + 2 * c, 3 + 2 * c), 16) / 255.0;
      linear[c] = value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
    double[] weights = {0.2126, 0.7152, 0.0722};
    double luminance = 0;
    for (int row = 0; row < 3; row++) {
      double there = 0;
      for (int c = 0; c < 3; c++) {
        there += eye[3 * row + c] * linear[c];
      }
      luminance += weights[row] * Math.max(0, Math.min(1, there));
    }
    return 116 * Math.cbrt(luminance) - 16;
  }
}
