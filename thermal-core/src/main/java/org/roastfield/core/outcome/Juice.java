package org.roastfield.core.outcome;

import org.roastfield.core.internal.Check;
import org.roastfield.core.simulation.SimulationResult;

/**
 * Water lost, in shares of the raw mass. Evaporation comes from the computed cook; what lean meat
 * presses out follows its highest temperatures alone, eq. (69), and is added whole, though some of
 * it evaporates: assumed. Not for vegetables.
 *
 * @param evaporated as vapour, below 0 if more condensed
 * @param dripped pressed out of the meat
 */
public record Juice(double evaporated, double dripped) {

  /** What the drip rests on: constants of a water-holding curve for beef, from memory. */
  public static final Status DRIP_STATUS = Status.ASSUMED;

  /**
   * @throws IllegalArgumentException if a share is not finite, or the drip below 0
   */
  public Juice {
    Check.finite("evaporated", evaporated);
    Check.notNegative("dripped", dripped);
  }

  /** Source of {@link #DRIP_STATUS}, in words. */
  public static final String DRIP_SOURCE =
      "water-holding curve of lean beef as roasting models have it, its constants from memory: not"
          + " checked against the papers";

  /** Of a body without ends: its mass is that behind each square metre of face. */
  public static Juice of(CookedCut cut, SimulationResult result) {
    double density = result.cook().cut().material().density();
    double depth = result.cook().cut().shape().volumePerArea();
    double perFace =
        cut.isTwoFaced()
            ? 0.5 * (result.water().evaporatedUpper() + result.water().evaporatedLower())
            : result.water().evaporatedUpper();
    return of(cut, perFace / (density * depth));
  }

  /**
   * With the evaporation of a whole cut.
   *
   * @param evaporatedShare of the raw mass
   */
  public static Juice of(CookedCut cut, double evaporatedShare) {
    return new Juice(evaporatedShare, dripped(cut.highest(), WaterHolding.BEEF));
  }

  /** Share of the raw mass pressed out by the highest temperatures [K] over a cross-section. */
  public static double dripped(CrossSection highest, WaterHolding holding) {
    return highest.map(holding::pressedOut).mean();
  }

  /** Both together. */
  public double total() {
    return evaporated + dripped;
  }

  /** What is left of the raw mass. */
  public double left() {
    return 1 - total();
  }
}
