package org.roastfield.lab.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.timeline.CoreHistory;

/** Times at which the core first reached given temperatures, measured and computed. */
final class TargetTimes {

  private static final double SPACING = 10;

  private final LogChannel measured;
  private final DoubleUnaryOperator shown;
  private final SimulationResult result;

  /**
   * @param measured readings of the core
   * @param shown what the computation shows at a time [s], in kelvin
   * @param result the computation
   */
  TargetTimes(LogChannel measured, DoubleUnaryOperator shown, SimulationResult result) {
    this.measured = measured;
    this.shown = shown;
    this.result = result;
  }

  /** When a temperature [K] is reached. */
  TargetTime of(double target) {
    return new TargetTime(
        target,
        firstRise(measured, target),
        CoreHistory.firstRise(shown, 0, result.endTime(), target),
        CoreHistory.firstRise(result.core(), target));
  }

  /** Whole tens of degrees Celsius above the first reading, up to the highest [K]. */
  static List<Double> everyTenDegrees(LogChannel measured) {
    double first = Temperatures.toCelsius(measured.temperature(0));
    double highest = first;
    for (int i = 0; i < measured.size(); i++) {
      highest = Math.max(highest, Temperatures.toCelsius(measured.temperature(i)));
    }
    List<Double> targets = new ArrayList<>();
    for (double t = SPACING * (Math.floor(first / SPACING) + 1); t <= highest; t += SPACING) {
      targets.add(Temperatures.celsius(t));
    }
    return targets;
  }

  private static OptionalDouble firstRise(LogChannel channel, double target) {
    if (channel.temperature(0) >= target) {
      return OptionalDouble.of(channel.time(0));
    }
    for (int i = 1; i < channel.size(); i++) {
      if (channel.temperature(i) >= target) {
        double before = channel.temperature(i - 1);
        double share = (target - before) / (channel.temperature(i) - before);
        double interval = channel.time(i) - channel.time(i - 1);
        return OptionalDouble.of(channel.time(i - 1) + share * interval);
      }
    }
    return OptionalDouble.empty();
  }
}
