package org.roastfield.lab.synthetic;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Random numbers that are the same everywhere: a named generator, and transforms by {@link
 * StrictMath} alone.
 */
public final class Noise {

  /** Name of the generator. */
  static final String ALGORITHM = "L64X128MixRandom";

  /** Odd, and far from any number of streams: seeds and streams do not meet. */
  private static final long STREAMS = 0x9E3779B97F4A7C15L;

  private final RandomGenerator generator;

  private Noise(RandomGenerator generator) {
    this.generator = generator;
  }

  public static Noise ofSeed(long seed) {
    return new Noise(RandomGeneratorFactory.of(ALGORITHM).create(seed));
  }

  /**
   * One of several streams of a seed, each without regard to how much of the others is used.
   *
   * @param stream number of the stream, from 0
   */
  public static Noise ofSeed(long seed, int stream) {
    return ofSeed(seed * STREAMS + stream);
  }

  /** Uniform in [0, 1): the upper 53 bits. */
  public double uniform() {
    return (generator.nextLong() >>> 11) * 0x1.0p-53;
  }

  /** Uniform between two values. */
  public double uniform(double low, double high) {
    return low + (high - low) * uniform();
  }

  /** Exponential of the given mean. */
  public double exponential(double mean) {
    return -mean * StrictMath.log(1 - uniform());
  }

  /** Normal of mean 0 and standard deviation 1, by Box and Muller. */
  public double normal() {
    double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
    return radius * StrictMath.cos(2 * StrictMath.PI * uniform());
  }

  /** Normal, drawn again until it is within bounds, so that they truncate the density. */
  public double normal(double mean, double deviation, double low, double high) {
    double value = mean + deviation * normal();
    while (!(value >= low && value <= high)) {
      value = mean + deviation * normal();
    }
    return value;
  }

  /**
   * Lognormal, truncated as {@link #normal(double, double, double, double)}.
   *
   * @param deviation standard deviation of the logarithm
   */
  public double logNormal(double median, double deviation, double low, double high) {
    double logarithm =
        normal(StrictMath.log(median), deviation, StrictMath.log(low), StrictMath.log(high));
    return StrictMath.exp(logarithm);
  }

  /**
   * Ornstein-Uhlenbeck process at even times, stationary from the start.
   *
   * @param count number of values
   * @param step between them [s]
   * @param deviation standard deviation
   * @param correlationTime after which the correlation is 1/e [s]
   * @return values, [count]
   */
  public double[] correlated(int count, double step, double deviation, double correlationTime) {
    double kept = StrictMath.exp(-step / correlationTime);
    double fresh = deviation * StrictMath.sqrt(1 - kept * kept);
    double[] values = new double[count];
    double value = deviation * normal();
    for (int i = 0; i < count; i++) {
      values[i] = value;
      value = kept * value + fresh * normal();
    }
    return values;
  }
}
