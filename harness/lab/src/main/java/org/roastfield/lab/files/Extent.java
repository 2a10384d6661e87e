package org.roastfield.lab.files;

import org.roastfield.core.material.Moisture;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;

/**
 * Size of the whole cut, for sums over its surface.
 *
 * @param area surface that heat enters through [m²]: the sides of an endless cylinder, one face of
 *     a slab, all of any other piece
 * @param mass as stated, else by the sizes [kg]
 * @param massBySizes by the sizes and the food's density [kg]
 */
public record Extent(double area, double mass, double massBySizes) {

  /**
   * How far a weight may be from that of the stated sizes, as a ratio less 1. Assumed: a tape reads
   * a diameter of soft meat to about 5 %, which is 10 % of weight, and ends are rounded.
   */
  public static final double AGREEMENT = 0.2;

  /** One whose weight is that of its sizes. */
  public Extent(double area, double mass) {
    this(area, mass, mass);
  }

  /**
   * The same of a cut whose lengths are multiplied where heat enters: a slab's thickness, a
   * cylinder's diameter, every length of any other piece.
   */
  public Extent scaled(Shape shape, double factor) {
    if (shape instanceof Slab) {
      return times(1, factor);
    }
    return shape instanceof Cylinder
        ? times(factor, factor * factor)
        : times(factor * factor, factor * factor * factor);
  }

  private Extent times(double wider, double heavier) {
    return new Extent(wider * area, heavier * mass, heavier * massBySizes);
  }

  /** Water that left the whole cut as vapour [kg]. */
  public double evaporatedMass(SimulationResult result) {
    WaterBalance water = result.water();
    return overFaces(result, water.evaporatedUpper() + water.evaporatedLower());
  }

  /** Water that dripped from the whole cut, by what is known of its water [kg]. */
  public double drippedMass(SimulationResult result, Moisture moisture) {
    WaterBalance water = result.water(moisture);
    return overFaces(result, water.drippedUpper() + water.drippedLower());
  }

  /** What the whole cut lost, in shares of its mass. */
  public Juice juice(SimulationResult result, Moisture moisture) {
    return new Juice(evaporatedMass(result) / mass, drippedMass(result, moisture) / mass);
  }

  private double overFaces(SimulationResult result, double perArea) {
    boolean twoAlike = result.cook().isSymmetric() && result.cook().cut().shape() instanceof Slab;
    return area * (twoAlike ? 2 * perArea : perArea);
  }
}
