package org.roastfield.core.air;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/** Humidity of air and the heat that evaporation takes. */
public final class MoistAir {

  /** Standard atmospheric pressure at sea level [Pa], by definition. */
  public static final double STANDARD_PRESSURE = 101_325;

  /** Molar mass of water over that of dry air, 18.015/28.964. */
  public static final double MOLAR_MASS_RATIO = 0.62198;

  private MoistAir() {}

  /**
   * Pressure at an altitude in the international standard atmosphere [Pa], p = 101 325 (1 −
   * 2.25577e-5 z)^5.2559 [ICAO1993].
   *
   * @param altitude z above sea level [m], −500 … 9000
   */
  public static double pressureAtAltitude(double altitude) {
    Check.inRange("altitude", altitude, -500, 9000);
    return STANDARD_PRESSURE * StrictMath.pow(1 - 2.25577e-5 * altitude, 5.2559);
  }

  /**
   * Vapour pressure [Pa] of air with a humidity ratio, p_v = w p/(0.622 + w).
   *
   * @param humidityRatio w [kg water / kg dry air], at least 0
   * @param pressure p [Pa], greater than 0
   */
  public static double vapourPressure(double humidityRatio, double pressure) {
    Check.notNegative("humidityRatio", humidityRatio);
    Check.positive("pressure", pressure);
    return humidityRatio * pressure / (MOLAR_MASS_RATIO + humidityRatio);
  }

  /**
   * Latent heat of vaporisation [J/kg], L = 2.501e6 − 2360 t with t in °C: within 0.3 % of the
   * steam tables from 0 to 90 °C, 0.5 % at 110 °C.
   *
   * @param temperature [K]
   */
  public static double latentHeat(double temperature) {
    return 2.501e6 - 2360 * (temperature - Temperatures.ZERO_CELSIUS);
  }
}
