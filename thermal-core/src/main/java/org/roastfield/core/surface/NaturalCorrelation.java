package org.roastfield.core.surface;

import org.roastfield.core.air.DryAir;
import org.roastfield.core.air.MoistAir;

/**
 * Mean Nusselt number of a body in still air, Nu = (base + c(Pr) Ra^(1/root))^power, with air's
 * properties at the film temperature, eqs. (27)-(30).
 *
 * <p>h L at standard pressure is (base curve + rise curve · (L³ D)^(1/root))^power with D the
 * difference of temperature [K]; the curves are functions of film temperature.
 */
enum NaturalCorrelation {

  /** Horizontal cylinder, L its diameter [ChurchillChuCylinder1975]; Ra ≤ 1e12. */
  HORIZONTAL_CYLINDER(0.60, 6, 2, 1e12) {
    @Override
    double coefficient(double prandtl) {
      return 0.387 / churchill(0.559 / prandtl, 8.0 / 27);
    }
  },

  /** Upright plate, L its height [ChurchillChuPlate1975]; Ra ≤ 1e12. */
  VERTICAL_PLATE(0.825, 6, 2, 1e12) {
    @Override
    double coefficient(double prandtl) {
      return 0.387 / churchill(0.492 / prandtl, 8.0 / 27);
    }
  },

  /** Sphere, L its diameter [Churchill1983]; Ra ≤ 1e11, Pr ≥ 0.7 by its author. */
  SPHERE(2, 4, 1, 1e11) {
    @Override
    double coefficient(double prandtl) {
      return 0.589 / churchill(0.469 / prandtl, 4.0 / 9);
    }
  },

  /**
   * Horizontal plate, L its area over its perimeter, but for the factor of each side, which {@link
   * FaceForm} has; Ra ≤ 1e7.
   */
  HORIZONTAL_PLATE(0, 4, 1, 1e7) {
    @Override
    double coefficient(double prandtl) {
      return 1;
    }
  };

  /** Standard acceleration of gravity [m/s²], by definition. */
  private static final double GRAVITY = 9.80665;

  private final double base;
  private final int root;
  private final int power;
  private final double highestRayleigh;

  // Never changed after it is made.
  @SuppressWarnings("ImmutableEnumChecker")
  private final FilmCurve baseCurve;

  // Never changed after it is made.
  @SuppressWarnings("ImmutableEnumChecker")
  private final FilmCurve riseCurve;

  NaturalCorrelation(double base, int root, int power, double highestRayleigh) {
    this.base = base;
    this.root = root;
    this.power = power;
    this.highestRayleigh = highestRayleigh;
    this.baseCurve = FilmCurve.of(film -> base * conductivityRoot(film));
    this.riseCurve =
        FilmCurve.of(
            film ->
                coefficient(DryAir.prandtl(film))
                    * conductivityRoot(film)
                    * rooted(rayleighPerVolume(film)));
  }

  /** c(Pr). */
  abstract double coefficient(double prandtl);

  /** [1 + x^(9/16)]^exponent. */
  private static double churchill(double x, double exponent) {
    return StrictMath.pow(1 + StrictMath.pow(x, 9.0 / 16), exponent);
  }

  private double conductivityRoot(double film) {
    double conductivity = DryAir.conductivity(film);
    return power == 2 ? Math.sqrt(conductivity) : conductivity;
  }

  /** Ra over L³ ΔT at standard pressure [1/(m³·K)], g Pr/(T ν²). */
  static double rayleighPerVolume(double film) {
    double viscosity = DryAir.viscosity(film) / DryAir.density(film, MoistAir.STANDARD_PRESSURE);
    return GRAVITY * DryAir.prandtl(film) / (film * viscosity * viscosity);
  }

  /** Mean Nusselt number. */
  double nusselt(double rayleigh, double prandtl) {
    double rise = base + coefficient(prandtl) * rooted(rayleigh);
    return power == 2 ? rise * rise : rise;
  }

  double highestRayleigh() {
    return highestRayleigh;
  }

  int root() {
    return root;
  }

  int power() {
    return power;
  }

  FilmCurve baseCurve() {
    return baseCurve;
  }

  FilmCurve riseCurve() {
    return riseCurve;
  }

  /** x^(1/root), for roots 4 and 6. */
  double rooted(double x) {
    double half = Math.sqrt(x);
    return root == 4 ? Math.sqrt(half) : StrictMath.cbrt(half);
  }
}
