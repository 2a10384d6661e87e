package org.roastfield.core.integration;

import org.roastfield.core.cook.Cut;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.surface.RememberingLaw;

/**
 * Water of a cut behind each square metre of its faces; that of a slab with two is shared by
 * halves. Memory of one integration.
 */
final class CutWater {

  /** All of it [kg/m²]; 0 if it is not known: then faces are fed without an end. */
  private double stock;

  /** What no heat presses out [kg/m²]. */
  private double kept;

  static CutWater of(Cut cut) {
    CutWater water = new CutWater();
    water.set(cut.material().moisture(), cut.shape().volumePerArea());
    return water;
  }

  /**
   * Takes a body.
   *
   * @param depth of it behind each square metre of face [m]; 0 where that is not known
   */
  void set(Moisture moisture, double depth) {
    stock = depth * moisture.content();
    kept = depth * moisture.kept();
  }

  boolean isAs(CutWater other) {
    return stock == other.stock && kept == other.kept;
  }

  /** Water that a face holds before its first stage with memory: never more than is kept. */
  double initial(RememberingLaw law) {
    return stock > 0 ? Math.min(law.initialWater(), kept) : law.initialWater();
  }

  /** Most that the inside feeds a face which held {@code initial}, F_max of eq. (97). */
  double mostFed(double initial) {
    return stock > 0 ? kept - initial : Double.POSITIVE_INFINITY;
  }
}
