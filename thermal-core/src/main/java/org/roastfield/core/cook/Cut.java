package org.roastfield.core.cook;

import java.util.Locale;
import org.roastfield.core.internal.Check;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.units.Temperatures;

/**
 * What is cooked.
 *
 * @param shape size and shape
 * @param material what it is made of
 * @param startTemperature uniform temperature at the start [K]
 */
public record Cut(Shape shape, Material material, double startTemperature) {

  /**
   * @throws IllegalArgumentException if the start temperature is not positive, at or below the
   *     initial freezing point of the material, or outside the range of its property curves
   */
  public Cut {
    Check.positive("startTemperature", startTemperature);
    double least = Math.max(material.freezingPoint(), material.lowest());
    if (startTemperature <= material.freezingPoint() || startTemperature < least) {
      throw new IllegalArgumentException(
          "startTemperature must be "
              + (least == material.freezingPoint() ? "above " : "at least ")
              + kelvinAndCelsius(least)
              + " for "
              + material.name()
              + ", was "
              + kelvinAndCelsius(startTemperature)
              + "; freezing and thawing are not represented: thaw the cut fully, in the cold, and"
              + " state the temperature in its middle");
    }
    if (!(startTemperature <= material.highest())) {
      throw new IllegalArgumentException(
          "startTemperature must be at most "
              + kelvinAndCelsius(material.highest())
              + ", up to which the properties of "
              + material.name()
              + " are known, was "
              + kelvinAndCelsius(startTemperature));
    }
  }

  private static String kelvinAndCelsius(double temperature) {
    return String.format(
        Locale.ROOT, "%.2f K (%.2f °C)", temperature, Temperatures.toCelsius(temperature));
  }
}
