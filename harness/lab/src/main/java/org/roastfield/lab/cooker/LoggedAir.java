package org.roastfield.lab.cooker;

import java.util.Arrays;
import java.util.Optional;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.files.LogChannel;

/**
 * Air of a chamber as a probe showed it, averaged over a few minutes: a thick cut does not follow
 * faster, and a cook takes fewer steps.
 */
final class LoggedAir {

  /**
   * Readings within this time are averaged [s]: short against the minutes a face takes; assumed.
   */
  static final double AVERAGED = 120;

  /** Steps are kept below a third of this many of these times. */
  private static final double TIMES_PER_PERIOD = 4;

  private LoggedAir() {}

  /** Air between two times; empty if no reading is there. */
  static Optional<Signal> of(LogChannel chamber, double from, double to) {
    double[] times = new double[chamber.size()];
    double[] values = new double[chamber.size()];
    int bins = 0;
    int i = 0;
    while (i < chamber.size()) {
      double first = chamber.time(i);
      double time = 0;
      double value = 0;
      int count = 0;
      while (i < chamber.size() && chamber.time(i) < first + AVERAGED && chamber.time(i) <= to) {
        time += chamber.time(i);
        value += chamber.temperature(i);
        count++;
        i++;
      }
      if (count == 0) {
        break;
      }
      if (first >= from) {
        times[bins] = time / count;
        values[bins++] = value / count;
      }
    }
    return bins == 0
        ? Optional.empty()
        : Optional.of(
            SampledSignal.of(
                Arrays.copyOf(times, bins),
                Arrays.copyOf(values, bins),
                TIMES_PER_PERIOD * AVERAGED));
  }
}
