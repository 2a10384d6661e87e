package org.roastfield.core.chamber;

import org.roastfield.core.air.DryAir;
import org.roastfield.core.internal.Check;

/**
 * The weather around a cooker.
 *
 * @param temperature of the air [K], −30 to 50 °C
 * @param wind at the cooker [m/s], 0 to 20
 * @param humidityRatio of the air [kg/kg], at least 0
 * @param pressure [Pa], greater than 0
 */
public record Outside(double temperature, double wind, double humidityRatio, double pressure) {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Outside {
    Check.inRange("temperature", temperature, 243.15, 323.15);
    Check.inRange("wind", wind, 0, 20);
    Check.notNegative("humidityRatio", humidityRatio);
    Check.positive("pressure", pressure);
  }

  /** The same weather with another wind [m/s]. */
  public Outside withWind(double speed) {
    return new Outside(temperature, speed, humidityRatio, pressure);
  }

  double density() {
    return DryAir.density(temperature, pressure);
  }
}
