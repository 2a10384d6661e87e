package org.roastfield.core.simulation;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.internal.Check;

/**
 * Temperature over depth at one time. Immutable.
 *
 * <p>Positions are distances from the middle [m]: from 0 to the surface where the cut is treated
 * alike all round, from the lower face (negative) to the upper face in a slab with different faces.
 * The listed points are both ends and the middle of each cell.
 */
public final class TemperatureProfile {

  private final Trajectory trajectory;
  private final double length;
  private final double time;
  private final double[] positions;

  TemperatureProfile(Trajectory trajectory, double length, double time) {
    this.trajectory = trajectory;
    this.length = length;
    this.time = time;
    Grid grid = trajectory.grid();
    positions = new double[grid.cells() + 2];
    positions[0] = grid.isTwoSided() ? -0.5 * length : 0;
    for (int i = 0; i < grid.cells(); i++) {
      double xi = 0.5 * (grid.face(i) + grid.face(i + 1));
      positions[i + 1] = grid.isTwoSided() ? (xi - 0.5) * length : xi * length;
    }
    positions[grid.cells() + 1] = grid.isTwoSided() ? 0.5 * length : length;
  }

  /** When [s]. */
  public double time() {
    return time;
  }

  /** Number of listed points. */
  public int size() {
    return positions.length;
  }

  /** Distance of point {@code i} from the middle [m], increasing. */
  public double position(int i) {
    return positions[i];
  }

  /** Temperature of point {@code i} [K]. */
  public double temperature(int i) {
    return at(positions[i]);
  }

  /**
   * Temperature at any place [K].
   *
   * @param position distance from the middle [m], between the first and the last listed point
   */
  public double at(double position) {
    double inside = Check.inRoundedRange("position", position, positions[0], positions[size() - 1]);
    return trajectory.at(Places.reading(trajectory.grid(), length, inside), time);
  }
}
