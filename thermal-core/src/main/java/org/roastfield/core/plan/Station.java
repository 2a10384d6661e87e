package org.roastfield.core.plan;

import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * Another cross-section of the cut, such as the thin end of a taper: a cook of its own that goes
 * through the stages of the planned one at the same times, but for lengths of its own.
 *
 * @param name shown in results
 * @param cooks builds its cook at a point; the stages and roles of the planned cook
 * @param wish of its final core
 */
public record Station(String name, Function<ParameterPoint, Cook> cooks, CoreWish wish) {

  /**
   * @throws IllegalArgumentException if the name is blank
   */
  public Station {
    Check.notBlank("name", name);
  }

  /**
   * What comes of it in a plan.
   *
   * @param name of the station
   * @param wish of its final core
   * @param finalCore highest core up to carving [K]
   * @param chanceUnder of a final core below its wish, in [0, 1]
   * @param chanceOver of one above it, in [0, 1]
   */
  public record Result(
      String name, CoreWish wish, Spread finalCore, double chanceUnder, double chanceOver) {}
}
