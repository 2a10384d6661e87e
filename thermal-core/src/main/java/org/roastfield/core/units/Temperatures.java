package org.roastfield.core.units;

import org.roastfield.core.internal.Check;

/**
 * Conversions at the edge of the library; inside, every temperature is in kelvin.
 *
 * <p>The kelvin, degree Celsius and degree Fahrenheit are related by definition: t/°C = T/K −
 * 273.15 (BIPM, SI Brochure, 9th edition, 2.3.1) and t/°F = 1.8 t/°C + 32.
 */
public final class Temperatures {

  /** Temperature of 0 °C [K], exact by definition. */
  public static final double ZERO_CELSIUS = 273.15;

  private static final double FAHRENHEIT_PER_KELVIN = 1.8;
  private static final double FAHRENHEIT_OFFSET = 32.0;

  private Temperatures() {}

  /**
   * Kelvin from degrees Celsius.
   *
   * @param degreesCelsius at least −273.15
   * @return temperature [K]
   * @throws IllegalArgumentException if below absolute zero or not finite
   */
  public static double celsius(double degreesCelsius) {
    Check.inRange("degreesCelsius", degreesCelsius, -ZERO_CELSIUS, Double.MAX_VALUE);
    return degreesCelsius + ZERO_CELSIUS;
  }

  /**
   * Kelvin from degrees Fahrenheit.
   *
   * @param degreesFahrenheit at least −459.67
   * @return temperature [K]
   * @throws IllegalArgumentException if below absolute zero or not finite
   */
  public static double fahrenheit(double degreesFahrenheit) {
    Check.inRange("degreesFahrenheit", degreesFahrenheit, -459.67, Double.MAX_VALUE);
    return (degreesFahrenheit - FAHRENHEIT_OFFSET) / FAHRENHEIT_PER_KELVIN + ZERO_CELSIUS;
  }

  /** Degrees Celsius from kelvin. */
  public static double toCelsius(double kelvin) {
    return kelvin - ZERO_CELSIUS;
  }

  /** Degrees Fahrenheit from kelvin. */
  public static double toFahrenheit(double kelvin) {
    return (kelvin - ZERO_CELSIUS) * FAHRENHEIT_PER_KELVIN + FAHRENHEIT_OFFSET;
  }
}
