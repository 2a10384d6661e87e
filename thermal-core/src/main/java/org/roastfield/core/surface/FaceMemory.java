package org.roastfield.core.surface;

/**
 * What one face remembers, in one implicit stage: W = base + weight · rate. Owned by a solve and
 * reused; the integration writes the inputs, a {@link RememberingLaw} the rest.
 */
public final class FaceMemory {

  /** Input: γ h of the stage [s], 0 where only rates are wanted. */
  public double weight;

  /** Input: water of the face before the stage's own rate [kg/m²]. */
  public double waterBase;

  /** Input: humidity ratio of air that fills with vapour, before the stage's own rate [kg/kg]. */
  public double humidityBase;

  /** Input: water that came from inside before the stage's own rate [kg/m²]. */
  public double fedBase;

  /** Input: most that can come from inside in all [kg/m²]; infinite where nobody knows. */
  public double mostFed = Double.POSITIVE_INFINITY;

  /**
   * Input: about what will have come from inside at the end of the stage [kg/m²], to begin with; 0
   * if nobody knows. A law leaves what it found.
   */
  public double fedAbout;

  /** Humidity ratio of the air around, as the face's vapour makes it [kg/kg]; 0 if it does not. */
  public double humidity;

  /** Change of {@link #humidity} of air that fills [1/s]. */
  public double humidityRate;

  /** Water of the face: above 0 on it, below 0 missing from a crust [kg/m²]. */
  public double water;

  /** Temperature of the outer side of the crust, or of the face where there is none [K]. */
  public double outerTemperature;

  /** Water that comes from inside [kg/(m²·s)]. */
  public double fed;

  /** Water that runs off [kg/(m²·s)]. */
  public double dripped;

  /** Water that leaves as vapour [kg/(m²·s)]. */
  public double evaporated;

  /** Heat that boiling takes below the face [W/m²]. */
  public double sunk;

  /** Slope of {@link #sunk} with the face temperature [W/(m²·K)]. */
  public double sunkSlope;

  /** Left by the stage: its a, with what the end of the supply takes off it. */
  double diagonal;

  /** Left by the stage: share of a change of the supply that its own end leaves. */
  double lasting = 1;

  /**
   * Left by the stage: share of a wet face's vapour flux, and the flux times its slope by water.
   */
  double share;

  double bend;

  /** Left by the stage: slopes of what it leaves with the face temperature, if it is straight. */
  double waterSlope;

  double fedSlope;
  double drippedSlope;
  double evaporatedSlope;
  double outerSlope;

  /**
   * Whether the slopes hold next to where the law was asked, so that nothing else has to change.
   */
  boolean straight;

  /** How much warmer the face may become before something boils [K]. */
  double room;

  final SurfaceFlux scratch = new SurfaceFlux();

  /** An empty memory. */
  public FaceMemory() {}

  /**
   * Goes on with a small change of the face temperature along the slopes, so that the law need not
   * be asked again; what is left of the change's square is not accounted for, but water is kept.
   *
   * @param change of the face temperature since the law was asked [K]; NaN if that was elsewhere
   * @return whether it could: not where something boils or the air's humidity goes along
   */
  public boolean follow(double change) {
    if (!straight || !(change < room) || !(water + change * waterSlope > 0)) {
      return false;
    }
    room -= change;
    water += change * waterSlope;
    fed += change * fedSlope;
    dripped += change * drippedSlope;
    evaporated += change * evaporatedSlope;
    outerTemperature += change * outerSlope;
    return true;
  }

  /** Whether {@link #follow} can, for changes up to one [K]. */
  public boolean isStraight(double most) {
    return straight && room > most;
  }

  /** Change of {@link #water} [kg/(m²·s)]. */
  public double waterRate() {
    return fed - evaporated - dripped;
  }
}
