package org.roastfield.lab.report;

import java.util.Locale;

/**
 * Colours that darken evenly from pale (cold) to near black (hot), so that their order shows in
 * grey and to every eye.
 *
 * <p>Lightness L* runs straight from end to end; hue and strength come from the anchors, which are
 * colours of CIE 1976 L*a*b* (CIE 15:2018, white D65). Colours outside sRGB (IEC 61966-2-1) are
 * clipped.
 */
final class Ramp {

  /** L*, a*, b* from pale to dark. */
  private static final double[][] ANCHORS = {
    {96, -2, 2}, {84, 2, 26}, {70, 16, 44}, {56, 34, 46}, {40, 42, 32}, {26, 30, 12}, {12, 10, 2},
  };

  private static final double[] WHITE = {0.95047, 1.0, 1.08883};
  private static final double[][] TO_RED_GREEN_BLUE = {
    {3.2404542, -1.5371385, -0.4985314},
    {-0.9692660, 1.8760108, 0.0415560},
    {0.0556434, -0.2040259, 1.0572252},
  };

  /** L* on which black and white letters show equally well. */
  private static final double EQUAL_CONTRAST = 49.5;

  private Ramp() {}

  /** Colour as {@code #rrggbb} at a place from 0, pale, to 1, dark. */
  static String colour(double place) {
    double[] lab = lab(place);
    double fy = (lab[0] + 16) / 116;
    double[] xyz = {
      WHITE[0] * cubed(fy + lab[1] / 500), WHITE[1] * cubed(fy), WHITE[2] * cubed(fy - lab[2] / 200)
    };
    StringBuilder hex = new StringBuilder("#");
    for (double[] row : TO_RED_GREEN_BLUE) {
      double linear = row[0] * xyz[0] + row[1] * xyz[1] + row[2] * xyz[2];
      hex.append(String.format(Locale.ROOT, "%02x", Math.round(255 * companded(linear))));
    }
    return hex.toString();
  }

  /** Whether dark lines and letters show better than light ones at this place. */
  static boolean isPale(double place) {
    return lightness(place) > EQUAL_CONTRAST;
  }

  private static double lightness(double place) {
    double palest = ANCHORS[0][0];
    double darkest = ANCHORS[ANCHORS.length - 1][0];
    return palest + Math.max(0, Math.min(1, place)) * (darkest - palest);
  }

  private static double[] lab(double place) {
    double lightness = lightness(place);
    int next = 1;
    while (next < ANCHORS.length - 1 && ANCHORS[next][0] > lightness) {
      next++;
    }
    double[] pale = ANCHORS[next - 1];
    double[] dark = ANCHORS[next];
    double share = (pale[0] - lightness) / (pale[0] - dark[0]);
    return new double[] {
      lightness, pale[1] + share * (dark[1] - pale[1]), pale[2] + share * (dark[2] - pale[2])
    };
  }

  private static double cubed(double f) {
    double edge = 6.0 / 29;
    return f > edge ? f * f * f : 3 * edge * edge * (f - 4.0 / 29);
  }

  private static double companded(double linear) {
    double clipped = Math.max(0, Math.min(1, linear));
    return clipped <= 0.0031308
        ? 12.92 * clipped
        : 1.055 * StrictMath.pow(clipped, 1 / 2.4) - 0.055;
  }
}
