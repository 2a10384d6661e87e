package org.roastfield.core.simulation;

import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.internal.Check;

/** Temperature over time at one place, from the dense output of the integration. Immutable. */
public final class Trace {

  private final String name;
  private final Reading reading;
  private final Trajectory trajectory;

  Trace(String name, Reading reading, Trajectory trajectory) {
    this.name = name;
    this.reading = reading;
    this.trajectory = trajectory;
  }

  /** Name of the place. */
  public String name() {
    return name;
  }

  /** First time [s]. */
  public double start() {
    return trajectory.start();
  }

  /** Last time [s]. */
  public double end() {
    return trajectory.end();
  }

  /**
   * Temperature [K]; where stages meet, that at the end of the earlier one.
   *
   * @param time since the start of the cook [s]
   * @throws IllegalArgumentException if {@code time} is outside [{@link #start()}, {@link #end()}]
   */
  public double at(double time) {
    return trajectory.at(reading, Check.inRoundedRange("time", time, start(), end()));
  }

  /** Highest value between two times, by the dense output. */
  Peak peak(double from, double to) {
    return new PeakSearch(trajectory, reading).between(from, to);
  }
}
