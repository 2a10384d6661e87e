package org.roastfield.lab.files;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Kinds of quantity in a cook file, with their units. */
enum Dimension {
  LENGTH(
      "a length, such as 96 mm (mm, cm, m, in)",
      Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254)),
  ALTITUDE("an altitude, such as 12 m (m)", Map.of("m", 1.0)),
  TIME(
      "a time, such as 20 min or 1 h 30 min (s, min, h)",
      Map.of("s", 1.0, "min", 60.0, "h", 3600.0)),
  TEMPERATURE(
      "a temperature, such as 57 °C (°C, °F, K)",
      Map.of(
          "°C", 1.0, "degC", 1.0, "C", 1.0, "°F", 1 / 1.8, "degF", 1 / 1.8, "F", 1 / 1.8, "K",
          1.0)),
  RATIO("a plain number, such as 2", Map.of("", 1.0)),
  SHARE("a share, such as 0.3 or 30 %", Map.of("", 1.0, "%", 0.01)),
  HUMIDITY_RATIO(
      "a humidity ratio in kg water per kg dry air, such as 0.035 (kg/kg, g/kg)",
      Map.of("", 1.0, "kg/kg", 1.0, "g/kg", 1e-3)),
  HEAT_TRANSFER("a coefficient, such as 7 W/(m²·K)", Map.of("W/m2K", 1.0)),
  SPEED("a speed, such as 0.3 m/s (m/s, km/h)", Map.of("m/s", 1.0, "km/h", 1 / 3.6)),
  WATER_PER_AREA(
      "an amount of water, such as 100 g/m² (g/m², kg/m²)", Map.of("g/m2", 1e-3, "kg/m2", 1.0)),
  MASS(
      "a mass, such as 2.4 kg (kg, g, lb, oz)",
      Map.of("kg", 1.0, "g", 1e-3, "lb", 0.45359237, "oz", 0.028349523125)),
  MASS_FLOW(
      "a burn rate, such as 0.3 kg/h (kg/h, g/h, g/s)",
      Map.of("kg/h", 1.0 / 3600, "g/h", 1e-3 / 3600, "g/s", 1e-3)),
  TEMPERATURE_DIFFERENCE("a difference, such as 0.5 K (K)", Map.of("K", 1.0)),
  CONDUCTIVITY("a conductivity, such as 0.48 W/(m·K)", Map.of("W/mK", 1.0)),
  DENSITY("a density, such as 1060 kg/m³ (kg/m³, g/cm³)", Map.of("kg/m3", 1.0, "g/cm3", 1000.0)),
  HEAT_CAPACITY(
      "a heat capacity, such as 3450 J/(kg·K) (J/(kg·K), kJ/(kg·K))",
      Map.of("J/kgK", 1.0, "kJ/kgK", 1000.0));

  private final String description;

  // Map.of cannot be changed.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Map<String, Double> units;

  Dimension(String description, Map<String, Double> units) {
    this.description = description;
    this.units = units;
  }

  /** What to write, for messages. */
  String description() {
    return description;
  }

  /** Value in SI units of a number with a unit; empty if the unit is not one of this kind. */
  OptionalDouble si(double number, String unit) {
    String plain = plain(unit);
    Double factor = units.get(plain);
    if (factor == null) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(this == TEMPERATURE ? kelvin(number, plain) : number * factor);
  }

  private static double kelvin(double number, String unit) {
    return switch (unit) {
      case "K" -> number;
      case "°F", "degF", "F" -> (number - 32) / 1.8 + 273.15;
      default -> number + 273.15;
    };
  }

  /** Compound units are written in several ways: W/(m²·K), W/(m2*K), W/m2K. */
  private static String plain(String unit) {
    return unit.replace('²', '2').replace('³', '3').replaceAll("[\\s·*()^]", "");
  }

  /** Number without trailing zeros in the unit that messages use. */
  String text(double si) {
    return switch (this) {
      case LENGTH -> number(si * 1000) + " mm";
      case ALTITUDE -> number(si) + " m";
      case TEMPERATURE -> number(si - 273.15) + " °C";
      case TIME -> number(si) + " s";
      case RATIO, SHARE, HUMIDITY_RATIO -> number(si);
      case HEAT_TRANSFER -> number(si) + " W/(m²·K)";
      case SPEED -> number(si) + " m/s";
      case WATER_PER_AREA -> number(si) + " kg/m²";
      case MASS -> number(si) + " kg";
      case MASS_FLOW -> number(si * 3600) + " kg/h";
      case TEMPERATURE_DIFFERENCE -> number(si) + " K";
      case CONDUCTIVITY -> number(si) + " W/(m·K)";
      case DENSITY -> number(si) + " kg/m³";
      case HEAT_CAPACITY -> number(si) + " J/(kg·K)";
    };
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.4f", value);
    return text.replaceAll("\\.?0+$", "");
  }
}
