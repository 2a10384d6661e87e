package org.roastfield.core.material;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * What conducts and stores heat: density, thermal conductivity k(T), specific heat capacity c(T)
 * and latent heats.
 *
 * @param name shown in messages and reports
 * @param density ρ [kg/m³], constant
 * @param conductivity k [W/(m·K)]
 * @param heatCapacity c [J/(kg·K)], sensible: without the latent heats
 * @param latentHeats taken up beside the sensible heat, in any order
 * @param freezingPoint initial freezing point [K], at or below which a cut holds ice; 0 if there is
 *     none
 * @param moisture its water
 */
public record Material(
    String name,
    double density,
    PropertyCurve conductivity,
    PropertyCurve heatCapacity,
    List<LatentHeat> latentHeats,
    double freezingPoint,
    Moisture moisture) {

  /**
   * @throws IllegalArgumentException if {@code name} is blank, {@code density} is not finite and
   *     positive, or {@code freezingPoint} is negative or not finite
   */
  public Material {
    Check.notBlank("name", name);
    Check.positive("density", density);
    latentHeats = List.copyOf(latentHeats);
    Check.notNegative("freezingPoint", freezingPoint);
  }

  /** A material of whose water nothing is known. */
  public Material(
      String name,
      double density,
      PropertyCurve conductivity,
      PropertyCurve heatCapacity,
      List<LatentHeat> latentHeats,
      double freezingPoint) {
    this(name, density, conductivity, heatCapacity, latentHeats, freezingPoint, Moisture.UNKNOWN);
  }

  /** A material without latent heats, without a freezing point, of whose water nothing is known. */
  public Material(
      String name, double density, PropertyCurve conductivity, PropertyCurve heatCapacity) {
    this(name, density, conductivity, heatCapacity, List.of(), 0);
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

  /** The same with another density [kg/m³], and so another diffusivity; its water stays. */
  public Material withDensity(double other) {
    return new Material(
        name, other, conductivity, heatCapacity, latentHeats, freezingPoint, moisture);
  }

  /** The same with water. */
  public Material withMoisture(Moisture other) {
    return new Material(
        name, density, conductivity, heatCapacity, latentHeats, freezingPoint, other);
  }

  /** Whether neither conductivity nor heat capacity depends on temperature. */
  public boolean isConstant() {
    return conductivity.isConstant() && heatCapacity.isConstant() && latentHeats.isEmpty();
  }

  /** Apparent heat capacity at a temperature [K], with the latent heats [J/(kg·K)]. */
  public double apparentHeatCapacity(double temperature) {
    double sum = heatCapacity.at(temperature);
    for (int i = 0; i < latentHeats.size(); i++) {
      sum += latentHeats.get(i).heatCapacity(temperature);
    }
    return sum;
  }

  /** Heat that 1 kg takes up between two temperatures [K], latent heats included [J/kg]. */
  public double heatBetween(double from, double to) {
    double sum = heatCapacity.integral(to) - heatCapacity.integral(from);
    for (int i = 0; i < latentHeats.size(); i++) {
      LatentHeat latent = latentHeats.get(i);
      sum += latent.takenUp(to) - latent.takenUp(from);
    }
    return sum;
  }

  /** Thermal diffusivity k/(ρ c) of sensible heat [m²/s] at a temperature [K]. */
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
