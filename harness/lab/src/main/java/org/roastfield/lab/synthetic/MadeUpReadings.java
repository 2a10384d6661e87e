package org.roastfield.lab.synthetic;

import java.util.Arrays;
import java.util.List;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;

/**
 * What two probes make of a truth: bias and white error of the chamber's; lag, bias, drifting and
 * white error of the core's; tenths of a degree; readings lost one by one and, in one cook of
 * three, for some minutes together.
 */
final class MadeUpReadings {

  /** White error of the chamber's probe [K]; assumed. */
  private static final double CHAMBER_NOISE = 0.3;

  /** Last digit [K]. */
  private static final double RESOLUTION = 0.1;

  /** Share of single readings that are lost, and of cooks with a gap; assumed. */
  private static final double LOST = 0.005;

  private static final double WITH_GAP = 1.0 / 3;
  private static final double SHORTEST_GAP = 300;
  private static final double LONGEST_GAP = 900;

  private final SyntheticCooker cooker;
  private final TrueValues values;
  private final Noise noise;

  MadeUpReadings(SyntheticCooker cooker, TrueValues values, Noise noise) {
    this.cooker = cooker;
    this.values = values;
    this.noise = noise;
  }

  /**
   * Readings of a cook.
   *
   * @param air of the chamber [K]
   * @param chamberUntil when the chamber's probe is taken out [s]
   * @param before what the core probe shows but for its noise
   * @param after the same from {@code moved} on
   * @param moved when the probe slips [s]; infinite for never
   * @param end of the log [s]
   */
  CookLog of(
      Signal air,
      double chamberUntil,
      ProbeTrace before,
      ProbeTrace after,
      double moved,
      double end) {
    int count = (int) Math.floor(end / cooker.readingInterval()) + 1;
    double[] drift =
        noise.correlated(count, cooker.readingInterval(), values.wander(), values.wanderTime());
    boolean hasGap = noise.uniform() < WITH_GAP;
    double gapFrom = noise.uniform(0.1, 0.8) * end;
    double gapTo = gapFrom + noise.uniform(SHORTEST_GAP, LONGEST_GAP);
    Column chamber = new Column(CookLog.CHAMBER, count);
    Column core = new Column(CookLog.CORE, count);
    for (int i = 0; i < count; i++) {
      double time = i * cooker.readingInterval();
      double airShown = air.at(time) + cooker.chamberBias() + CHAMBER_NOISE * noise.normal();
      double coreShown =
          (time < moved ? before : after).at(time) + drift[i] + values.noise() * noise.normal();
      boolean isLost = noise.uniform() < LOST;
      boolean inGap = hasGap && time >= gapFrom && time <= gapTo;
      chamber.add(time, airShown, time > chamberUntil || inGap);
      core.add(time, coreShown, isLost || inGap);
    }
    double last = (count - 1) * cooker.readingInterval();
    String comment = "made up, no such cook took place";
    List<LogChannel> channels = List.of(chamber.channel(), core.channel());
    return new CookLog("readings.csv", List.of(comment), count, 0, last, channels);
  }

  /** A reading to its last digit [K]. */
  static double rounded(double kelvin) {
    double steps = Math.rint(Temperatures.toCelsius(kelvin) / RESOLUTION);
    return Temperatures.celsius(steps * RESOLUTION);
  }

  /** A channel in the making. */
  private static final class Column {

    private final String name;
    private final double[] times;
    private final double[] values;
    private final double[] missing;
    private int size;
    private int lost;

    Column(String name, int count) {
      this.name = name;
      this.times = new double[count];
      this.values = new double[count];
      this.missing = new double[count];
    }

    void add(double time, double kelvin, boolean isMissing) {
      if (isMissing) {
        missing[lost++] = time;
      } else {
        times[size] = time;
        values[size++] = rounded(kelvin);
      }
    }

    LogChannel channel() {
      return LogChannel.of(
          name,
          Arrays.copyOf(times, size),
          Arrays.copyOf(values, size),
          Arrays.copyOf(missing, lost));
    }
  }
}
