package org.roastfield.core.chamber;

import java.util.random.RandomGenerator;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;

/**
 * How the gas of a tended chamber strays from its setting: an Ornstein-Uhlenbeck process, eq. (83).
 *
 * @param deviation standard deviation [K], 0 to 100
 * @param correlationTime [s], 10 to 1e5
 */
public record Drift(double deviation, double correlationTime) {

  /** Vents moved by hand: 6-10 K and 20-60 min, assumed. */
  public static final Drift BY_HAND = new Drift(8, 2100);

  /** A fan with a thermostat: 2-5 K, periods of 2-10 min, assumed. */
  public static final Drift BY_FAN = new Drift(3.5, 120);

  /** Samples of a path in one correlation time. */
  private static final int SAMPLES = 8;

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Drift {
    Check.inRange("deviation", deviation, 0, 100);
    Check.inRange("correlationTime", correlationTime, 10, 1e5);
  }

  /**
   * Standard deviation of the mean over a time [K].
   *
   * @param duration [s], greater than 0
   */
  public double deviationOfMean(double duration) {
    double x = Check.positive("duration", duration) / correlationTime;
    double variance = x < 1e-4 ? 1 - x / 3 : 2 * (x - 1 + StrictMath.exp(-x)) / (x * x);
    return deviation * Math.sqrt(variance);
  }

  /**
   * One path of it, to be added to a setting: exact at its samples, an eighth of the correlation
   * time apart, straight between them.
   *
   * @param from first sample [s]
   * @param to last sample at least [s], after {@code from}
   * @param random normal deviates are taken from it
   */
  public Signal path(double from, double to, RandomGenerator random) {
    Check.finite("from", from);
    Check.positive("to - from", to - from);
    double step = correlationTime / SAMPLES;
    int count = Check.inRange("samples", 2 + (int) ((to - from) / step), 2, 10_000_000);
    double kept = StrictMath.exp(-step / correlationTime);
    double fresh = Math.sqrt(1 - kept * kept);
    double[] times = new double[count];
    double[] values = new double[count];
    double value = random.nextGaussian();
    for (int k = 0; k < count; k++) {
      times[k] = from + k * step;
      values[k] = deviation * value;
      value = kept * value + fresh * random.nextGaussian();
    }
    return SampledSignal.of(times, values, 4 * step);
  }
}
