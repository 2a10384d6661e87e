package org.roastfield.core.surface;

/**
 * Mean Nusselt number of a body in wind, air's properties at the film temperature, eqs. (31)-(33).
 */
enum ForcedCorrelation {

  /**
   * Cylinder across the wind, L its diameter [ChurchillBernstein1977]; Re Pr > 0.2. Turbulence and
   * narrow surroundings raise it.
   */
  CYLINDER(0.4, 4e5) {
    @Override
    double nusselt(double reynolds, double prandtl) {
      double laminar =
          0.62
              * Math.sqrt(reynolds)
              * StrictMath.cbrt(prandtl)
              / Math.sqrt(Math.sqrt(1 + StrictMath.pow(0.4 / prandtl, 2.0 / 3)));
      double turbulent = 1 + StrictMath.pow(reynolds / 282_000, 5.0 / 8);
      return 0.3 + laminar * StrictMath.pow(turbulent, 0.8);
    }
  },

  /** Plate along the wind, L its length, laminar [Incropera2007]; 30 ≤ Re ≤ 5e5. */
  PLATE(30, 5e5) {
    @Override
    double nusselt(double reynolds, double prandtl) {
      return 0.664 * Math.sqrt(reynolds) * StrictMath.cbrt(prandtl);
    }
  },

  /** Sphere, L its diameter [Whitaker1972]; 3.5 ≤ Re ≤ 7.6e4. */
  SPHERE(3.5, 7.6e4) {
    @Override
    double nusselt(double reynolds, double prandtl) {
      double third = StrictMath.cbrt(reynolds);
      return 2 + (0.4 * Math.sqrt(reynolds) + 0.06 * third * third) * StrictMath.pow(prandtl, 0.4);
    }
  };

  private final double lowestReynolds;
  private final double highestReynolds;

  ForcedCorrelation(double lowestReynolds, double highestReynolds) {
    this.lowestReynolds = lowestReynolds;
    this.highestReynolds = highestReynolds;
  }

  abstract double nusselt(double reynolds, double prandtl);

  double lowestReynolds() {
    return lowestReynolds;
  }

  double highestReynolds() {
    return highestReynolds;
  }
}
