package org.roastfield.core.inference;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.roastfield.core.internal.Check;

/**
 * What is known of a drift after the last reading, and how it may go on.
 *
 * @param errors model of the drift
 * @param time of the last reading [s]
 * @param mean expected drift then, measured less computed [unit of the trace]
 * @param variance of it, at least 0
 */
public record DriftState(ErrorModel errors, double time, double mean, double variance) {

  /**
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public DriftState {
    Check.finite("time", time);
    Check.finite("mean", mean);
    Check.notNegative("variance", variance);
  }

  /**
   * The state after readings.
   *
   * @param times increasing, at least one [s]
   * @param residuals measured less computed, as many
   */
  public static DriftState after(ErrorModel errors, double[] times, double[] residuals) {
    int last = Check.inRange("number of times", times.length, 1, Integer.MAX_VALUE) - 1;
    Check.inRange("number of residuals", residuals.length, times.length, times.length);
    double[] weights = new double[times.length];
    Arrays.fill(weights, 1);
    Whitening whitening = new Whitening(times, errors, weights);
    double mean = residuals[last] - whitening.withoutDrift(residuals, 0)[last];
    double variance = Math.max(0, whitening.driftVariance()[last]);
    return new DriftState(errors, times[last], mean, variance);
  }

  /**
   * A draw of how the drift goes on.
   *
   * @param times increasing, after {@link #time()} [s]
   * @return drift then [unit of the trace]
   */
  public double[] path(double[] times, RandomGenerator random) {
    double[] path = new double[times.length];
    double drift = mean + Math.sqrt(variance) * Normal.standard(random);
    double before = time;
    for (int k = 0; k < times.length; k++) {
      double kept = StrictMath.exp((before - times[k]) / errors.driftTime());
      double fresh = errors.driftSpread() * Math.sqrt(1 - kept * kept);
      drift = kept * drift + fresh * Normal.standard(random);
      path[k] = drift;
      before = times[k];
    }
    return path;
  }
}
