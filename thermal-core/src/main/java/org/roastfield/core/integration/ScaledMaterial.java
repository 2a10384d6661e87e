package org.roastfield.core.integration;

import java.util.List;
import org.roastfield.core.material.LatentHeat;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.PropertyCurve;
import org.roastfield.core.units.Temperatures;

/**
 * Enthalpy and Kirchhoff temperature in kelvin, so that both equal temperature when properties are
 * constant, eqs. (2)-(3).
 *
 * <p>u(T) = 273.15 K + ∫ c/c₀ dT and φ(T) = 273.15 K + ∫ k/k₀ dT from 273.15 K, with c the apparent
 * heat capacity, latent heats included, and c₀, k₀ the values without them at a reference
 * temperature. Then ∂u/∂t = α₀ ∇²φ with α₀ = k₀/(ρ c₀). Owned by one integration.
 */
final class ScaledMaterial {

  private static final double REFERENCE = Temperatures.ZERO_CELSIUS + 40;

  private Material material;
  private PropertyCurve conductivityCurve;
  private PropertyCurve heatCapacityCurve;
  private List<LatentHeat> latentHeats;
  private boolean constant;
  private double density;
  private double conductivity;
  private double heatCapacity;
  private double expandedValue;
  private double expandedSlope = 1;

  ScaledMaterial(Material material) {
    this.material = material;
    this.conductivityCurve = material.conductivity();
    this.heatCapacityCurve = material.heatCapacity();
    this.latentHeats = material.latentHeats();
    set(material);
  }

  /** Takes the properties of another material. */
  void set(Material material) {
    this.material = material;
    this.conductivityCurve = material.conductivity();
    this.heatCapacityCurve = material.heatCapacity();
    this.latentHeats = material.latentHeats();
    this.constant = material.isConstant();
    this.density = material.density();
    this.conductivity = conductivityCurve.at(REFERENCE);
    this.heatCapacity = heatCapacityCurve.at(REFERENCE);
  }

  Material material() {
    return material;
  }

  boolean isConstant() {
    return constant;
  }

  /** k₀ [W/(m·K)]. */
  double conductivity() {
    return conductivity;
  }

  /** ρ c₀ [J/(m³·K)]. */
  double volumetricHeatCapacity() {
    return density * heatCapacity;
  }

  /** α₀ [m²/s]. */
  double diffusivity() {
    return conductivity / volumetricHeatCapacity();
  }

  /** u(T) [K]. */
  double enthalpy(double temperature) {
    if (constant) {
      return temperature;
    }
    return Temperatures.ZERO_CELSIUS
        + material.heatBetween(Temperatures.ZERO_CELSIUS, temperature) / heatCapacity;
  }

  /** du/dT. */
  double enthalpySlope(double temperature) {
    return constant ? 1 : material.apparentHeatCapacity(temperature) / heatCapacity;
  }

  /** φ(T) [K]. */
  double kirchhoff(double temperature) {
    if (constant) {
      return temperature;
    }
    return Temperatures.ZERO_CELSIUS + conductivityCurve.integral(temperature) / conductivity;
  }

  /**
   * Finds φ and dφ/dT at a temperature together; read them by {@link #kirchhoff()} and {@link
   * #kirchhoffSlope()}.
   */
  void expand(double temperature) {
    if (constant) {
      expandedValue = temperature;
      expandedSlope = 1;
    } else {
      expandedSlope = conductivityCurve.at(temperature) / conductivity;
      expandedValue = kirchhoff(temperature);
    }
  }

  /** φ at the last {@link #expand} [K]. */
  double kirchhoff() {
    return expandedValue;
  }

  /** dφ/dT at the last {@link #expand}. */
  double kirchhoffSlope() {
    return expandedSlope;
  }

  /** dφ/dT. */
  double kirchhoffSlope(double temperature) {
    return constant ? 1 : conductivityCurve.at(temperature) / conductivity;
  }

  /** u of many temperatures [K]; both arrays equally long. */
  void enthalpies(double[] temperatures, double[] enthalpies) {
    heatCapacityCurve.integrals(
        temperatures, Temperatures.ZERO_CELSIUS, 1 / heatCapacity, enthalpies);
    for (int i = 0; i < latentHeats.size(); i++) {
      latentHeats.get(i).addTakenUp(temperatures, 1 / heatCapacity, enthalpies);
    }
  }

  /** du/dT of many temperatures. */
  void enthalpySlopes(double[] temperatures, double[] slopes) {
    heatCapacityCurve.at(temperatures, 1 / heatCapacity, slopes);
    for (int i = 0; i < latentHeats.size(); i++) {
      latentHeats.get(i).addHeatCapacities(temperatures, 1 / heatCapacity, slopes);
    }
  }

  /** φ of many temperatures [K]. */
  void kirchhoffs(double[] temperatures, double[] values) {
    conductivityCurve.integrals(temperatures, Temperatures.ZERO_CELSIUS, 1 / conductivity, values);
  }

  /** dφ/dT of many temperatures. */
  void kirchhoffSlopes(double[] temperatures, double[] slopes) {
    conductivityCurve.at(temperatures, 1 / conductivity, slopes);
  }
}
