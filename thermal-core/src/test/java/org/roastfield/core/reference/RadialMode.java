package org.roastfield.core.reference;

/**
 * Radial eigenfunction φ of conduction: regular solution of z^−m (z^m φ′)′ = −φ with φ(0) = 1.
 *
 * <p>Slab cos z, cylinder J0(z), sphere sin z / z. Source: Carslaw and Jaeger, Conduction of Heat
 * in Solids, 2nd ed., 1959, chapters III (slab), VII (cylinder) and IX (sphere).
 */
public enum RadialMode {
  SLAB(0) {
    @Override
    double value(double z) {
      return Math.cos(z);
    }

    @Override
    double descent(double z) {
      return Math.sin(z);
    }
  },
  CYLINDER(1) {
    @Override
    double value(double z) {
      return Bessel.j0(z);
    }

    @Override
    double descent(double z) {
      return Bessel.j1(z);
    }
  },
  SPHERE(2) {
    @Override
    double value(double z) {
      return z == 0 ? 1 : Math.sin(z) / z;
    }

    // sin z / z² − cos z / z cancels for small z, where the power series takes over.
    @Override
    double descent(double z) {
      return z < 1 ? seriesOfDescent(z) : (Math.sin(z) / z - Math.cos(z)) / z;
    }

    private double seriesOfDescent(double z) {
      double term = z / 3;
      double sum = term;
      for (int k = 1; k <= 8; k++) {
        term *= -0.5 * z * z / (k * (2 * k + 3));
        sum += term;
      }
      return sum;
    }
  };

  private final int exponent;

  RadialMode(int exponent) {
    this.exponent = exponent;
  }

  /** Mode of the shape named {@code slab}, {@code cylinder} or {@code sphere}. */
  public static RadialMode of(String shape) {
    for (RadialMode mode : values()) {
      if (mode.shape().equals(shape)) {
        return mode;
      }
    }
    throw new IllegalArgumentException("shape must be slab, cylinder or sphere, was " + shape);
  }

  /** Geometry exponent m: 0 slab, 1 cylinder, 2 sphere. */
  public int exponent() {
    return exponent;
  }

  /** Name of the shape in the reference files. */
  public String shape() {
    return switch (this) {
      case SLAB -> "slab";
      case CYLINDER -> "cylinder";
      case SPHERE -> "sphere";
    };
  }

  /** φ(z) for z from 0 up. */
  abstract double value(double z);

  /** −φ′(z) for z from 0 up. */
  abstract double descent(double z);
}
