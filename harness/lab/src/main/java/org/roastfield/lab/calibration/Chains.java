package org.roastfield.lab.calibration;

import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.Normal;

/** Random walks of Metropolis at one temperature: every state is a particle. */
final class Chains {

  private final TemperedTarget target;
  private final Normal shape;
  private final double stretch;
  private final double temperature;
  private final RandomGenerator random;
  private Particle[] particles = {};
  private int accepted;
  private int steps;

  /**
   * @param shape of the steps
   * @param stretch of the steps, greater than 0
   */
  Chains(
      TemperedTarget target,
      Normal shape,
      double stretch,
      double temperature,
      RandomGenerator random) {
    this.target = target;
    this.shape = shape;
    this.stretch = stretch;
    this.temperature = temperature;
    this.random = random;
  }

  /** Walks from each particle, which is the first state of its chain. */
  Chains from(Particle[] first, int length) {
    particles = new Particle[first.length * length];
    int i = 0;
    for (Particle each : first) {
      Particle here = each;
      particles[i++] = here;
      for (int s = 1; s < length; s++) {
        here = next(here);
        particles[i++] = here;
      }
    }
    return this;
  }

  /** Chain after chain. */
  Particle[] particles() {
    return particles;
  }

  /** Share of steps that were accepted. */
  double acceptance() {
    return (double) accepted / steps;
  }

  private Particle next(Particle here) {
    @Nullable Particle there = target.at(shape.moved(here.coordinates(), stretch, random));
    double threshold = StrictMath.log(1 - random.nextDouble());
    steps++;
    if (there != null && threshold <= there.tempered(temperature) - here.tempered(temperature)) {
      accepted++;
      return there;
    }
    return here;
  }
}
