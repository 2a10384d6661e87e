package org.roastfield.lab.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.WeightedDraws;

/** The library's posteriors against reference draws, and against truths. */
class CoreCalibrationTest {

  private static final int LOGS = 3;

  @Test
  void importanceDraws_agreeWithReferenceDraws() {
    for (int log = 0; log < LOGS; log++) {
      SplittableRandom random = new SplittableRandom(60 + log);
      WarmingStudy study = new WarmingStudy(ImportanceSampler.standard());
      WarmingStudy.Logged logged = study.data(study.truth(random), random);
      var density = logged.calibration().density(logged.estimate());
      WeightedDraws weighted =
          ImportanceSampler.of(3, 1000).sample(logged.estimate(), density, random);
      assertTrue(weighted.isReliable(), () -> "tail shape " + weighted.tailShape());
      ReferenceDraws reference =
          TemperedSampler.of(64, 16).withLastLength(64).sample(WarmingStudy.PRIOR, density, random);
      for (int p = 0; p < WarmingStudy.PRIOR.size(); p++) {
        assertAgreement(weighted, reference, p);
      }
    }
  }

  private static void assertAgreement(WeightedDraws weighted, ReferenceDraws reference, int p) {
    double mean = weighted.mean()[p];
    double spread = Math.sqrt(weighted.covariance()[p][p]);
    double size = weighted.effectiveSize();
    double error = Math.hypot(reference.standardError(z -> z[p]), spread / Math.sqrt(size));
    assertTrue(error < 0.1 * spread, () -> "error of a mean " + error / spread);
    assertEquals(mean, reference.mean(z -> z[p]), 4 * error, "mean of " + p);
    double square = spread * spread;
    double squareError =
        Math.hypot(
            reference.standardError(z -> Math.pow(z[p] - mean, 2)),
            // For a normal distribution.
            square * Math.sqrt(2 / size));
    assertTrue(squareError < 0.15 * square, () -> "error of a variance " + squareError / square);
    assertEquals(
        square, reference.mean(z -> Math.pow(z[p] - mean, 2)), 4 * squareError, "variance of " + p);
  }

  /**
   * That nothing of clean logs is taken for something that stands out, and that the errors which
   * nobody knows are averaged over rightly: both would show in the spreads.
   */
  @Test
  void importanceDraws_areAsWideAsTheExactPosterior() {
    int logs = 16;
    SplittableRandom random = new SplittableRandom(62);
    WarmingStudy study = new WarmingStudy(ImportanceSampler.standard());
    double[] sum = new double[WarmingStudy.PRIOR.size()];
    for (int log = 0; log < logs; log++) {
      WarmingStudy.Logged logged = study.data(study.truth(random), random);
      WeightedDraws weighted =
          ImportanceSampler.of(3, 1000)
              .sample(logged.estimate(), logged.calibration().density(logged.estimate()), random);
      ReferenceDraws exact =
          TemperedSampler.of(64, 16)
              .withLastLength(300)
              .sample(
                  ExactWarming.PRIOR,
                  ExactWarming.density(logged.calibration().evidence().series().get(0)),
                  random);
      for (int p = 0; p < sum.length; p++) {
        int coordinate = p;
        double spread = Math.sqrt(weighted.covariance()[p][p]);
        sum[p] += Math.log(spread / exact.spread(z -> z[coordinate])) / logs;
      }
    }
    // Either spread of a log is known to about 3 %, so the mean of 16 to 1 %.
    for (double each : sum) {
      assertEquals(0, each, 0.04, () -> "ln of ratios " + Arrays.toString(sum));
    }
  }

  /** Among what is ranked are quantities that depend on the data. */
  @Test
  void importanceDraws_holdTheTruthAsOftenAsTheySay() {
    RankTable table =
        SimulationBasedCalibration.of(100, 99, 61)
            .run(new WarmingStudy(ImportanceSampler.standard()));
    assertTrue(table.isCalibrated(0.01), () -> table.verdicts().toString());
  }
}
