package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.WeightedDraws;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.calibration.RankTable;
import org.roastfield.lab.calibration.RankVerdict;
import org.roastfield.lab.calibration.SimulatedStudy;
import org.roastfield.lab.calibration.SimulationBasedCalibration;
import org.roastfield.lab.synthetic.Noise;

/** Whether the ranks of truths among importance draws are even. */
final class RankStudy implements Study {

  private static final int DRAWS = 99;

  /** The part of a log that is seen [s]. */
  private static final double SEEN = 5400;

  private static final double HOUR = 3600;
  private static final double LEVEL = 0.01;

  @Override
  public String name() {
    return "ranks";
  }

  @Override
  public String question() {
    return "Are true numbers anywhere among the draws of their posteriors, equally often?";
  }

  @Override
  public int cases(Size size) {
    return size == Size.FULL ? 500 : 100;
  }

  @Override
  public Findings run(int cases, long seed, IntConsumer done) {
    SimulationBasedCalibration calibration = SimulationBasedCalibration.of(cases, DRAWS, seed);
    Loins study = new Loins();
    List<Optional<double[]>> ranks = new ArrayList<>();
    for (int i = 0; i < cases; i++) {
      ranks.add(calibration.ranks(study, i));
      done.accept(i + 1);
    }
    return findings(RankTable.of(study.names(), ranks), study.unreliable);
  }

  /** What a table of ranks says. */
  static Findings findings(RankTable table, int unreliable) {
    List<Bar> bars = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    for (RankVerdict verdict : table.verdicts()) {
      bars.add(
          Bar.of(
              verdict.quantity() + ": chance of ranks as uneven, by Holm",
              verdict.together(),
              LEVEL,
              1));
      remarks.add(
          String.format(
              Locale.ROOT,
              "%s: χ² %.3f, Kolmogorov-Smirnov %.3f, mean rank %.3f, spread %.2f",
              verdict.quantity(),
              verdict.chiSquared(),
              verdict.kolmogorovSmirnov(),
              verdict.mean(),
              verdict.spread()));
    }
    bars.add(Bar.of("simulations without draws", table.failed().size(), 0, 0));
    remarks.add("draws by weights whose tail is too heavy to be trusted: " + unreliable);
    return new Findings(bars, remarks);
  }

  /** A fitted log. */
  record Logged(StudyLog log, StudyLog.Fit fit) {}

  /** Loins whose first hour and a half was logged. */
  static final class Loins implements SimulatedStudy<Logged> {

    private static final ImportanceSampler SAMPLER = ImportanceSampler.of(4, 250);

    int unreliable;

    @Override
    public double[] truth(RandomGenerator random) {
      return Truths.PRIOR.draw(random);
    }

    @Override
    public Logged data(double[] truth, RandomGenerator random) {
      StudyLog log = StudyLog.of(truth, Noise.ofSeed(random.nextLong()));
      return new Logged(log, log.fitted(Truths.PRIOR, SEEN));
    }

    @Override
    public Optional<double[][]> posterior(Logged logged, int count, RandomGenerator random) {
      StudyLog.Fit fit = logged.fit();
      if (!fit.estimate().isFound()) {
        return Optional.empty();
      }
      WeightedDraws draws =
          SAMPLER.sample(fit.estimate(), fit.calibration().density(fit.estimate()), random);
      unreliable += draws.isReliable() ? 0 : 1;
      return Optional.of(draws.resampled(count, random));
    }

    @Override
    public List<String> names() {
      List<String> names = new ArrayList<>(StudyCook.IDS);
      names.addAll(List.of("log-likelihood", "time to target", "core in one hour"));
      return names;
    }

    @Override
    public double[] quantities(double[] z, Logged logged) {
      double[] quantities = Arrays.copyOf(z, z.length + 3);
      StudyLog.Fit fit = logged.fit();
      quantities[z.length] =
          fit.calibration().density(fit.estimate()).at(z) - Truths.PRIOR.logDensity(z);
      SimulationResult result = logged.log().at(z);
      quantities[z.length + 1] = StudyLog.timeToTarget(result.core());
      quantities[z.length + 2] = result.core().at(SEEN + HOUR);
      return quantities;
    }
  }
}
