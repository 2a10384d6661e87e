package org.roastfield.core.material;

import org.roastfield.core.internal.Check;

/**
 * What conducts and stores heat: density, thermal conductivity k(T) and specific heat capacity
 * c(T).
 *
 * @param name shown in messages and reports
 * @param density ρ [kg/m³], constant
 * @param conductivity k [W/(m·K)]
 * @param heatCapacity c [J/(kg·K)]
 */
public record Material(
    String name, double density, PropertyCurve conductivity, PropertyCurve heatCapacity) {

  /**
   * @throws IllegalArgumentException if {@code name} is blank or {@code density} is not finite and
   *     positive
   */
  public Material {
    Check.notBlank("name", name);
    Check.positive("density", density);
  }

  /**
   * A material whose properties do not depend on temperature.
   *
   * @param conductivity k [W/(m·K)]
   * @param density ρ [kg/m³]
   * @param heatCapacity c [J/(kg·K)]
   */
  public static Material constant(
      String name, double conductivity, double density, double heatCapacity) {
    return new Material(
        name, density, PropertyCurve.constant(conductivity), PropertyCurve.constant(heatCapacity));
  }

  /** Whether neither conductivity nor heat capacity depends on temperature. */
  public boolean isConstant() {
    return conductivity.isConstant() && heatCapacity.isConstant();
  }

  /** Thermal diffusivity k/(ρ c) [m²/s] at a temperature [K]. */
  public double diffusivity(double temperature) {
    return conductivity.at(temperature) / (density * heatCapacity.at(temperature));
  }

  /** Lowest temperature at which both curves are inside their range [K]. */
  public double lowest() {
    return Math.max(conductivity.lowest(), heatCapacity.lowest());
  }

  /** Highest temperature at which both curves are inside their range [K]. */
  public double highest() {
    return Math.min(conductivity.highest(), heatCapacity.highest());
  }
}
