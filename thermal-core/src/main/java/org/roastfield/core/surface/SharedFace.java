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
          "laws that share a face must carry nothing along, unless they are a DryingFace, were "
              + on
              + " and "
              + off);
    }
  }

  /** The same, where faces that dry stay one face that dries: what it holds is their mean. */
  static SurfaceLaw of(double share, SurfaceLaw on, SurfaceLaw off) {
    if (off instanceof DryingFace drying) {
      return drying(drying, share, on, off);
    }
    return on instanceof DryingFace drying
        ? drying(drying, share, on, off)
        : new SharedFace(share, on, off);
  }

  private static DryingFace drying(DryingFace face, double share, SurfaceLaw on, SurfaceLaw off) {
    Check.inRange("share", share, 0, 1);
    SurfaceLaw wet =
        on instanceof DryingFace one && off instanceof DryingFace other
            ? wetOfBoth(share, one, other)
            : VapourShare.of(face == off ? 1 - share : share, face.wet());
    return new DryingFace(
        new SharedFace(share, dryOf(on), dryOf(off)),
        wet,
        face.water(),
        face.crust(),
        face.boilingPoint(),
        face.air());
  }

  private static SurfaceLaw dryOf(SurfaceLaw law) {
    return law instanceof DryingFace face ? face.dry() : law;
  }

  private static SurfaceLaw wetOfBoth(double share, DryingFace on, DryingFace off) {
    if (!on.water().equals(off.water())
        || !on.crust().equals(off.crust())
        || on.boilingPoint() != off.boilingPoint()
        || !on.air().equals(off.air())) {
      throw new IllegalArgumentException(
          "faces that dry and share one must have the same water, crust, boiling point and load of"
              + " the air, were "
              + on
              + " and "
              + off);
    }
    return on.wet().equals(off.wet()) ? on.wet() : new SharedFace(share, on.wet(), off.wet());
  }

  /** Mean over the face of a number of both. */
  double mean(double ofOn, double ofOff) {
    return share * ofOn + (1 - share) * ofOff;
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
