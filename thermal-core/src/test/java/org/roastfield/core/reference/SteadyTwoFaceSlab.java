package org.roastfield.core.reference;

/**
 * Exact steady temperature of a slab between two different surroundings, with a uniform heat
 * source.
 *
 * <p>T(x) = T1 + k b / h1 + b x − Q x² / (2 k), where the two Robin conditions give the gradient b
 * at the first face. Without a source this is the series of three resistances 1/h1, L/k, 1/h2.
 * Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., 1959, chapter III. Validity:
 * constant conductivity.
 *
 * @param thickness L [m]
 * @param conductivity k [W/(m·K)]
 * @param source Q, heat released per volume [W/m³]; 0 for none
 * @param first what the face at x = 0 sees
 * @param second what the face at x = L sees
 */
public record SteadyTwoFaceSlab(
    double thickness, double conductivity, double source, Face first, Face second) {

  /**
   * Surroundings of one face.
   *
   * @param heatTransferCoefficient h [W/(m²·K)]
   * @param ambientTemperature on the same scale of temperature for both faces
   */
  public record Face(double heatTransferCoefficient, double ambientTemperature) {
    public Face {
      Require.positive("heatTransferCoefficient", heatTransferCoefficient);
      Require.finite("ambientTemperature", ambientTemperature);
    }
  }

  public SteadyTwoFaceSlab {
    Require.positive("thickness", thickness);
    Require.positive("conductivity", conductivity);
    Require.finite("source", source);
  }

  /** Temperature at the distance x from the first face [m]. */
  public double temperature(double x) {
    Require.within("x", 0, thickness, x);
    double gradient = gradientAtFirstFace();
    return first.ambientTemperature()
        + conductivity * gradient / first.heatTransferCoefficient()
        + gradient * x
        - source * x * x / (2 * conductivity);
  }

  /** Heat flux into the first face [W/m²]; negative where heat leaves. */
  public double fluxIntoFirstFace() {
    return -conductivity * gradientAtFirstFace();
  }

  /** Heat flux into the second face [W/m²]; negative where heat leaves. */
  public double fluxIntoSecondFace() {
    return conductivity * gradientAtFirstFace() - source * thickness;
  }

  private double gradientAtFirstFace() {
    double step = second.ambientTemperature() - first.ambientTemperature();
    double h1 = first.heatTransferCoefficient();
    double h2 = second.heatTransferCoefficient();
    double fromSource = source * thickness * (1 / h2 + thickness / (2 * conductivity));
    return (step + fromSource) / (conductivity * (1 / h1 + 1 / h2) + thickness);
  }
}
