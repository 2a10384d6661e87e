package org.roastfield.core.surface;

/**
 * The front of boiling under a face, in one stage: its temperature is linear in the face's and in
 * the heat that boiling takes.
 */
public interface Beneath {

  /**
   * Temperature of the front without boiling [K].
   *
   * @param faceTemperature that is tried [K]
   */
  double frontTemperature(double faceTemperature);

  /** Change of {@link #frontTemperature} with the face's. */
  double frontSlope();

  /** How much a heat flux that boiling takes cools the front [K·m²/W], at least 0. */
  double frontCooling();

  /** Share of the boiling that is at the face itself: 1 without a crust, 0 under a thick one. */
  double shareAtFace();

  /** Thickness of the crust [m]. */
  double thickness();

  /** Thermal conductivity of the moist inside, at boiling [W/(m·K)]. */
  double conductivity();
}
