package org.roastfield.core.plan;

import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * The cook in gentle heat that is kept hotter or cooler than stated, and how far that may go.
 *
 * @param cooks by how much hotter it is [K], negative for cooler; the cook as stated for 0
 * @param coolest how much cooler than stated the fire may be kept [K], at least 0
 * @param hottest how much hotter [K], at least 0
 */
public record Fires(
    DoubleFunction<Function<ParameterPoint, Cook>> cooks, double coolest, double hottest) {

  /** As far as a fire is let down and raised if nothing else is said [K]: assumed. */
  public static final double USUAL_COOLER = 20;

  /** Likewise. */
  public static final double USUAL_HOTTER = 40;

  /**
   * @throws IllegalArgumentException if a bound is negative
   */
  public Fires {
    Check.notNegative("coolest", coolest);
    Check.notNegative("hottest", hottest);
  }

  /** The usual bounds. */
  public static Fires of(DoubleFunction<Function<ParameterPoint, Cook>> cooks) {
    return new Fires(cooks, USUAL_COOLER, USUAL_HOTTER);
  }
}
