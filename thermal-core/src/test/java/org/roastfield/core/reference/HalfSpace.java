package org.roastfield.core.reference;

/**
 * Exact warming of a half space at uniform start whose surface is heated from time zero on.
 *
 * <p>The result is the share (T − T0) / (T∞ − T0) of the step between start and surroundings.
 * Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., 1959, chapter II; section 2.7
 * for the Robin surface. Validity: constant properties and surroundings; serves a body of half
 * thickness or radius R at its surface while α t is far below R². Absolute error below 1e-13.
 */
public final class HalfSpace {
  private HalfSpace() {}

  /**
   * Share at a depth under a Robin surface: erfc(u) − exp(X + τ) erfc(u + √τ), u = X / (2 √τ).
   *
   * @param distance X = h x / k, at least 0
   * @param time τ = h² α t / k², positive
   */
  public static double robin(double distance, double time) {
    double u = similarity(distance, time);
    double decay = Math.exp(-u * u);
    // (u + √τ)² = u² + X + τ, so that exp(X + τ), which overflows, drops out.
    double scaled = ErrorFunction.scaledComplement(u + Math.sqrt(time));
    return decay * (ErrorFunction.scaledComplement(u) - scaled);
  }

  /**
   * Heat flux into the Robin surface, in units of h (T∞ − T0).
   *
   * @param time τ = h² α t / k², at least 0
   */
  public static double robinSurfaceFlux(double time) {
    return ErrorFunction.scaledComplement(Math.sqrt(Require.atLeast("time", 0, time)));
  }

  /**
   * Share at a depth under a surface held at T∞ from time zero on.
   *
   * @param distance depth, at least 0, in any unit of length L
   * @param time α t in the unit L², positive
   */
  public static double dirichlet(double distance, double time) {
    return ErrorFunction.complement(similarity(distance, time));
  }

  /**
   * Heat flux into the surface held at T∞, in units of k (T∞ − T0) / L.
   *
   * @param time α t in the unit L², positive
   */
  public static double dirichletSurfaceFlux(double time) {
    return 1 / Math.sqrt(Math.PI * Require.positive("time", time));
  }

  private static double similarity(double distance, double time) {
    Require.atLeast("distance", 0, distance);
    return distance / (2 * Math.sqrt(Require.positive("time", time)));
  }
}
