package org.roastfield.lab.trial;

import java.util.SplittableRandom;
import org.roastfield.core.plan.FollowedCook;

/** Noise of a display, 0.2 K at each reading, independent; assumed. */
final class ReadingNoise {

  private static final double DEVIATION = 0.2;

  private final long seed;

  ReadingNoise(long seed) {
    this.seed = seed;
  }

  /** Noise of the reading at a time [K]: the same whenever it is asked for. */
  double at(double time) {
    long number = Math.round(time / FollowedCook.PERIOD);
    SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
    double radius = Math.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
    return DEVIATION * radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
  }
}
