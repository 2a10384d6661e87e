package org.roastfield.core.simulation;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.ComputedCook;
import org.roastfield.core.integration.PressedWater;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.material.Moisture;

/**
 * Water of a whole cook.
 *
 * @param upper behind the surface, or the upper face
 * @param lower behind the lower face; nothing where the cut is treated alike all round
 */
public record WaterBalance(WaterAccount upper, WaterAccount lower) {

  static WaterBalance of(
      Cook cook, ComputedCook computed, Trajectory trajectory, Moisture moisture) {
    double depth = cook.cut().shape().volumePerArea();
    double[] pressed = PressedWater.dripped(trajectory, moisture, depth);
    double stock = depth * moisture.content();
    double above = computed.evaporatedUpper();
    double below = computed.evaporatedLower();
    return new WaterBalance(
        WaterAccount.of(computed.carriedWater(true), stock, above, pressed[0]),
        cook.isSymmetric()
            ? WaterAccount.NONE
            : WaterAccount.of(computed.carriedWater(false), stock, below, pressed[1]));
  }

  /** Evaporated from the surface, or the upper face; negative if more condensed [kg/m²]. */
  public double evaporatedUpper() {
    return upper.evaporated();
  }

  /** Evaporated from the lower face; 0 where the cut is treated alike all round [kg/m²]. */
  public double evaporatedLower() {
    return lower.evaporated();
  }

  /** Run off the surface, or the upper face, or pressed out behind it [kg/m²]. */
  public double drippedUpper() {
    return upper.dripped();
  }

  /** The same of the lower face; 0 where the cut is treated alike all round [kg/m²]. */
  public double drippedLower() {
    return lower.dripped();
  }
}
