package org.roastfield.lab.report;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.simulation.Peak;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.units.Temperatures;

/**
 * Highest core temperature of a cook and what kind of highest it is.
 *
 * @param time [s]
 * @param temperature [K]
 * @param kind how it came about
 */
record CorePeak(double time, double temperature, Kind kind) {

  /** Kinds of highest core temperature. */
  enum Kind {
    /** A maximum inside a later stage: the heat on its way inwards when it was taken away. */
    CARRYOVER,
    /** The core was still rising when the computation ended. */
    STILL_RISING,
    /** Anything else, such as a core that was warmest at the start. */
    OTHER
  }

  /** The peak of a cook; empty if no stage was completed. */
  static Optional<CorePeak> of(SimulationResult result) {
    List<StageResult> stages = result.stages();
    CorePeak highest = null;
    for (int i = 0; i < stages.size(); i++) {
      Peak peak = result.corePeak(stages.get(i));
      if (highest == null || peak.temperature() > highest.temperature()) {
        highest = of(peak, i, peak.time() >= result.endTime());
      }
    }
    return Optional.ofNullable(highest);
  }

  private static CorePeak of(Peak peak, int stage, boolean atEnd) {
    Kind kind = peak.interior() && stage > 0 ? Kind.CARRYOVER : Kind.OTHER;
    return new CorePeak(
        peak.time(), peak.temperature(), atEnd && !peak.interior() ? Kind.STILL_RISING : kind);
  }

  /** How a picture points it out. */
  TraceFigure.Mark mark(TimeBase base) {
    String number = Numbers.celsiusText(temperature);
    String at = " at " + base.text(time);
    Point point = new Point(time, Temperatures.toCelsius(temperature));
    return switch (kind) {
      case CARRYOVER ->
          new TraceFigure.Mark(point, "carryover peak " + number + at, "peak " + number);
      case STILL_RISING ->
          new TraceFigure.Mark(
              point, number + ", still rising at the end", number + ", still rising");
      case OTHER -> new TraceFigure.Mark(point, "highest core " + number + at, number);
    };
  }
}
