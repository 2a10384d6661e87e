package org.roastfield.core.chamber;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * What it costs to open a lid once.
 *
 * @param gasFall how far the gas falls below the setting [K]
 * @param wallFall how far the wall falls [K]
 * @param recovery from closing until the gas is back within 1 K of the setting [s]; NaN if it is
 *     not within {@link FireNeeds#LONGEST_WAIT}
 * @param fuel that burns besides [kg], until an hour after the lid was closed
 */
public record LidCost(double gasFall, double wallFall, double recovery, double fuel) {

  private static final double SETTLED = 10_800;
  private static final double AFTERWARDS = 3600;

  /**
   * Computes it for a pit that has been held at its setting for three hours.
   *
   * @param outside weather
   * @param setting [K]
   * @param load heat into what is cooked [W]
   * @param duration that the lid is open [s], 5 s to an hour
   * @throws IllegalArgumentException if an argument is outside its range, or the pit cannot hold
   *     the setting
   */
  public static LidCost of(
      FirePit pit, Outside outside, double setting, double load, double duration) {
    Check.inRange("duration", duration, 5, 3600);
    FireState start = pit.cold(outside, pit.bed().glowing(pit.bed().power()));
    Tending closed = Tending.hold(0, setting).withLoad(load);
    double closing = SETTLED + duration;
    double end = closing + FireNeeds.LONGEST_WAIT;
    FireCourse without = pit.run(outside, start, List.of(closed), end);
    double held = without.airTemperature(SETTLED);
    if (held < setting - 1) {
      throw new IllegalArgumentException(
          "setting must be one that the pit can hold, was " + setting + ", reached " + held);
    }
    FireCourse with =
        pit.run(
            outside,
            start,
            List.of(closed, closed.at(SETTLED).withOpenLid(), closed.at(closing)),
            end);
    return new LidCost(
        setting - with.airTemperature(closing),
        without.wallTemperature(closing) - with.wallTemperature(closing),
        with.timeOfAir(setting - 1, closing) - closing,
        with.burnt(closing + AFTERWARDS) - without.burnt(closing + AFTERWARDS));
  }
}
