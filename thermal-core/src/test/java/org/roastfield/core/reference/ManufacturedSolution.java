package org.roastfield.core.reference;

/**
 * Manufactured solution of nonlinear conduction: T(r, t) = Tb + A cos(ω r) exp(−λ t), for any
 * exponent.
 *
 * <p>With k(T) and C(T) linear in temperature, the source S = C T_t − r^−m (r^m k T_r)_r makes the
 * field exact: S = −λ C (T − Tb) − k′ T_r² − k (T_rr + m T_r / r), and T_r / r is finite at the
 * centre. The field is even in r and so meets symmetry at r = 0. Source of the method: Roache,
 * Journal of Fluids Engineering 124, 2002, 4-10. Validity: wherever k and C stay positive.
 *
 * @param exponent geometry exponent m, at least 0
 * @param field temperature that is to be the solution
 * @param conductivity k(T) [W/(m·K)]
 * @param heatCapacity C(T), per volume [J/(m³·K)]
 */
public record ManufacturedSolution(
    double exponent, Field field, LinearProperty conductivity, LinearProperty heatCapacity) {

  /**
   * Field T(r, t) = Tb + A cos(ω r) exp(−λ t).
   *
   * @param base Tb, on any scale of temperature, the same as that of the properties
   * @param amplitude A [K]
   * @param wavenumber ω [1/m]
   * @param decayRate λ [1/s]
   */
  public record Field(double base, double amplitude, double wavenumber, double decayRate) {
    public Field {
      Require.finite("base", base);
      Require.finite("amplitude", amplitude);
      Require.positive("wavenumber", wavenumber);
      Require.finite("decayRate", decayRate);
    }

    double temperature(double r, double t) {
      return base + envelope(t) * Math.cos(wavenumber * r);
    }

    double gradient(double r, double t) {
      return -envelope(t) * wavenumber * Math.sin(wavenumber * r);
    }

    double curvature(double r, double t) {
      return -envelope(t) * wavenumber * wavenumber * Math.cos(wavenumber * r);
    }

    double gradientOverRadius(double r, double t) {
      return r == 0 ? curvature(0, t) : gradient(r, t) / r;
    }

    private double envelope(double t) {
      return amplitude * Math.exp(-decayRate * t);
    }
  }

  public ManufacturedSolution {
    Require.atLeast("exponent", 0, exponent);
  }

  /** T at r [m] and t [s]. */
  public double temperature(double r, double t) {
    return field.temperature(Require.atLeast("r", 0, r), t);
  }

  /** Heat source S [W/m³] that the field needs at r [m] and t [s]. */
  public double source(double r, double t) {
    double temperature = temperature(r, t);
    double storage =
        -field.decayRate() * heatCapacity.at(temperature) * (temperature - field.base());
    double gradient = field.gradient(r, t);
    double laplacian = field.curvature(r, t) + exponent * field.gradientOverRadius(r, t);
    return storage
        - conductivity.slope() * gradient * gradient
        - conductivity.at(temperature) * laplacian;
  }

  /** k T_r [W/m²] at r [m] and t [s]: at the surface, the heat flux into the body. */
  public double flux(double r, double t) {
    return conductivity.at(temperature(r, t)) * field.gradient(r, t);
  }
}
