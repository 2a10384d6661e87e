package org.roastfield.lab.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class SimulationBasedCalibrationTest {

  private static final double LEVEL = 0.01;

  /** The linear study with another posterior. */
  private record Other(Posterior posterior, BinaryOperator<double[]> ranked)
      implements SimulatedStudy<double[]> {

    private interface Posterior {
      Optional<double[][]> draws(double[] y, int count, RandomGenerator random);
    }

    private static final LinearStudy LINEAR = new LinearStudy(1, 0);

    Other(Posterior posterior) {
      this(posterior, LINEAR::quantities);
    }

    @Override
    public double[] truth(RandomGenerator random) {
      return LINEAR.truth(random);
    }

    @Override
    public double[] data(double[] truth, RandomGenerator random) {
      return LINEAR.data(truth, random);
    }

    @Override
    public Optional<double[][]> posterior(double[] y, int count, RandomGenerator random) {
      return posterior.draws(y, count, random);
    }

    @Override
    public List<String> names() {
      return LINEAR.names();
    }

    @Override
    public double[] quantities(double[] z, double[] y) {
      return ranked.apply(z, y);
    }
  }

  private static RankTable run(double stretch, double shift) {
    return SimulationBasedCalibration.standard(41).run(new LinearStudy(stretch, shift));
  }

  @Test
  void exactPosterior_passes() {
    RankTable table = run(1, 0);
    assertTrue(table.isCalibrated(LEVEL), () -> table.verdicts().toString());
    assertEquals(500, table.size());
    for (RankVerdict verdict : table.verdicts()) {
      // Four standard errors of 500 uniform numbers.
      assertEquals(0.5, verdict.mean(), 4 / Math.sqrt(12 * 500));
      assertEquals(1, verdict.spread(), 4 * Math.sqrt(0.8 / 500));
    }
  }

  @Test
  void narrowPosterior_isFoundAndNamed() {
    RankTable table = run(0.7, 0);
    assertFalse(table.isCalibrated(LEVEL));
    RankVerdict level = table.verdicts().get(0);
    assertTrue(level.together() < LEVEL, level::toString);
    assertTrue(level.spread() > 1.2, level::toString);
    assertEquals(0.5, level.mean(), 4 / Math.sqrt(12 * 500));
  }

  @Test
  void widePosterior_isFoundAndNamed() {
    RankTable table = run(1.35, 0);
    assertFalse(table.isCalibrated(LEVEL));
    assertTrue(table.verdicts().get(0).spread() < 0.8);
  }

  @Test
  void shiftedPosterior_isFoundInWhatItConcerns() {
    RankTable table = run(1, -0.3);
    assertFalse(table.isCalibrated(LEVEL));
    assertTrue(table.verdicts().get(0).mean() > 0.55);
    RankVerdict slope = table.verdicts().get(1);
    assertTrue(slope.together() > LEVEL, slope::toString);
  }

  @Test
  void priorInsteadOfThePosterior_isFoundByTheLikelihoodAlone() {
    LinearStudy linear = new LinearStudy(1, 0);
    Other lazy =
        new Other(
            (y, count, random) -> {
              double[][] draws = new double[count][];
              for (int i = 0; i < count; i++) {
                draws[i] = linear.truth(random);
              }
              return Optional.of(draws);
            });
    List<RankVerdict> verdicts = SimulationBasedCalibration.standard(42).run(lazy).verdicts();
    for (RankVerdict verdict : verdicts) {
      boolean found = verdict.together() < LEVEL;
      assertEquals(verdict.quantity().equals("log-likelihood"), found, verdict::toString);
    }
  }

  @Test
  void temperedDraws_pass() {
    TemperedSampler sampler = TemperedSampler.of(33, 12).withLastLength(30);
    Other tempered =
        new Other(
            (y, count, random) ->
                Optional.of(
                    sampler
                        .sample(
                            Densities.wide(LinearStudy.SPREAD),
                            z ->
                                Densities.logPrior(LinearStudy.SPREAD, z)
                                    + LinearStudy.logLikelihood(z, y),
                            random)
                        .evenly(count)));
    RankTable table = SimulationBasedCalibration.of(200, 99, 43).run(tempered);
    assertTrue(table.isCalibrated(LEVEL), () -> table.verdicts().toString());
  }

  @Test
  void inferenceThatGivesUp_isNotCalledCalibrated() {
    LinearStudy linear = new LinearStudy(1, 0);
    Other moody =
        new Other(
            (y, count, random) -> y[0] > 5 ? Optional.empty() : linear.posterior(y, count, random));
    RankTable table = SimulationBasedCalibration.standard(44).run(moody);
    assertFalse(table.failed().isEmpty());
    assertEquals(500, table.size() + table.failed().size());
    assertFalse(table.isCalibrated(LEVEL));
  }

  @Test
  void ranks_areTheSameInAnyOrder() {
    SimulationBasedCalibration calibration = SimulationBasedCalibration.of(100, 19, 45);
    LinearStudy study = new LinearStudy(1, 0);
    double[] late = calibration.ranks(study, 60).orElseThrow();
    double[] early = calibration.ranks(study, 3).orElseThrow();
    assertArrayEquals(late, calibration.ranks(study, 60).orElseThrow());
    assertTrue(early[0] != late[0]);
  }

  @Test
  void ties_areSpreadEvenly() {
    SimulatedStudy<double[]> constant =
        new Other(
            (y, count, random) -> {
              double[][] draws = new double[count][];
              Arrays.fill(draws, new double[2]);
              return Optional.of(draws);
            },
            (z, y) -> new double[] {0, 1, 2, 3});
    RankTable table = SimulationBasedCalibration.standard(46).run(constant);
    assertTrue(table.isCalibrated(LEVEL), () -> table.verdicts().toString());
  }

  @Test
  void numbersThatDoNotFillTheBins_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> SimulationBasedCalibration.of(500, 100, 1));
    assertThrows(IllegalArgumentException.class, () -> SimulationBasedCalibration.of(99, 99, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> SimulationBasedCalibration.of(100, 99, 1).ranks(new LinearStudy(1, 0), 100));
  }

  @Test
  void studyThatBreaksItsWord_isRefused() {
    Other tooFew = new Other((y, count, random) -> Optional.of(new double[count - 1][2]));
    assertThrows(
        IllegalArgumentException.class,
        () -> SimulationBasedCalibration.of(100, 99, 1).ranks(tooFew, 0));
    Other spoiled =
        new Other(
            (y, count, random) -> {
              double[][] draws = new double[count][2];
              draws[5][0] = Double.NaN;
              return Optional.of(draws);
            });
    assertThrows(
        IllegalArgumentException.class,
        () -> SimulationBasedCalibration.of(100, 99, 1).ranks(spoiled, 0));
  }

  @Test
  void seeds_giveDifferentSimulations() {
    LinearStudy study = new LinearStudy(1, 0);
    assertTrue(
        SimulationBasedCalibration.of(100, 19, 1).ranks(study, 0).orElseThrow()[0]
            != SimulationBasedCalibration.of(100, 19, 2).ranks(study, 0).orElseThrow()[0]);
  }
}
