package org.roastfield.lab.files;

import java.util.OptionalDouble;

/** Quantities with units as in cook files, for other places where people write them. */
public final class Quantities {

  private Quantities() {}

  /**
   * Temperature [K] of text such as "57 °C" or "135 °F".
   *
   * @throws IllegalArgumentException if it is none
   */
  public static double temperature(String text) {
    return parse(text, Dimension.TEMPERATURE, 0);
  }

  /**
   * Time [s] of text such as "415 min" or "1 h 30 min".
   *
   * @throws IllegalArgumentException if it is none, or not greater than 0
   */
  public static double time(String text) {
    return parse(text, Dimension.TIME, 0);
  }

  /**
   * Mass [kg] of text such as "120 g".
   *
   * @throws IllegalArgumentException if it is none, or not greater than 0
   */
  public static double mass(String text) {
    return parse(text, Dimension.MASS, 0);
  }

  /**
   * Length [m] of text such as "10 mm".
   *
   * @throws IllegalArgumentException if it is none, or not greater than 0
   */
  public static double length(String text) {
    return parse(text, Dimension.LENGTH, 0);
  }

  /**
   * Share of text such as "1.2 %".
   *
   * @throws IllegalArgumentException if it is none, or not greater than 0
   */
  public static double share(String text) {
    return parse(text, Dimension.SHARE, 0);
  }

  private static double parse(String text, Dimension dimension, double above) {
    OptionalDouble value = Quantity.parse(text, dimension);
    if (value.isPresent() && value.getAsDouble() > above) {
      return value.getAsDouble();
    }
    throw new IllegalArgumentException(
        "must be "
            + dimension.description()
            + Advice.on(text, dimension)
            + ", was "
            + SourceText.quoted(text));
  }
}
