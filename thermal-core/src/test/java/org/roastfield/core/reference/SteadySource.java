package org.roastfield.core.reference;

/**
 * Exact steady temperature of a body with a uniform heat source and a Robin surface.
 *
 * <p>T(r) = Ta + Q R / ((m + 1) h) + Q (R² − r²) / (2 (m + 1) k), the solution of r^−m (r^m k T′)′
 * = −Q that is regular at r = 0, for any real m ≥ 0. Source: Carslaw and Jaeger, Conduction of Heat
 * in Solids, 2nd ed., 1959, chapters III, VII and IX for m = 0, 1, 2; checked for other m by
 * differences in the test. Validity: constant conductivity.
 *
 * @param exponent geometry exponent m, at least 0
 * @param radius R, half thickness or radius [m]
 * @param conductivity k [W/(m·K)]
 * @param heatTransferCoefficient h [W/(m²·K)]
 * @param source Q, heat released per volume [W/m³]
 * @param ambientTemperature Ta, on any scale of temperature
 */
public record SteadySource(
    double exponent,
    double radius,
    double conductivity,
    double heatTransferCoefficient,
    double source,
    double ambientTemperature) {

  public SteadySource {
    Require.atLeast("exponent", 0, exponent);
    Require.positive("radius", radius);
    Require.positive("conductivity", conductivity);
    Require.positive("heatTransferCoefficient", heatTransferCoefficient);
    Require.finite("source", source);
    Require.finite("ambientTemperature", ambientTemperature);
  }

  /** Temperature at the distance r from the centre [m], on the scale of the surroundings. */
  public double temperature(double r) {
    Require.within("r", 0, radius, r);
    return surfaceTemperature()
        + source * (radius - r) * (radius + r) / (2 * (exponent + 1) * conductivity);
  }

  public double surfaceTemperature() {
    return ambientTemperature + source * radius / ((exponent + 1) * heatTransferCoefficient);
  }

  /** Mean over the volume, weighted by r^m. */
  public double meanTemperature() {
    return surfaceTemperature()
        + source * radius * radius / ((exponent + 1) * (exponent + 3) * conductivity);
  }
}
