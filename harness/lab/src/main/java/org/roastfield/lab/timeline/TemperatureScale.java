package org.roastfield.lab.timeline;

import java.util.Locale;
import org.roastfield.core.units.Temperatures;

/** Scale in which temperatures are shown. */
public enum TemperatureScale {
  CELSIUS("°C") {
    @Override
    public double value(double kelvin) {
      return Temperatures.toCelsius(kelvin);
    }
  },
  FAHRENHEIT("°F") {
    @Override
    public double value(double kelvin) {
      return Temperatures.toFahrenheit(kelvin);
    }
  };

  private final String unit;

  TemperatureScale(String unit) {
    this.unit = unit;
  }

  /** Unit sign. */
  public String unit() {
    return unit;
  }

  /** Number on this scale of a temperature [K]. */
  public abstract double value(double kelvin);

  /** Number on this scale of a temperature difference [K]. */
  public double difference(double kelvin) {
    return this == FAHRENHEIT ? 1.8 * kelvin : kelvin;
  }

  /** Unit sign of a difference. */
  public String differenceUnit() {
    return this == FAHRENHEIT ? "°F" : "K";
  }

  /** Temperature [K] in words, to one decimal, such as "57.0 °C". */
  public String text(double kelvin) {
    return String.format(Locale.ROOT, "%.1f %s", value(kelvin), unit);
  }

  /** Temperature difference [K] in words, to one decimal: "1.4 K" or "2.5 °F". */
  public String differenceText(double kelvin) {
    return String.format(Locale.ROOT, "%.1f %s", difference(kelvin), differenceUnit());
  }

  /** The same to a whole degree: "20 K" or "36 °F". */
  public String wholeDifferenceText(double kelvin) {
    return String.format(Locale.ROOT, "%.0f %s", difference(kelvin), differenceUnit());
  }
}
