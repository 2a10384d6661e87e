package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;

/**
 * How a trace computed with true parameters differs from one that was logged: a drift with memory
 * (an Ornstein-Uhlenbeck process, for what the model leaves out), white noise, and rounding to the
 * resolution of the instrument.
 *
 * <p>The drift is what keeps a long log honest: eight hours of readings every half minute are about
 * four looks at a model whose error wanders over an hour, not a thousand.
 *
 * @param driftSpread standard deviation of the drift [unit of the trace], at least 0
 * @param driftTime its correlation time [s], greater than 0
 * @param noise standard deviation of the white noise [unit of the trace], greater than 0
 * @param resolution step of the readings [unit of the trace], 0 if none; counts as the variance of
 *     a uniform error, resolution²/12
 */
public record ErrorModel(double driftSpread, double driftTime, double noise, double resolution) {

  /** Medians of the priors for core traces: 0.8 K, 45 min, 0.2 K, status assumed. */
  public static final ErrorModel CORE = new ErrorModel(0.8, 2700, 0.2, 0);

  /**
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public ErrorModel {
    Check.notNegative("driftSpread", driftSpread);
    Check.positive("driftTime", driftTime);
    Check.positive("noise", noise);
    Check.notNegative("resolution", resolution);
  }

  /** The same with readings rounded to a step. */
  public ErrorModel withResolution(double step) {
    return new ErrorModel(driftSpread, driftTime, noise, step);
  }

  /** The same with other spreads and times, each multiplied. */
  ErrorModel scaled(double spread, double time, double white) {
    return new ErrorModel(driftSpread * spread, driftTime * time, noise * white, resolution);
  }

  /** Variance of white noise and rounding together. */
  double whiteVariance() {
    return noise * noise + resolution * resolution / 12;
  }
}
