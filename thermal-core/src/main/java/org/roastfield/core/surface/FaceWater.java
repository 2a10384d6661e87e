package org.roastfield.core.surface;

/**
 * Water of a face from its first stage with memory to now [kg/m²].
 *
 * @param initial held at first
 * @param fed from inside
 * @param poured put on by basting or spritzing
 * @param evaporated as vapour, less what condensed
 * @param dripped run off
 * @param held now; below 0 what a crust has lost
 * @param crust thickness of the crust [m]
 */
public record FaceWater(
    double initial,
    double fed,
    double poured,
    double evaporated,
    double dripped,
    double held,
    double crust) {

  /** What is held but did not come in [kg/m²]; round-off in a right scheme. */
  public double residual() {
    return held - initial - fed - poured + evaporated + dripped;
  }

  /** Residual over all that came, went or was held; 0 if nothing was. */
  public double relativeResidual() {
    double came = Math.abs(initial) + Math.abs(fed) + poured;
    double turnover = came + Math.abs(evaporated) + Math.abs(dripped);
    return turnover > 0 ? residual() / turnover : 0;
  }
}
