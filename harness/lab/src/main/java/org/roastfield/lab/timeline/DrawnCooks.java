package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.Cancellation;
import org.roastfield.core.ensemble.EnsembleReadings;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CutOutcomes;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;

/**
 * The cook of a file many times over, its unknown numbers drawn from what is believed of them
 * before a log is seen. A member's draws depend on the seed and its own number alone.
 */
public final class DrawnCooks {

  /** Odd, and far from any number of members: seeds and members do not meet. */
  private static final long STREAMS = 0x9E3779B97F4A7C15L;

  private static final Prior HOLDING = Prior.of(WaterHolding.parameters());

  private final CookFile file;
  private final VariedCook cooks;
  private final Prior prior;
  private final long seed;

  private DrawnCooks(CookFile file, long seed) {
    this.file = file;
    this.cooks = VariedCook.planned(file).withStrayingAir();
    this.prior = Prior.of(cooks.parameters());
    this.seed = seed;
  }

  /**
   * Computes the spread of a cook's outcomes.
   *
   * @param computed the cook as stated
   * @param members how many cooks, at least 1
   * @throws IllegalStateException if none of them can be computed
   */
  public static Spread spread(ComputedCook computed, int members, long seed) {
    DrawnCooks drawn = new DrawnCooks(computed.file(), seed);
    EnsembleReadings<CutOutcomes> readings =
        drawn.read(EnsembleSimulator.with(computed.result().settings()), members);
    List<CutOutcomes> outcomes = new ArrayList<>();
    for (int i = 0; i < members; i++) {
      readings.reading(i).ifPresent(outcomes::add);
    }
    if (outcomes.isEmpty()) {
      throw new IllegalStateException(
          "none of "
              + members
              + " drawn cooks could be computed; the first: "
              + readings.message(0));
    }
    return Spread.of(computed.file().food(), computed.inside(), members, seed, outcomes);
  }

  private EnsembleReadings<CutOutcomes> read(EnsembleSimulator simulator, int members) {
    int workers = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(workers);
    try {
      return simulator.readEach(
          members, this::cook, this::outcomes, pool, workers, new Cancellation());
    } finally {
      pool.shutdown();
    }
  }

  /** Outcomes with what its meat presses out drawn too. */
  private CutOutcomes outcomes(int member, SimulationResult result) {
    double[] drawn = HOLDING.draw(random(2L * member + 1));
    WaterHolding holding = WaterHolding.of(HOLDING.parameters().values(drawn));
    return Inside.outcomes(file, CookedCut.of(result), result)
        .withJuice(Inside.juice(file, result, file.moisture().held(holding)));
  }

  private Cook cook(int member) {
    return cooks.apply(prior.parameters().point(prior.draw(random(2L * member))));
  }

  private SplittableRandom random(long stream) {
    return new SplittableRandom(seed * STREAMS + stream);
  }
}
