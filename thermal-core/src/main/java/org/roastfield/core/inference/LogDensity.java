package org.roastfield.core.inference;

/** Logarithm of a density, up to a constant. */
@FunctionalInterface
public interface LogDensity {

  /** At coordinates, which are not modified; minus infinity where there is none. */
  double at(double[] coordinates);
}
