package org.roastfield.lab.files;

import org.roastfield.core.units.Temperatures;

/** Units that the columns of a log can have. */
public enum LogUnit {
  /** Seconds. */
  S("s", "s", true),
  /** Minutes. */
  MIN("min", "min", true),
  /** Hours. */
  H("h", "h", true),
  /** Degrees Celsius. */
  CELSIUS("degC", "Cel", false),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("degF", "[degF]", false),
  /** Kelvin. */
  KELVIN("K", "K", false);

  private final String word;
  private final String ucum;
  private final boolean time;

  LogUnit(String word, String ucum, boolean time) {
    this.word = word;
    this.ucum = ucum;
    this.time = time;
  }

  /** As headers write it, such as "degC". */
  public String word() {
    return word;
  }

  /** Code of the Unified Code for Units of Measure, such as "Cel". */
  public String ucum() {
    return ucum;
  }

  /** Whether it is a unit of time, not of temperature. */
  public boolean isTime() {
    return time;
  }

  /** Value in seconds or kelvin. */
  public double si(double value) {
    return switch (this) {
      case S -> value;
      case MIN -> value * 60;
      case H -> value * 3600;
      case CELSIUS -> value + Temperatures.ZERO_CELSIUS;
      case FAHRENHEIT -> (value - 32) / 1.8 + Temperatures.ZERO_CELSIUS;
      case KELVIN -> value;
    };
  }

  /** Value in this unit of seconds or kelvin. */
  public double fromSi(double si) {
    return switch (this) {
      case S -> si;
      case MIN -> si / 60;
      case H -> si / 3600;
      case CELSIUS -> si - Temperatures.ZERO_CELSIUS;
      case FAHRENHEIT -> (si - Temperatures.ZERO_CELSIUS) * 1.8 + 32;
      case KELVIN -> si;
    };
  }

  /** How many kelvin a difference of one is; for units of temperature. */
  public double kelvinPerUnit() {
    return this == FAHRENHEIT ? 1 / 1.8 : 1;
  }
}
