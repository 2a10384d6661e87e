package org.roastfield.core.surface;

/** Form and position of a face past which air flows, with the length that it is measured by. */
public enum FaceForm {

  /** Round cut that lies; its length is the diameter [m]. Wind blows across. */
  HORIZONTAL_CYLINDER(NaturalCorrelation.HORIZONTAL_CYLINDER, 1, 1, ForcedCorrelation.CYLINDER, 1),

  /** Face that stands upright; its length is the height [m], along which wind blows. */
  VERTICAL_PLATE(NaturalCorrelation.VERTICAL_PLATE, 1, 1, ForcedCorrelation.PLATE, 1),

  /**
   * Face of a flat cut that looks up; its length is area over perimeter [m]. Colder than the air it
   * keeps a layer of cold air, warmer it stirs it.
   */
  UPPER_FACE(NaturalCorrelation.HORIZONTAL_PLATE, 0.27, 0.54, ForcedCorrelation.PLATE, 4),

  /**
   * Face of a flat cut that looks down; its length is area over perimeter [m]. Colder than the air
   * it sheds falling air, as a warm face does upwards.
   */
  LOWER_FACE(NaturalCorrelation.HORIZONTAL_PLATE, 0.54, 0.27, ForcedCorrelation.PLATE, 4),

  /** Ball; its length is the diameter [m]. */
  SPHERE(NaturalCorrelation.SPHERE, 1, 1, ForcedCorrelation.SPHERE, 1);

  private final NaturalCorrelation natural;
  private final double meanFactor;
  private final double halfFactorDifference;
  private final ForcedCorrelation forced;
  private final double windLengths;

  /**
   * Factors of c(Pr) where air is the warmer and where the face is [McAdams1954]; wind runs along
   * {@code windLengths} times the length: four times area over perimeter is the side of a square.
   */
  FaceForm(
      NaturalCorrelation natural,
      double factorInWarmerAir,
      double factorInColderAir,
      ForcedCorrelation forced,
      double windLengths) {
    this.natural = natural;
    this.meanFactor = 0.5 * (factorInWarmerAir + factorInColderAir);
    this.halfFactorDifference = 0.5 * (factorInWarmerAir - factorInColderAir);
    this.forced = forced;
    this.windLengths = windLengths;
  }

  NaturalCorrelation natural() {
    return natural;
  }

  double meanFactor() {
    return meanFactor;
  }

  double halfFactorDifference() {
    return halfFactorDifference;
  }

  ForcedCorrelation forced() {
    return forced;
  }

  double windLengths() {
    return windLengths;
  }
}
