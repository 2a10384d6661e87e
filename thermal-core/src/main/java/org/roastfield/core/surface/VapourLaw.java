package org.roastfield.core.surface;

/**
 * Vapour that a moist face gives off to air, with its heat: a law that can also be asked what it
 * would be in air of another humidity.
 */
public interface VapourLaw extends SurfaceLaw {

  /**
   * Adds this law's share in air of a given vapour pressure to {@code flux}.
   *
   * @param vapourPressure of the air, below {@link #pressure} [Pa]
   * @param surfaceTemperature [K]
   * @param time since the start of the cook [s]
   * @param flux sum over laws, overwritten by addition
   */
  void evaluateIn(double vapourPressure, double surfaceTemperature, double time, SurfaceFlux flux);

  /** Vapour pressure of the air as stated [Pa]. */
  Signal vapourPressure();

  /** Pressure of the air [Pa]. */
  double pressure();

  /** Water activity of the face in (0, 1]. */
  double waterActivity();

  /**
   * Vapour flux for each unit of ln(p − p_v), eq. (9) [kg/(m²·s)].
   *
   * @param surfaceTemperature [K]
   * @param time since the start of the cook [s]
   */
  double strength(double surfaceTemperature, double time);

  @Override
  default VapourLaw scaled(double factor) {
    return this;
  }

  @Override
  default void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    evaluateIn(vapourPressure().at(time), surfaceTemperature, time, flux);
  }
}
