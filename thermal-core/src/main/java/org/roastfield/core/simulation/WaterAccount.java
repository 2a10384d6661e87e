package org.roastfield.core.simulation;

import org.roastfield.core.integration.CarriedWater;

/**
 * Water of the cut behind one face, from the start of the cook to its end [kg/m² of face].
 *
 * @param stock in the cut at first; 0 where its material does not say
 * @param poured put on by basting or spritzing
 * @param evaporated as vapour, less what condensed; integrated by the same scheme as the
 *     temperatures
 * @param ranOff of what the face could not hold: condensed, or put on
 * @param pressedOut by heat and not taken by the face, eq. (98); 0 where nothing is pressed out
 * @param left in the cut and on its face; counted from 0 where the stock is not known
 */
public record WaterAccount(
    double stock, double poured, double evaporated, double ranOff, double pressedOut, double left) {

  /** Nothing at a face that is not there. */
  static final WaterAccount NONE = new WaterAccount(0, 0, 0, 0, 0, 0);

  static WaterAccount of(CarriedWater water, double stock, double evaporated, double pressed) {
    double left = stock - water.drawn() - pressed + Math.max(0, water.held());
    return new WaterAccount(stock, water.poured(), evaporated, water.ranOff(), pressed, left);
  }

  /** What dripped: run off, or pressed out. */
  public double dripped() {
    return ranOff + pressedOut;
  }

  /** What is left but was not there; round-off in a right scheme. */
  public double residual() {
    return left - stock - poured + evaporated + ranOff + pressedOut;
  }

  /** Residual over all that was there, came or went; 0 if nothing did. */
  public double relativeResidual() {
    double turnover = stock + poured + Math.abs(evaporated) + ranOff + pressedOut;
    return turnover > 0 ? residual() / turnover : 0;
  }
}
