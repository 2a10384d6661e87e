package org.roastfield.core.surface;

/** A signal shifted by a constant. */
record OffsetSignal(Signal signal, double offset) implements Signal {

  @Override
  public double at(double time) {
    return signal.at(time) + offset;
  }

  @Override
  public double shortestPeriod() {
    return signal.shortestPeriod();
  }
}
