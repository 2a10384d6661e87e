package org.roastfield.core.simulation;

import org.roastfield.core.cook.Probe;
import org.roastfield.core.shape.Shape;

/**
 * Where in the computed body the food along a stem is found. By the shortest way it is on the line
 * from the tip to the surface. On a stated way, from an end or edge, food is taken to be as warm as
 * food at 1/1.4 of its depth under the side, and beyond 1.4 times the depth of the tip as warm as
 * at the tip; or, if the way is shorter than that, the profile from side to tip is stretched to it.
 *
 * @param tip distance of the tip from the middle towards {@code side} [m]
 * @param side −1 for the lower part of a slab, else 1
 * @param flatLength how far from the tip the food is as warm as at the tip [m]
 * @param steepness depth under the side over depth on the way
 * @param length of stem in the food [m]
 * @param isStated whether the way is stated, instead of the shortest
 */
record StemWay(
    double tip, int side, double flatLength, double steepness, double length, boolean isStated) {

  /**
   * How much deeper than from the side heat has gone from an end, where no middle is near, by the
   * time the core warms: by products of exact series ({@code CompactPlacesTest}).
   */
  private static final double DEEPER_FROM_AN_END = 1.4;

  static StemWay of(Probe probe, Shape shape) {
    double middle = probe.distanceFromMiddle(shape);
    double length = probe.insertion(shape);
    if (probe.instrument().stem().inserted() == 0) {
      return new StemWay(middle, 1, 0, 1, length, false);
    }
    double tip = Math.abs(middle);
    double depth = shape.halfThickness() - tip;
    double warmed = Math.min(length, DEEPER_FROM_AN_END * depth);
    int side = middle < 0 ? -1 : 1;
    return new StemWay(tip, side, length - warmed, depth / warmed, length, true);
  }

  /**
   * Distance from the middle of food as warm as that beside the stem [m].
   *
   * @param fromTip along the stem [m], at most its length
   */
  double distanceFromMiddle(double fromTip) {
    return side * (tip + steepness * Math.max(0, fromTip - flatLength));
  }
}
