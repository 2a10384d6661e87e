package org.roastfield.core.reference;

/**
 * Material property that is linear in temperature: P(T) = P0 (1 + a (T − Tref)).
 *
 * @param referenceValue P0, in the unit of the property
 * @param relativeSlope a [1/K]
 * @param referenceTemperature Tref, on the scale of temperature of its user
 */
public record LinearProperty(
    double referenceValue, double relativeSlope, double referenceTemperature) {

  public LinearProperty {
    Require.positive("referenceValue", referenceValue);
    Require.finite("relativeSlope", relativeSlope);
    Require.finite("referenceTemperature", referenceTemperature);
  }

  public double at(double temperature) {
    return referenceValue * (1 + relativeSlope * (temperature - referenceTemperature));
  }

  /** dP/dT, the same everywhere. */
  public double slope() {
    return referenceValue * relativeSlope;
  }

  /** Integral of P from one temperature to another. */
  public double integral(double from, double to) {
    return at(0.5 * (from + to)) * (to - from);
  }
}
