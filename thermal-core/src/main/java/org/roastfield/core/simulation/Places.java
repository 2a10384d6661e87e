package org.roastfield.core.simulation;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;

/** From a distance from the middle to a reading on the grid. */
final class Places {

  private Places() {}

  /**
   * Reading at a place.
   *
   * @param length what ξ = 1 stands for [m]
   * @param distance from the middle [m]; on a grid of half a body its sign does not matter
   */
  static Reading reading(Grid grid, double length, double distance) {
    double xi = grid.isTwoSided() ? 0.5 + distance / length : Math.abs(distance) / length;
    return Reading.at(grid, Math.max(0, Math.min(1, xi)));
  }
}
