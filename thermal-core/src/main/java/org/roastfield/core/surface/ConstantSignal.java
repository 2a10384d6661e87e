package org.roastfield.core.surface;

/** A signal that never changes. */
record ConstantSignal(double value) implements Signal {

  @Override
  public double at(double time) {
    return value;
  }
}
