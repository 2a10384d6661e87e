package org.roastfield.lab.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.LogDensity;

class ReferencePosteriorTest {

  private static ReferencePosterior runs(TemperedSampler sampler, LogDensity density) {
    return ReferencePosterior.of(8, sampler, Densities.wide(5), density, new SplittableRandom(71));
  }

  /** Two peaks of spread 0.01 in both coordinates, at ±4 of the first. */
  private static double needles(double[] z) {
    double away = Math.abs(z[0]) - 4;
    return -0.5 * (away * away + z[1] * z[1]) / 1e-4;
  }

  @Test
  void longRuns_agree() {
    ReferencePosterior posterior = runs(TemperedSampler.standard(), Densities::normal);
    assertTrue(posterior.isConverged(), () -> "was " + posterior.scaleReduction(z -> z[0]));
    double error = posterior.standardError(z -> z[0]);
    assertTrue(error < 0.03, () -> "standard error " + error);
    // Of eight runs: Student's distribution with seven degrees of freedom, 1 in 1000.
    assertEquals(1, posterior.mean(z -> z[0]), 5.4 * error);
  }

  /**
   * Far narrower than the particles are many: each run ends on the peak that it happened to see.
   */
  @Test
  void runsThatLosePeaks_areFoundOut() {
    ReferencePosterior posterior =
        runs(TemperedSampler.of(20, 10), ReferencePosteriorTest::needles);
    assertFalse(posterior.isConverged());
    for (ReferenceDraws run : posterior.runs()) {
      assertEquals(4, run.mean(z -> Math.abs(z[0])), 0.1);
    }
  }

  @Test
  void shortRuns_areNotCalledConverged() {
    ReferencePosterior posterior = runs(TemperedSampler.of(10, 4), Densities::bent);
    assertFalse(posterior.isConverged(), () -> "was " + posterior.scaleReduction(z -> z[1]));
  }

  @Test
  void scaleReduction_knowsItsLimits() {
    ReferencePosterior posterior = runs(TemperedSampler.of(10, 4), Densities::bent);
    assertEquals(1, posterior.scaleReduction(z -> 7));
    assertEquals(32, posterior.evenly(4).length);
  }

  @Test
  void particlesThatFallTogether_areToldApart() {
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () -> runs(TemperedSampler.of(10, 2), ReferencePosteriorTest::needles));
    assertTrue(String.valueOf(thrown.getMessage()).contains("more or longer chains"));
  }

  @Test
  void oneRun_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            ReferencePosterior.of(
                1,
                TemperedSampler.of(10, 4),
                Densities.wide(5),
                Densities::bent,
                new SplittableRandom(1)));
  }
}
