package org.roastfield.lab.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;

/**
 * Reference draws from a posterior: sequential Monte Carlo from the prior to the posterior
 * [DelMoral2006], with every state of its chains kept [DauChopin2022]. It needs neither an estimate
 * nor a normal shape, and costs ten to a hundred times an importance sampler. Immutable.
 *
 * <p>Particles go from prior · likelihood^t at one t to the next. Each t is as large as the
 * effective size of the weights allows; some particles are then drawn by their weight, and from
 * each a random walk at the new t gives a chain of particles. The walk's steps follow the
 * particles' covariance, and are lengthened or shortened by the share that was accepted before.
 */
public final class TemperedSampler {

  /**
   * Step of a random walk over the spread times √coordinates that forgets fastest on a normal
   * distribution of many coordinates: literature [Roberts1997].
   */
  private static final double STEP = 2.38;

  /**
   * Share of steps to accept: above the best for many coordinates, 0.234 [Roberts1997], since there
   * are few; assumed.
   */
  private static final double ACCEPTED = 0.3;

  /** More temperatures mean that the particles never spread; assumed. */
  private static final int MOST_TEMPERATURES = 1000;

  /** More draws than this for a particle with a density mean a wrong prior or model; assumed. */
  private static final int MOST_TRIES = 1000;

  private final int chains;
  private final int length;
  private final int lastLength;
  private final double effectiveShare;

  private TemperedSampler(int chains, int length, int lastLength, double effectiveShare) {
    this.chains = chains;
    this.length = length;
    this.lastLength = lastLength;
    this.effectiveShare = effectiveShare;
  }

  /** 64 chains of 16 states at each temperature, 64 of 256 at the last. */
  public static TemperedSampler standard() {
    return of(64, 16).withLastLength(256);
  }

  /**
   * Other numbers; the last chains are as long as the others, and the effective size is half.
   *
   * @param chains at each temperature, at least 10: errors are told from their differences
   * @param length states of each chain, at least 2
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public static TemperedSampler of(int chains, int length) {
    return new TemperedSampler(
        Numbers.inRange("chains", chains, 10, 1_000_000),
        Numbers.inRange("length", length, 2, 1_000_000),
        length,
        0.5);
  }

  /**
   * The same with longer or shorter chains at the posterior itself.
   *
   * @param states at least 2
   */
  public TemperedSampler withLastLength(int states) {
    return new TemperedSampler(
        chains, length, Numbers.inRange("lastLength", states, 2, 10_000_000), effectiveShare);
  }

  /**
   * The same with smaller or larger steps of temperature.
   *
   * @param share effective size of the particles over their number, in [0.05, 0.99]
   */
  public TemperedSampler withEffectiveShare(double share) {
    return new TemperedSampler(
        chains, length, lastLength, Numbers.inRange("effectiveShare", share, 0.05, 0.99));
  }

  /**
   * Draws from a posterior.
   *
   * @param prior from which the first particles are drawn, within its bounds
   * @param density of the posterior with the prior in it, up to a constant; never asked beyond the
   *     bounds
   * @throws IllegalArgumentException if the density is not a number or infinite
   * @throws IllegalStateException if nearly no draw of the prior has a density, or the particles
   *     fall together or do not reach the posterior
   */
  public ReferenceDraws sample(Prior prior, LogDensity density, RandomGenerator random) {
    TemperedTarget target = new TemperedTarget(prior, density);
    Particle[] particles = new Particle[chains * length];
    double logEvidence = StrictMath.log(fill(particles, target, random));
    List<Double> temperatures = new ArrayList<>();
    double stretch = STEP / Math.sqrt(prior.size());
    double temperature = 0;
    while (temperature < 1) {
      Reweighting weighed = new Reweighting(particles, temperature, effectiveShare);
      temperature = weighed.temperature();
      logEvidence += weighed.logMeanWeight();
      temperatures.add(temperature);
      if (temperatures.size() > MOST_TEMPERATURES) {
        throw new IllegalStateException(
            "the posterior was not reached in " + MOST_TEMPERATURES + " temperatures");
      }
      Chains moved =
          new Chains(target, weighed.shape(), stretch, temperature, random)
              .from(weighed.resampled(chains, random), temperature < 1 ? length : lastLength);
      particles = moved.particles();
      stretch *= StrictMath.exp(moved.acceptance() - ACCEPTED);
    }
    return new ReferenceDraws(particles, chains, temperatures, logEvidence, target.evaluations());
  }

  /** Fills with draws of the prior that have a density; returns the share of draws that do. */
  private static double fill(Particle[] particles, TemperedTarget target, RandomGenerator random) {
    int tries = 0;
    for (int i = 0; i < particles.length; i++) {
      Particle drawn = null;
      while (drawn == null) {
        if (++tries > MOST_TRIES * particles.length) {
          throw new IllegalStateException(
              "of " + MOST_TRIES + " draws of the prior fewer than one has a density");
        }
        drawn = target.draw(random);
      }
      particles[i] = drawn;
    }
    return (double) particles.length / tries;
  }
}
