package org.roastfield.core.shape;

import org.roastfield.core.internal.Check;

/**
 * Cut near a ball (a boned breast, a beetroot).
 *
 * @param radius centre to surface [m], greater than 0
 */
public record Sphere(double radius) implements Shape {

  /**
   * @throws IllegalArgumentException if {@code radius} is not finite and positive
   */
  public Sphere {
    Check.positive("radius", radius);
  }

  /** Sphere of the given radius [m]. */
  public static Sphere ofRadius(double radius) {
    return new Sphere(radius);
  }

  /** Sphere of the given diameter [m]. */
  public static Sphere ofDiameter(double diameter) {
    return new Sphere(diameter / 2);
  }

  @Override
  public double exponent() {
    return 2;
  }

  @Override
  public double halfThickness() {
    return radius;
  }

  @Override
  public Sphere scaled(double factor) {
    return new Sphere(Check.positive("factor", factor) * radius);
  }
}
