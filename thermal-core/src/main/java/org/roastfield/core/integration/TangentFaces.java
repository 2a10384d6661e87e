package org.roastfield.core.integration;

/**
 * Derivative of the balance of the faces: κ (∂q/∂Ts Ṫs + ∂q/∂p + ∂q/∂t ṫ) + κ̇ q = side + gain (φ̇
 * − origin) with φ̇ = (dφ/dT) Ṫs + ∂φ/∂p at each face. Scratch memory of one integration.
 */
final class TangentFaces {

  private final int faces;
  private final double kappa;
  private final double[][] gain;
  private final TangentFront[] fronts;

  /** Change of the flow at face a with the temperature of face b [a][b]. */
  private final double[][] byFace = new double[2][2];

  /** The same with what boiling takes below face b, as a flow. */
  final double[][] sunkGain = new double[2][2];

  /** The same with the front's place below face b. */
  final double[][] placeGain = new double[2][2];

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
  TangentFaces(int faces, double kappa, double[][] gain, TangentFront[] fronts) {
    this.faces = faces;
    this.fronts = fronts;
    this.kappa = kappa;
    this.gain = gain;
  }

  /** Inverts the Jacobian of the faces, which all parameters share. */
  void invert(FaceSlopes slopes) {
    for (int b = 0; b < faces; b++) {
      if (isFront(b)) {
        fronts[b].eliminate(phiSlope[b]);
      }
      for (int a = 0; a < faces; a++) {
        byFace[a][b] = gain[a][b] * phiSlope[b] + (isFront(b) ? byFront(a, b) : 0);
      }
    }
    double j00 = kappa * slope(slopes, 0) - byFace[0][0];
    if (faces == 1) {
      inverse[0][0] = 1 / j00;
      return;
    }
    double j01 = -byFace[0][1];
    double j10 = -byFace[1][0];
    double j11 = kappa * slope(slopes, 1) - byFace[1][1];
    double determinant = j00 * j11 - j01 * j10;
    inverse[0][0] = j11 / determinant;
    inverse[0][1] = -j01 / determinant;
    inverse[1][0] = -j10 / determinant;
    inverse[1][1] = j00 / determinant;
  }

  private double byFront(int a, int b) {
    return sunkGain[a][b] * fronts[b].sunkShare() + placeGain[a][b] * fronts[b].placeShare();
  }

  private boolean isFront(int face) {
    return face < fronts.length && fronts[face].isPresent();
  }

  private double slope(FaceSlopes slopes, int face) {
    return isFront(face) ? fronts[face].slope() : slopes.slope[face];
  }

  /**
   * Solves for Ṫs, left in {@link #side}, and {@link #excess}. What drives the fronts must be
   * known.
   */
  void balance(FaceSlopes slopes, int p, double time, double logResistance, double[] flow) {
    double above0 = phiChange[0] - origin[0];
    double above1 = phiChange[1] - origin[1];
    double r0 = side[0] - driven(slopes, 0, p, time) - logResistance * flow[0];
    r0 += linked(0, above0, above1);
    if (faces == 1) {
      side[0] = inverse[0][0] * r0;
    } else {
      double r1 = side[1] - driven(slopes, 1, p, time) - logResistance * flow[1];
      r1 += linked(1, above0, above1);
      side[0] = inverse[0][0] * r0 + inverse[0][1] * r1;
      side[1] = inverse[1][0] * r0 + inverse[1][1] * r1;
      excess[1] = phiSlope[1] * side[1] + above1;
    }
    excess[0] = phiSlope[0] * side[0] + above0;
    for (int f = 0; f < fronts.length; f++) {
      fronts[f].solved(side[f]);
    }
  }

  /** What flows through a face with all that does not come with the faces' temperatures. */
  private double linked(int a, double above0, double above1) {
    double sum = gain[a][0] * above0;
    if (faces == 2) {
      sum += gain[a][1] * above1;
    }
    for (int b = 0; b < fronts.length; b++) {
      if (isFront(b)) {
        sum += sunkGain[a][b] * fronts[b].sunkRest() + placeGain[a][b] * fronts[b].placeRest();
      }
    }
    return sum;
  }

  /** Share of a law's change that does not come with the face temperature, times κ [K]. */
  private double driven(FaceSlopes slopes, int face, int p, double time) {
    if (isFront(face)) {
      return kappa * fronts[face].change();
    }
    return kappa * (slopes.change[face][p] + slopes.trend[face] * time);
  }

  /** Keeps the change of the surface and of the evaporation of one parameter. */
  void keep(FaceSlopes slopes, int p, double time, double[][] face, double[][] evaporation) {
    for (int f = 0; f < faces; f++) {
      if (isFront(f)) {
        face[f][p] = fronts[f].answer(FrontSlopes.OUTER);
        evaporation[f][p] = fronts[f].answer(FrontSlopes.VAPOUR);
        continue;
      }
      face[f][p] = side[f];
      evaporation[f][p] =
          slopes.evaporationSlope[f] * side[f]
              + slopes.evaporationChange[f][p]
              + slopes.evaporationTrend[f] * time;
    }
  }
}
