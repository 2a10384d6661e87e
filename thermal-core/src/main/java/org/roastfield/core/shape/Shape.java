package org.roastfield.core.shape;

/**
 * Shape of a cut as one space coordinate sees it: heat flows along r only, through an area that
 * grows as r^m.
 *
 * <p>Equation (1) of docs/model.md holds on 0 ≤ r ≤ {@link #halfThickness()} with {@link
 * #exponent()} m.
 */
public sealed interface Shape permits Slab, Cylinder, Sphere {

  /** Geometry exponent m: 0 slab, 1 cylinder, 2 sphere. */
  int exponent();

  /** Distance from the coldest line of symmetry to the surface [m]. */
  double halfThickness();

  /** Thickness through the middle [m]. */
  default double thickness() {
    return 2 * halfThickness();
  }

  /** Volume per surface area [m]: halfThickness / (m + 1). */
  default double volumePerArea() {
    return halfThickness() / (exponent() + 1);
  }
}
