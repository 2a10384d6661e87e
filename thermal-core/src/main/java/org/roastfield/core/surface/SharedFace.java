package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * Two laws that share a face, eq. (57): fluxes are averaged over the area, at one surface
 * temperature.
 *
 * @param share of the face under {@code on}, in [0, 1]
 * @param on law of that share
 * @param off law of the rest
 */
record SharedFace(double share, SurfaceLaw on, SurfaceLaw off) implements SurfaceLaw {

  SharedFace {
    Check.inRange("share", share, 0, 1);
    if (on instanceof RememberingLaw || off instanceof RememberingLaw) {
      throw new IllegalArgumentException(
          "laws that share a face must carry nothing along: turn a face that dries (Turns.rolls)"
              + " instead, were "
              + on
              + " and "
              + off);
    }
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    if (share > 0) {
      flux.addShare(share, on, surfaceTemperature, time);
    }
    if (share < 1) {
      flux.addShare(1 - share, off, surfaceTemperature, time);
    }
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    return new SharedFace(share, on.under(wrap), off.under(wrap));
  }

  @Override
  public SurfaceLaw from(double time) {
    return new SharedFace(share, on.from(time), off.from(time));
  }

  @Override
  public boolean remembers() {
    return on.remembers() || off.remembers();
  }

  @Override
  public SurfaceLaw scaled(double factor) {
    return new SharedFace(share, on.scaled(factor), off.scaled(factor));
  }

  @Override
  public double highestTemperature() {
    return Math.min(
        share > 0 ? on.highestTemperature() : Double.POSITIVE_INFINITY,
        share < 1 ? off.highestTemperature() : Double.POSITIVE_INFINITY);
  }

  @Override
  public double shortestPeriod() {
    return Math.min(on.shortestPeriod(), off.shortestPeriod());
  }
}
