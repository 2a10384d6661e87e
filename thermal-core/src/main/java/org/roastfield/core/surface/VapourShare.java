package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * Vapour of a face of which only a share gives any off, eq. (57): the rest lies on metal.
 *
 * @param share of the face, in [0, 1]
 * @param whole vapour of that share, as if it were all of the face
 */
record VapourShare(double share, VapourLaw whole) implements VapourLaw {

  VapourShare {
    Check.inRange("share", share, 0, 1);
  }

  /** That share of a law of vapour, or of one that lets none through. */
  static SurfaceLaw of(double share, SurfaceLaw whole) {
    return whole instanceof VapourLaw vapour
        ? new VapourShare(share, vapour)
        : new SharedFace(share, whole, SurfaceLaw.insulated());
  }

  @Override
  public void evaluateIn(double vapour, double surfaceTemperature, double time, SurfaceFlux flux) {
    if (share > 0) {
      flux.addShare(
          share,
          (temperature, at, sum) -> whole.evaluateIn(vapour, temperature, at, sum),
          surfaceTemperature,
          time);
    }
  }

  @Override
  public Signal vapourPressure() {
    return whole.vapourPressure();
  }

  @Override
  public double pressure() {
    return whole.pressure();
  }

  @Override
  public double waterActivity() {
    return whole.waterActivity();
  }

  @Override
  public double strength(double surfaceTemperature, double time) {
    return share * whole.strength(surfaceTemperature, time);
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    return of(share, whole.under(wrap));
  }

  @Override
  public SurfaceLaw from(double time) {
    return of(share, whole.from(time));
  }

  @Override
  public boolean remembers() {
    return whole.remembers();
  }

  @Override
  public VapourShare scaled(double factor) {
    return new VapourShare(share, whole.scaled(factor));
  }

  @Override
  public double highestTemperature() {
    return share > 0 ? whole.highestTemperature() : Double.POSITIVE_INFINITY;
  }

  @Override
  public double shortestPeriod() {
    return whole.shortestPeriod();
  }
}
