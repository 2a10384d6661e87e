package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Part of a cook with its own surface conditions.
 *
 * @param name shown in results
 * @param upper law of the surface; in a slab, of the upper face
 * @param lower law of a slab's lower face; the same object as {@code upper} when the cut is treated
 *     alike all round
 * @param end rule that ends the stage
 */
public record Stage(String name, SurfaceLaw upper, SurfaceLaw lower, StageEnd end) {

  /**
   * @throws IllegalArgumentException if the name is blank
   */
  public Stage {
    Check.notBlank("name", name);
  }

  /** A stage that treats the cut alike all round. */
  public static Stage allRound(String name, SurfaceLaw law, StageEnd end) {
    return new Stage(name, law, law, end);
  }

  /** A stage of a slab whose faces are treated differently. */
  public static Stage ofFaces(String name, SurfaceLaw upper, SurfaceLaw lower, StageEnd end) {
    return new Stage(name, upper, lower, end);
  }

  /** Whether both faces have the same law. */
  public boolean isAllRound() {
    return upper == lower || upper.equals(lower);
  }
}
