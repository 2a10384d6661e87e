package org.roastfield.core.shape;

/**
 * Shape of a cut as one space coordinate sees it: heat flows along r only, through an area that
 * grows as r^m.
 *
 * <p>Equation (1) of docs/model.md holds on 0 ≤ r ≤ {@link #equivalentRadius()} with {@link
 * #exponent()} m.
 */
public sealed interface Shape permits Slab, Cylinder, Sphere, Compact {

  /** Geometry exponent m: 0 slab, 1 cylinder, 2 sphere; between and beyond for compact pieces. */
  double exponent();

  /** Distance from the coldest line of symmetry to the surface [m]. */
  double halfThickness();

  /**
   * R of eq. (1) [m]: {@link #halfThickness()} but for a {@link Compact}. A place at a share of the
   * half thickness is at that share of R.
   */
  default double equivalentRadius() {
    return halfThickness();
  }

  /** Thickness through the middle [m]. */
  default double thickness() {
    return 2 * halfThickness();
  }

  /** Volume per surface area of the real piece [m]. */
  default double volumePerArea() {
    return halfThickness() / (exponent() + 1);
  }

  /**
   * The same shape with every length multiplied; of a slab and a cylinder those that count.
   *
   * @param factor greater than 0
   */
  Shape scaled(double factor);
}
