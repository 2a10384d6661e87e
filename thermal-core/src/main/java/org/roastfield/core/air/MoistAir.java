package org.roastfield.core.air;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/** Humidity of air and the heat that evaporation takes. */
public final class MoistAir {

  /** Standard atmospheric pressure at sea level [Pa], by definition. */
  public static final double STANDARD_PRESSURE = 101_325;

  /** Molar mass of water over that of dry air, 18.015/28.964. */
  public static final double MOLAR_MASS_RATIO = 0.62198;

  /**
   * Specific heat capacity of dry air near room temperature [J/(kg·K)]; 0.8 % more at 400 K, 2.4 %
   * at 500 K [Incropera2007].
   */
  public static final double AIR_HEAT_CAPACITY = 1006;

  /**
   * Specific heat capacity of water vapour at low pressure [J/(kg·K)]: 1864 at 300 K, 1901 at 400
   * K, 1926 at 450 K (ideal gas), from memory of steam tables.
   */
  public static final double VAPOUR_HEAT_CAPACITY = 1880;

  /** Hottest air that {@link #wetBulb} is for [K]. */
  public static final double HOTTEST_WET_BULB_AIR = 573.15;

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
   * Humidity ratio [kg water / kg dry air] of air with a vapour pressure, eq. (20).
   *
   * @param vapourPressure p_v [Pa], at least 0 and below the pressure
   * @param pressure p [Pa], greater than 0
   */
  public static double humidityRatio(double vapourPressure, double pressure) {
    Check.positive("pressure", pressure);
    Check.notNegative("vapourPressure", vapourPressure);
    if (!(vapourPressure < pressure)) {
      throw new IllegalArgumentException(
          "vapourPressure must be below the pressure " + pressure + ", was " + vapourPressure);
    }
    return MOLAR_MASS_RATIO * vapourPressure / (pressure - vapourPressure);
  }

  /**
   * Relative humidity p_v/p_sat(T), eq. (20); above 1 in air that is supersaturated.
   *
   * @param vapourPressure p_v [Pa], at least 0
   * @param temperature of the air [K], in the range of {@link SaturationPressure}
   */
  public static double relativeHumidity(double vapourPressure, double temperature) {
    return Check.notNegative("vapourPressure", vapourPressure) / SaturationPressure.at(temperature);
  }

  /**
   * Vapour pressure [Pa] of air with a relative humidity, eq. (20).
   *
   * @param relativeHumidity in [0, 1]
   * @param temperature of the air [K], in the range of {@link SaturationPressure}
   */
  public static double vapourPressureAtHumidity(double relativeHumidity, double temperature) {
    Check.inRange("relativeHumidity", relativeHumidity, 0, 1);
    return relativeHumidity * SaturationPressure.at(temperature);
  }

  /**
   * Dew point [K]: the temperature at which the vapour of the air begins to condense.
   *
   * @param vapourPressure p_v [Pa], from 425 Pa (−5 °C) to 3 MPa
   */
  public static double dewPoint(double vapourPressure) {
    return SaturationPressure.temperatureAt("vapourPressure", vapourPressure);
  }

  /**
   * Wet-bulb temperature [K], that of adiabatic saturation, eq. (21): to it air cools that takes up
   * water of that temperature until it is saturated. Heat capacities are constant: the wet bulb is
   * 0.03 K too low in air of 110 °C and 0.25 K in air of 300 °C.
   *
   * @param temperature of the air [K], from −5 °C to {@link #HOTTEST_WET_BULB_AIR}
   * @param humidityRatio w [kg/kg], at least 0 and at most saturated
   * @param pressure [Pa], from 20 to 200 kPa
   * @throws IllegalArgumentException also where the wet bulb is below −5 °C
   */
  public static double wetBulb(double temperature, double humidityRatio, double pressure) {
    Check.inRange("temperature", temperature, SaturationPressure.LOWEST, HOTTEST_WET_BULB_AIR);
    Check.notNegative("humidityRatio", humidityRatio);
    Check.inRange("pressure", pressure, 2e4, 2e5);
    double high = Math.min(temperature, SaturationPressure.boilingPoint(pressure));
    double low = SaturationPressure.LOWEST;
    checkWetBulb(temperature, humidityRatio, pressure, high);
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (dryness(middle, temperature, humidityRatio, pressure) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static void checkWetBulb(
      double temperature, double humidityRatio, double pressure, double high) {
    double vapour = vapourPressure(humidityRatio, pressure);
    if (high == temperature && vapour > SaturationPressure.at(temperature) * (1 + 1e-9)) {
      throw new IllegalArgumentException(
          "humidityRatio must be at most that of saturated air, was " + humidityRatio);
    }
    if (dryness(SaturationPressure.LOWEST, temperature, humidityRatio, pressure) < 0) {
      throw new IllegalArgumentException(
          "humidityRatio must be one with a wet bulb of at least −5 °C, was " + humidityRatio);
    }
  }

  /** Heat that air has to give above a wet bulb less what would saturate it [J/kg dry air]. */
  private static double dryness(
      double wetBulb, double temperature, double humidityRatio, double pressure) {
    double saturation = SaturationPressure.at(wetBulb);
    if (!(saturation < pressure)) {
      return Double.NEGATIVE_INFINITY;
    }
    double capacity = AIR_HEAT_CAPACITY + humidityRatio * VAPOUR_HEAT_CAPACITY;
    double missing = humidityRatio(saturation, pressure) - humidityRatio;
    return capacity * (temperature - wetBulb) - latentHeat(wetBulb) * missing;
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
