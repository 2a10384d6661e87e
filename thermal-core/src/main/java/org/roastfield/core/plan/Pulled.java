package org.roastfield.core.plan;

import java.util.List;
import org.roastfield.core.cook.StageEnd;

/**
 * Where a rule pulls a draw, as it was found to warm.
 *
 * @param reading of its display [K]
 * @param near when the display is nearly there, since the start of the cook [s]; NaN where the
 *     display decides
 * @param at when the clock decides instead [s]; NaN where the display decides
 */
record Pulled(double reading, double near, double at) {

  /** How near to its bounds the clock decides, since how a draw warms is known so well [s]. */
  private static final double SURE = 120;

  /**
   * Of a draw.
   *
   * @param start of its cut [K]
   */
  static Pulled of(Warming warming, int draw, double start, Pull pull) {
    double reading = warming.meets(draw, start, pull);
    if (!pull.isBound()) {
      return new Pulled(reading, Double.NaN, Double.NaN);
    }
    boolean arrives = warming.arrives(draw);
    double time = arrives ? warming.time(draw, reading) : Double.POSITIVE_INFINITY;
    if (time >= pull.from() + SURE && time <= pull.until() - SURE) {
      return new Pulled(reading, Double.NaN, Double.NaN);
    }
    double at = Math.max(pull.from(), Math.min(pull.until(), time));
    if (!arrives) {
      return new Pulled(reading, at, at);
    }
    double shown = warming.reading(draw, start, at);
    double near = warming.time(draw, shown - Plan.AHEAD);
    return new Pulled(shown, Math.max(0, Math.min(at, near)), at);
  }

  /**
   * The same by the clock if it came off outside the bounds of its rule, being other than it was
   * found to warm.
   *
   * @param wasNear when its display was nearly there [s]; infinite for never
   * @param pulled when it came off [s]; infinite for never
   */
  Pulled within(Pull pull, double wasNear, double pulled) {
    double bound = Math.max(pull.from(), Math.min(pull.until(), pulled));
    return pulled == bound ? this : new Pulled(reading, Math.min(wasNear, bound), bound);
  }

  /** Ends of the last legs of its gentle heat, by the clock. */
  List<StageEnd> legs() {
    return List.of(StageEnd.at(near), StageEnd.at(at));
  }

  /** Whether the clock decides. */
  boolean byClock() {
    return !Double.isNaN(at);
  }
}
