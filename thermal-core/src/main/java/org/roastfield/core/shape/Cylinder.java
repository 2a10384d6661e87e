package org.roastfield.core.shape;

import org.roastfield.core.internal.Check;

/**
 * Round cut far longer than thick (a loin). Its ends are neglected; a {@link Compact} has them.
 *
 * @param radius axis to surface [m], greater than 0
 */
public record Cylinder(double radius) implements Shape {

  /**
   * @throws IllegalArgumentException if {@code radius} is not finite and positive
   */
  public Cylinder {
    Check.positive("radius", radius);
  }

  /** Cylinder of the given radius [m]. */
  public static Cylinder ofRadius(double radius) {
    return new Cylinder(radius);
  }

  /** Cylinder of the given diameter [m]. */
  public static Cylinder ofDiameter(double diameter) {
    return new Cylinder(diameter / 2);
  }

  @Override
  public double exponent() {
    return 1;
  }

  @Override
  public double halfThickness() {
    return radius;
  }

  @Override
  public Cylinder scaled(double factor) {
    return new Cylinder(Check.positive("factor", factor) * radius);
  }
}
