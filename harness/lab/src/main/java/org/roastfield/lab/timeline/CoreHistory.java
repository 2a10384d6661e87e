package org.roastfield.lab.timeline;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.simulation.Peak;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.simulation.Trace;

/** What is read off the core temperature of a whole cook. */
public final class CoreHistory {

  /** Spacing of the search for crossings [s], finer than any that a core can hide. */
  private static final double SEARCH_STEP = 15;

  private CoreHistory() {}

  /** Highest core temperature of the cook [K]. */
  public static double highest(SimulationResult result) {
    double highest = result.core().at(0);
    for (StageResult stage : result.stages()) {
      Peak peak = result.corePeak(stage);
      highest = Math.max(highest, Math.max(peak.temperature(), stage.coreAtEnd()));
    }
    return Math.max(highest, result.core().at(result.endTime()));
  }

  /**
   * Time [s] at which a trace first rises to a temperature [K], to a hundredth of a second; empty
   * if it never does.
   */
  public static OptionalDouble firstRise(Trace trace, double temperature) {
    return firstRise(trace::at, trace.start(), trace.end(), temperature);
  }

  /**
   * The same of any temperature [K] over time [s].
   *
   * @param trace temperature at a time from {@code start} to {@code end}
   * @param start [s]
   * @param end [s]
   */
  public static OptionalDouble firstRise(
      DoubleUnaryOperator trace, double start, double end, double temperature) {
    double before = start;
    if (trace.applyAsDouble(before) >= temperature) {
      return OptionalDouble.of(before);
    }
    while (before < end) {
      double after = Math.min(before + SEARCH_STEP, end);
      if (trace.applyAsDouble(after) >= temperature) {
        return OptionalDouble.of(crossing(trace, temperature, before, after));
      }
      before = after;
    }
    return OptionalDouble.empty();
  }

  private static double crossing(
      DoubleUnaryOperator trace, double temperature, double before, double after) {
    double low = before;
    double high = after;
    while (high - low > 0.01) {
      double middle = 0.5 * (low + high);
      if (trace.applyAsDouble(middle) >= temperature) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
