package org.roastfield.core.surface;

/**
 * Temperature at which a law lets no heat through, by bisection; NaN above boiling counts as none.
 */
final class SteadyFace {

  private SteadyFace() {}

  static double of(SurfaceLaw law) {
    double low = 270;
    double high = 505;
    SurfaceFlux flux = new SurfaceFlux();
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      flux.clear();
      law.evaluate(middle, 0, flux);
      if (flux.heatFlux() > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
