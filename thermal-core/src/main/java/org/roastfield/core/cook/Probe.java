package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;

/**
 * A place whose temperature is asked for: an ideal probe, without lag or error.
 *
 * @param name unique in a cook
 * @param depth below the surface [m]; in a slab, below the upper face. {@link
 *     Double#POSITIVE_INFINITY} stands for the core
 */
public record Probe(String name, double depth) {

  /** The middle of the cut. */
  public static final Probe CORE = new Probe("core", Double.POSITIVE_INFINITY);

  /** The surface; in a slab, the upper face. */
  public static final Probe SURFACE = new Probe("surface", 0);

  /**
   * @throws IllegalArgumentException if the name is blank or the depth is negative or NaN
   */
  public Probe {
    Check.notBlank("name", name);
    if (!(depth >= 0)) {
      throw new IllegalArgumentException("depth must be at least 0, was " + depth);
    }
  }

  /** Probe with its tip at a depth [m] below the surface. */
  public static Probe atDepth(String name, double depth) {
    return new Probe(name, Check.notNegative("depth", depth));
  }

  /** Whether this is the middle of the cut, whatever its size. */
  public boolean isCore() {
    return depth == Double.POSITIVE_INFINITY;
  }

  /**
   * Distance from the middle of a shape [m]; in a slab positive towards the upper face.
   *
   * @throws IllegalArgumentException if the probe would come out on the other side (a slab), or lie
   *     beyond the middle (other shapes)
   */
  public double distanceFromMiddle(Shape shape) {
    if (isCore()) {
      return 0;
    }
    double deepest = shape instanceof Slab ? shape.thickness() : shape.halfThickness();
    Check.inRange("depth of probe " + name, depth, 0, deepest);
    return shape.halfThickness() - depth;
  }
}
