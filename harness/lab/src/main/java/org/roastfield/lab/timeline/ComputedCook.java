package org.roastfield.lab.timeline;

import java.util.List;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;

/**
 * A cook file, what came of it, and what that means.
 *
 * @param file what was asked for
 * @param result its computation
 * @param stations of a taper, or none
 * @param inside of the cut; of a taper that of its thickest cross-section
 */
public record ComputedCook(
    CookFile file, SimulationResult result, List<Station> stations, Inside inside) {

  /** Copies the list. */
  public ComputedCook {
    stations = List.copyOf(stations);
  }

  /**
   * Reads a result, once for all that is shown of it.
   *
   * @param result of {@code file}, completed
   */
  public static ComputedCook of(CookFile file, SimulationResult result) {
    return new ComputedCook(file, result, Stations.of(file, result), Inside.of(file, result));
  }

  /** The same beside what drawn inputs make of it. */
  public ComputedCook with(Spread spread) {
    return new ComputedCook(file, result, stations, inside.with(spread));
  }
}
