package org.roastfield.core.chamber;

import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * An insulated box that a cut is held in: heat leaks through its wall in proportion to the
 * temperature of the cut's surface over that of the room, and vapour stays inside. The heat that
 * box and air take up at first is not counted.
 *
 * @param lossCoefficient U for each square metre of the cut [W/(m²·K)]: 0.7-1.5, assumed
 * @param roomTemperature [K]
 */
public record HoldBox(double lossCoefficient, double roomTemperature) {

  /** Usual loss [W/(m²·K)]. */
  public static final double LOSS_COEFFICIENT = 1;

  /**
   * @throws IllegalArgumentException if the loss is outside 0.1-5 W/(m²·K) or the temperature not
   *     positive
   */
  public HoldBox {
    Check.inRange("lossCoefficient", lossCoefficient, 0.1, 5);
    Check.positive("roomTemperature", roomTemperature);
  }

  /** What the box does to a face, eq. (7). */
  public SurfaceLaw law() {
    return new Convection(lossCoefficient, Signal.constant(roomTemperature));
  }
}
