package org.roastfield.core.air;

import org.roastfield.core.internal.Check;

/**
 * Dry air at the pressures of kitchens and mountains, eqs. (23)-(26). Against the table of air in
 * [Incropera2007] (A.4), 250-800 K: viscosity within 2.1 %, conductivity and heat capacity within
 * 0.8 % and 0.1 %.
 *
 * <p>Moist air of a chamber departs from it: 0.05 kg/kg of vapour make it 3 % lighter at the same
 * temperature and raise its heat capacity by 4 %.
 */
public final class DryAir {

  /** Lower end of the range of temperature [K]. */
  public static final double LOWEST = 240;

  /** Upper end of the range of temperature [K]. */
  public static final double HIGHEST = 800;

  /** Specific gas constant [J/(kg·K)]: 8.31446/0.028964 [CODATA2018]. */
  private static final double GAS_CONSTANT = 287.06;

  /** Sutherland's constants [kg/(m·s·√K)] and [K] as [USStandardAtmosphere1976] has them. */
  private static final double VISCOSITY_FACTOR = 1.458e-6;

  private static final double VISCOSITY_TEMPERATURE = 110.4;

  /** Constants of conductivity [W/(m·K^1.5)] and [K], [USStandardAtmosphere1976]. */
  private static final double CONDUCTIVITY_FACTOR = 2.64638e-3;

  private static final double CONDUCTIVITY_TEMPERATURE = 245.4;
  private static final double CONDUCTIVITY_DECAY = 12;

  private DryAir() {}

  /**
   * Density [kg/m³], eq. (23).
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   * @param pressure [Pa], greater than 0
   */
  public static double density(double temperature, double pressure) {
    checked(temperature);
    return Check.positive("pressure", pressure) / (GAS_CONSTANT * temperature);
  }

  /**
   * Dynamic viscosity [Pa·s], eq. (24).
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   */
  public static double viscosity(double temperature) {
    double t = checked(temperature);
    return VISCOSITY_FACTOR * t * Math.sqrt(t) / (t + VISCOSITY_TEMPERATURE);
  }

  /**
   * Thermal conductivity [W/(m·K)], eq. (25).
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   */
  public static double conductivity(double temperature) {
    double t = checked(temperature);
    double decay = StrictMath.pow(10, -CONDUCTIVITY_DECAY / t);
    return CONDUCTIVITY_FACTOR * t * Math.sqrt(t) / (t + CONDUCTIVITY_TEMPERATURE * decay);
  }

  /**
   * Specific heat capacity at constant pressure [J/(kg·K)], eq. (26): a cubic through the table of
   * [Incropera2007], 250-800 K, within 0.7 J/(kg·K) of it.
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   */
  public static double heatCapacity(double temperature) {
    double x = (checked(temperature) - 500) / 100;
    return 1029.92 + x * (18.893 + x * (2.6875 - x * 0.4372));
  }

  /**
   * Prandtl number μ c/k, 0.68-0.73.
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   */
  public static double prandtl(double temperature) {
    return viscosity(temperature) * heatCapacity(temperature) / conductivity(temperature);
  }

  private static double checked(double temperature) {
    return Check.inRange("temperature", temperature, LOWEST, HIGHEST);
  }
}
