package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * Glowing coals that fill part of what a face sees; the walls fill the rest, eq. (37). The bed is
 * taken as black, its many hollows being deep: T_b is the temperature that a radiation thermometer
 * would read on it.
 *
 * @param viewFactor F, share in [0, 1] of the face's radiation that meets the bed
 * @param temperature T_b [K]
 */
public record CoalBed(double viewFactor, Signal temperature) {

  /**
   * @throws IllegalArgumentException if {@code viewFactor} is outside [0, 1]
   */
  public CoalBed {
    Check.inRange("viewFactor", viewFactor, 0, 1);
  }

  /**
   * Exchange of a face with the bed and the walls behind it, whose shares sum to one.
   *
   * @param emissivity ε of the face in [0, 1]
   * @param wallTemperature T_w [K]
   */
  public SurfaceLaw withWalls(double emissivity, Signal wallTemperature) {
    Check.inRange("emissivity", emissivity, 0, 1);
    return SurfaceLaw.sum(
        new Radiation(emissivity * viewFactor, temperature),
        new Radiation(emissivity * (1 - viewFactor), wallTemperature));
  }

  /**
   * View factor from a flat face to a bed below it, both as discs on one axis, eq. (38).
   *
   * @param faceRadius [m], greater than 0: √(area/π) of a face that is no disc
   * @param bedRadius [m], greater than 0
   * @param distance between the two [m], greater than 0
   */
  public static double viewFactorOfDiscs(double faceRadius, double bedRadius, double distance) {
    Check.positive("faceRadius", faceRadius);
    Check.positive("bedRadius", bedRadius);
    Check.positive("distance", distance);
    double face = faceRadius / distance;
    double bed = bedRadius / distance;
    double sum = 1 + face * face + bed * bed;
    double product = 2 * face * bed;
    // half the smaller root, without the cancellation of a small bed far away
    return 2 * bed * bed / (sum + Math.sqrt((sum - product) * (sum + product)));
  }
}
