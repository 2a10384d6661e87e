package org.roastfield.core.shape;

import org.roastfield.core.internal.Check;

/**
 * Flat cut with two faces, far wider than thick (a steak). Its edges are neglected: right within 3
 * % of the core time for a width of at least five thicknesses.
 *
 * @param thickness face to face [m], greater than 0
 */
public record Slab(double thickness) implements Shape {

  /**
   * @throws IllegalArgumentException if {@code thickness} is not finite and positive
   */
  public Slab {
    Check.positive("thickness", thickness);
  }

  /** Slab of the given thickness, face to face [m]. */
  public static Slab ofThickness(double thickness) {
    return new Slab(thickness);
  }

  /** Slab of the given half thickness, face to middle [m]. */
  public static Slab ofHalfThickness(double halfThickness) {
    return new Slab(2 * halfThickness);
  }

  @Override
  public double exponent() {
    return 0;
  }

  @Override
  public double halfThickness() {
    return thickness / 2;
  }

  @Override
  public Slab scaled(double factor) {
    return new Slab(Check.positive("factor", factor) * thickness);
  }
}
