package org.roastfield.lab.synthetic;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Random numbers that are the same everywhere: a named generator, and transforms by {@link
 * StrictMath} alone.
 */
final class Noise {

  /** Name of the generator. */
  static final String ALGORITHM = "L64X128MixRandom";

  private final RandomGenerator generator;

  private Noise(RandomGenerator generator) {
    this.generator = generator;
  }

  static Noise ofSeed(long seed) {
    return new Noise(RandomGeneratorFactory.of(ALGORITHM).create(seed));
  }

  /** Uniform in [0, 1): the upper 53 bits. */
  double uniform() {
    return (generator.nextLong() >>> 11) * 0x1.0p-53;
  }

  /** Uniform between two values. */
  double uniform(double low, double high) {
    return low + (high - low) * uniform();
  }

  /** Exponential of the given mean. */
  double exponential(double mean) {
    return -mean * StrictMath.log(1 - uniform());
  }

  /** Normal of mean 0 and standard deviation 1, by Box and Muller. */
  double normal() {
    double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
    return radius * StrictMath.cos(2 * StrictMath.PI * uniform());
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
  double[] correlated(int count, double step, double deviation, double correlationTime) {
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
