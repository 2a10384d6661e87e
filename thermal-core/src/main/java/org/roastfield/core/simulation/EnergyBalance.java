package org.roastfield.core.simulation;

/**
 * Heat of a cut for each square metre of its surface (in a slab with two faces: of one face; in a
 * compact piece: of {@link org.roastfield.core.shape.Compact#equivalentArea()}) [J/m²], integrated
 * by the same scheme as the temperatures.
 *
 * @param stored change of enthalpy since the start
 * @param throughUpper heat taken in through the surface, or the upper face
 * @param throughLower heat taken in through the lower face; 0 where the cut is treated alike all
 *     round
 * @param turnover sum over steps of the absolute heat through the faces
 */
public record EnergyBalance(
    double stored, double throughUpper, double throughLower, double turnover) {

  /** What is stored but did not come in [J/m²]; round-off in a right scheme. */
  public double residual() {
    return stored - throughUpper - throughLower;
  }

  /** Residual over turnover; 0 if nothing was turned over. */
  public double relativeResidual() {
    return turnover > 0 ? residual() / turnover : 0;
  }
}
