package org.roastfield.core.surface;

/**
 * Law of a face with memory: what enters depends on the water that the face holds and on the crust
 * that grew on it, which the integration carries along with the temperatures.
 *
 * <p>For each face temperature the law solves the memory's own implicit stage, so that one equation
 * for the temperature is left.
 */
public interface RememberingLaw extends SurfaceLaw {

  /** Water that a face holds before the first stage with memory [kg/m²]. */
  double initialWater();

  /** Dry air around the cut that fills with its vapour, over its surface [kg/m²]; 0 for none. */
  default double airHeld() {
    return 0;
  }

  /** Humidity ratio of the air around without the cut's vapour [kg/kg], where some fills. */
  default double humidityWithout(double time) {
    return 0;
  }

  /**
   * Thickness of the crust that has lost so much water [m].
   *
   * @param water of the face [kg/m²]; 0 or more has none
   */
  double crustThickness(double water);

  /**
   * Adds this law's share to {@code flux} and leaves in {@code memory} what the face then holds.
   *
   * @param faceTemperature [K]
   * @param time since the start of the cook [s]
   * @param memory base and weight are read; all else is overwritten
   * @param beneath the front of boiling under the face
   * @param flux sum over laws, overwritten by addition; heat is what enters at the face
   */
  void evaluate(
      double faceTemperature, double time, FaceMemory memory, Beneath beneath, SurfaceFlux flux);

  /**
   * The same face where only {@code surroundings} act on it: it gives off vapour where it boils and
   * nowhere else, and holds, is fed and grows a crust as before.
   *
   * @param surroundings a law that carries nothing along and has a value at any temperature
   */
  RememberingLaw withoutVapour(SurfaceLaw surroundings);

  @Override
  default boolean remembers() {
    return true;
  }

  @Override
  default boolean holdsWater() {
    return true;
  }
}
