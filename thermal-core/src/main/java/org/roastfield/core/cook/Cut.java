package org.roastfield.core.cook;

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
   * @throws IllegalArgumentException if the start temperature is not positive, or outside the range
   *     of the material's property curves (a frozen cut)
   */
  public Cut {
    Check.positive("startTemperature", startTemperature);
    if (!(startTemperature >= material.lowest() && startTemperature <= material.highest())) {
      throw new IllegalArgumentException(
          "startTemperature must be in ["
              + material.lowest()
              + ", "
              + material.highest()
              + "] K for "
              + material.name()
              + ", was "
              + startTemperature
              + " K ("
              + Temperatures.toCelsius(startTemperature)
              + " °C); freezing and thawing are not represented: thaw the cut first");
    }
  }
}
