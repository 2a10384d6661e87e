package org.roastfield.lab.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Whether posteriors are calibrated [Talts2018]: if truths come from the prior and data from the
 * truths, the rank of a truth among draws of its posterior is uniform, whatever the quantity.
 * Immutable.
 */
public final class SimulationBasedCalibration {

  private static final String GENERATOR = "L64X128MixRandom";

  /** Odd, and far from a multiple of a power of two: seeds of neighbours share no pattern. */
  private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

  private final int simulations;
  private final int draws;
  private final long seed;

  private SimulationBasedCalibration(int simulations, int draws, long seed) {
    this.simulations = simulations;
    this.draws = draws;
    this.seed = seed;
  }

  /** 500 simulations with 99 draws each. */
  public static SimulationBasedCalibration standard(long seed) {
    return of(500, 99, seed);
  }

  /**
   * Other numbers.
   *
   * @param simulations at least 100: five for each bin of ranks
   * @param draws of each posterior: 19, 39, 59, … so that ranks fill {@link RankTable#BINS} bins
   *     evenly
   * @throws IllegalArgumentException if a number is none of these
   */
  public static SimulationBasedCalibration of(int simulations, int draws, long seed) {
    Numbers.inRange("simulations", simulations, 5 * RankTable.BINS, 1_000_000);
    Numbers.inRange("draws", draws, RankTable.BINS - 1, 1_000_000);
    if ((draws + 1) % RankTable.BINS != 0) {
      throw new IllegalArgumentException(
          "draws must be one less than a multiple of " + RankTable.BINS + ", was " + draws);
    }
    return new SimulationBasedCalibration(simulations, draws, seed);
  }

  /** Simulates, infers and ranks, one simulation after another. */
  public <D> RankTable run(SimulatedStudy<D> study) {
    List<Optional<double[]>> ranks = new ArrayList<>();
    for (int s = 0; s < simulations; s++) {
      ranks.add(ranks(study, s));
    }
    return RankTable.of(study.names(), ranks);
  }

  /**
   * Ranks of one simulation over the number of ranks, the same in whatever order simulations are
   * done: a caller may spread them over threads and gather them in a {@link RankTable}.
   *
   * @param simulation index, from 0
   * @return for each quantity a number in [0, 1), even within its rank and among ties; empty if the
   *     inference gave up
   * @throws IllegalArgumentException if the study gives another number of draws or quantities than
   *     it should, or one that is not a number
   */
  public <D> Optional<double[]> ranks(SimulatedStudy<D> study, int simulation) {
    Numbers.inRange("simulation", simulation, 0, simulations - 1);
    RandomGenerator random =
        RandomGeneratorFactory.of(GENERATOR).create(seed + simulation * SEED_STEP);
    double[] truth = study.truth(random);
    D data = study.data(truth, random);
    Optional<double[][]> posterior = study.posterior(data, draws, random);
    if (posterior.isEmpty()) {
      return Optional.empty();
    }
    Numbers.inRange("draws of the study", posterior.get().length, draws, draws);
    double[] expected = quantities(study, truth, data);
    int[] below = new int[expected.length];
    int[] ties = new int[expected.length];
    for (double[] draw : posterior.get()) {
      double[] drawn = quantities(study, draw, data);
      for (int q = 0; q < below.length; q++) {
        below[q] += drawn[q] < expected[q] ? 1 : 0;
        ties[q] += drawn[q] == expected[q] ? 1 : 0;
      }
    }
    double[] ranks = new double[below.length];
    for (int q = 0; q < ranks.length; q++) {
      ranks[q] = (below[q] + (ties[q] + 1) * random.nextDouble()) / (draws + 1);
    }
    return Optional.of(ranks);
  }

  private static <D> double[] quantities(SimulatedStudy<D> study, double[] coordinates, D data) {
    double[] quantities = study.quantities(coordinates, data);
    int names = study.names().size();
    Numbers.inRange("quantities of the study", quantities.length, names, names);
    for (int q = 0; q < names; q++) {
      if (Double.isNaN(quantities[q])) {
        throw new IllegalArgumentException(study.names().get(q) + " must be a number, was NaN");
      }
    }
    return quantities;
  }
}
