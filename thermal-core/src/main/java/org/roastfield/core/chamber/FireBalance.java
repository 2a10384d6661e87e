package org.roastfield.core.chamber;

/**
 * Where the heat of a fire went [J].
 *
 * @param released by burning
 * @param stored in the wall
 * @param throughWalls lost by the wall to the outside
 * @param withGas lost with the flue gas, and through the opening while the lid was open
 * @param load given to what is cooked
 */
public record FireBalance(
    double released, double stored, double throughWalls, double withGas, double load) {

  /** What is left over, as a share of all heat that moved; round-off. */
  public double residual() {
    double moved =
        Math.abs(released)
            + Math.abs(stored)
            + Math.abs(throughWalls)
            + Math.abs(withGas)
            + Math.abs(load);
    double left = released - stored - throughWalls - withGas - load;
    return moved > 0 ? left / moved : 0;
  }
}
