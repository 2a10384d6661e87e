package org.roastfield.core.inference;

import java.util.function.ToDoubleBiFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.simulation.SimulationResult;

/**
 * One number that somebody read once, and what a computed cook makes of it.
 *
 * @param reading as it was read
 * @param computed the same of a cook and its result, in the unit of the reading; the result may be
 *     of a cook with other probes
 */
public record ObservedNumber(
    SingleReading reading, ToDoubleBiFunction<Cook, SimulationResult> computed) {

  /**
   * An instant reading.
   *
   * @param reading [K]
   * @param probe name of a probe that the cooks list, or "core" or "surface"
   * @param time since the start of the cook [s]
   */
  public static ObservedNumber spot(SingleReading reading, String probe, double time) {
    return new ObservedNumber(
        reading, (cook, result) -> result.shownBy(CookModel.probe(cook, probe)).at(time));
  }

  /**
   * The highest core of the whole cook.
   *
   * @param reading [K]
   */
  public static ObservedNumber highestCore(SingleReading reading) {
    return new ObservedNumber(
        reading,
        (cook, result) ->
            result.stages().stream()
                .mapToDouble(stage -> result.corePeak(stage).temperature())
                .max()
                .orElseThrow());
  }
}
