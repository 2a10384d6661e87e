package org.roastfield.core.integration;

import org.roastfield.core.grid.Reading;

/** A reading whose derivatives are asked for: of its weights, its place and its limits. */
public final class TangentReading {

  private final Reading value;
  private final Reading slope;
  private final double[] places;
  private final boolean limited;
  private final Reading[] neighbours;

  /**
   * @param slope derivative of the reading by ξ
   * @param places dξ/dp of each parameter, not modified
   */
  TangentReading(Reading reading, Reading slope, double[] places) {
    this.value = reading.unlimited();
    this.slope = slope;
    this.places = places;
    this.limited = !reading.isCentral();
    this.neighbours = new Reading[limited ? 3 : 0];
    for (int j = 0; j < neighbours.length; j++) {
      neighbours[j] = reading.neighbour(j);
    }
  }

  /** The reading, not limited by its neighbours. */
  Reading value() {
    return value;
  }

  /** Its derivative by ξ. */
  Reading slope() {
    return slope;
  }

  /** dξ/dp. */
  double place(int parameter) {
    return places[parameter];
  }

  /** Whether its values are kept from overshooting their neighbours. */
  boolean isLimited() {
    return limited;
  }

  /** A neighbour, 0, 1 or 2. */
  Reading neighbour(int index) {
    return neighbours[index];
  }
}
