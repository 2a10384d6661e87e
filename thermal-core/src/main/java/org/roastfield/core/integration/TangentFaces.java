package org.roastfield.core.integration;

/**
 * Derivative of the balance of the faces: κ (∂q/∂Ts Ṫs + ∂q/∂p + ∂q/∂t ṫ) + κ̇ q = side + gain (φ̇
 * − origin) with φ̇ = (dφ/dT) Ṫs + ∂φ/∂p at each face. Scratch memory of one integration.
 */
final class TangentFaces {

  private final int faces;
  private final double kappa;
  private final double[][] gain;
  private final double[][] inverse = new double[2][2];

  /** dφ/dT of each face [2]. */
  final double[] phiSlope = {1, 1};

  /** ∂φ/∂p of each face, of one parameter [2]. */
  final double[] phiChange = new double[2];

  /** φ̇ from which that of each face is counted [2]. */
  final double[] origin = new double[2];

  /** Part of the flow's change that does not depend on the faces; then Ṫs [2]. */
  final double[] side = new double[2];

  /** φ̇ of each face less its origin [2]. */
  final double[] excess = new double[2];

  /**
   * @param gain change of the flow at face a with φ of face b [a][b], kept and read
   */
  TangentFaces(int faces, double kappa, double[][] gain) {
    this.faces = faces;
    this.kappa = kappa;
    this.gain = gain;
  }

  /** Inverts the Jacobian of the faces, which all parameters share. */
  void invert(FaceSlopes slopes) {
    double j00 = kappa * slopes.slope[0] - gain[0][0] * phiSlope[0];
    if (faces == 1) {
      inverse[0][0] = 1 / j00;
      return;
    }
    double j01 = -gain[0][1] * phiSlope[1];
    double j10 = -gain[1][0] * phiSlope[0];
    double j11 = kappa * slopes.slope[1] - gain[1][1] * phiSlope[1];
    double determinant = j00 * j11 - j01 * j10;
    inverse[0][0] = j11 / determinant;
    inverse[0][1] = -j01 / determinant;
    inverse[1][0] = -j10 / determinant;
    inverse[1][1] = j00 / determinant;
  }

  /** Solves for Ṫs, left in {@link #side}, and {@link #excess}. */
  void balance(FaceSlopes slopes, int p, double time, double logResistance, double[] flow) {
    double above0 = phiChange[0] - origin[0];
    double r0 = side[0] - driven(slopes, 0, p, time) - logResistance * flow[0];
    r0 += gain[0][0] * above0;
    if (faces == 1) {
      side[0] = inverse[0][0] * r0;
      excess[0] = phiSlope[0] * side[0] + above0;
      return;
    }
    double above1 = phiChange[1] - origin[1];
    double r1 = side[1] - driven(slopes, 1, p, time) - logResistance * flow[1];
    r0 += gain[0][1] * above1;
    r1 += gain[1][0] * above0 + gain[1][1] * above1;
    side[0] = inverse[0][0] * r0 + inverse[0][1] * r1;
    side[1] = inverse[1][0] * r0 + inverse[1][1] * r1;
    excess[0] = phiSlope[0] * side[0] + above0;
    excess[1] = phiSlope[1] * side[1] + above1;
  }

  /** Share of a law's change that does not come with the face temperature, times κ [K]. */
  private double driven(FaceSlopes slopes, int face, int p, double time) {
    return kappa * (slopes.change[face][p] + slopes.trend[face] * time);
  }

  /** Keeps Ṫs and the change of the evaporation of one parameter. */
  void keep(FaceSlopes slopes, int p, double time, double[][] face, double[][] evaporation) {
    for (int f = 0; f < faces; f++) {
      face[f][p] = side[f];
      evaporation[f][p] =
          slopes.evaporationSlope[f] * side[f]
              + slopes.evaporationChange[f][p]
              + slopes.evaporationTrend[f] * time;
    }
  }
}
