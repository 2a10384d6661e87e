package org.roastfield.core.outcome;

import org.roastfield.core.internal.Check;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;

/**
 * Water lost, in shares of the raw mass: the account of the computed cook, eq. (98). What is put on
 * by basting leaves with the rest. Nothing drips from vegetables.
 *
 * @param evaporated as vapour, below 0 if more condensed
 * @param dripped run off the faces, or pressed out of the meat and not taken by them
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
          + " checked against the papers; it drains 5 min late, by measured losses of chicken";

  /** Of a body without ends: its mass is that behind each square metre of face. */
  public static Juice of(SimulationResult result) {
    return of(result, moisture(result.cook().cut().material()));
  }

  /** The same, were this the food's water. */
  public static Juice of(SimulationResult result, Moisture moisture) {
    WaterBalance water = result.water(moisture);
    double faces = result.cook().isSymmetric() ? 1 : 2;
    double mass = faces * moisture.rawDensity() * result.cook().cut().shape().volumePerArea();
    return new Juice(
        (water.evaporatedUpper() + water.evaporatedLower()) / mass,
        (water.drippedUpper() + water.drippedLower()) / mass);
  }

  /** Water of a material; that of lean meat where it does not say. */
  public static Moisture moisture(Material material) {
    return material.moisture().isKnown()
        ? material.moisture()
        : Moisture.ofLeanMeat(material.density());
  }

  /** The same with the evaporation of a whole cut, in a share of its raw mass. */
  public Juice evaporating(double share) {
    return new Juice(share, dripped);
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
