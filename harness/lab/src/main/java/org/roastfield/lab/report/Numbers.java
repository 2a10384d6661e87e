package org.roastfield.lab.report;

import java.util.Locale;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.timeline.TemperatureScale;

/** Numbers as text, the same in every locale. */
final class Numbers {

  /** What stands where there is no number. */
  static final String NONE = "–";

  private static final String SUPERSCRIPT = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private Numbers() {}

  /** A coordinate in a drawing, to a tenth of a unit. */
  static String coordinate(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    String whole = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return whole.equals("-0") ? "0" : whole;
  }

  /** A number for the eye with a true minus sign, a dash if there is none. */
  static String decimal(double value, int digits) {
    if (!Double.isFinite(value)) {
      return NONE;
    }
    String text = String.format(Locale.ROOT, "%." + digits + "f", Math.abs(value));
    boolean zero = text.chars().allMatch(c -> c == '0' || c == '.');
    return value < 0 && !zero ? "−" + text : text;
  }

  /** A number with its sign, also when positive. */
  static String signed(double value, int digits) {
    String text = decimal(value, digits);
    boolean plain = text.startsWith("−") || text.equals(NONE) || text.matches("[0.]+");
    return plain ? text : "+" + text;
  }

  /** How many digits after the point tell multiples of a step apart. */
  static int digits(double step) {
    return (int) Math.max(0, Math.ceil(-StrictMath.log10(step) - 1e-9));
  }

  /** A number of any size with two digits, such as 3.1·10⁻¹⁴. */
  static String scientific(double value) {
    if (!Double.isFinite(value) || value == 0) {
      return decimal(value, 0);
    }
    String[] parts = String.format(Locale.ROOT, "%.1e", value).split("e", 2);
    StringBuilder power = new StringBuilder();
    int exponent = Integer.parseInt(parts[1]);
    Integer.toString(exponent)
        .chars()
        .forEach(c -> power.append(c == '-' ? '⁻' : SUPERSCRIPT.charAt(c - '0')));
    return parts[0].replace('-', '−') + "·10" + power;
  }

  /** Kelvin as text in degrees Celsius, to a tenth. */
  static String celsiusText(double kelvin) {
    return text(kelvin, TemperatureScale.CELSIUS);
  }

  /** Kelvin as text on a scale, to a tenth. */
  static String text(double kelvin, TemperatureScale scale) {
    return decimal(scale.value(kelvin), 1) + "\u00a0" + scale.unit();
  }

  /** Kelvin as text in degrees Celsius and Fahrenheit, to a tenth and to a whole degree. */
  static String bothScales(double kelvin) {
    return celsiusText(kelvin) + " (" + decimal(Temperatures.toFahrenheit(kelvin), 0) + "\u00a0°F)";
  }

  /** Seconds as whole minutes and, from an hour on, hours: 48 min, 3 h 05 min. */
  static String duration(double seconds) {
    if (!Double.isFinite(seconds)) {
      return NONE;
    }
    String sign = seconds < -30 ? "−" : "";
    long minutes = Math.round(Math.abs(seconds) / 60);
    return minutes < 60
        ? sign + minutes + "\u00a0min"
        : sign
            + String.format(
                Locale.ROOT, "%d\u00a0h\u00a0%02d\u00a0min", minutes / 60, minutes % 60);
  }
}
