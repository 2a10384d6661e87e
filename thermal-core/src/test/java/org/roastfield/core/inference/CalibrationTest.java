package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Calibration of a model that is linear in its coordinates, where everything is known. */
class CalibrationTest {

  private static final int N = 120;
  private static final double STEP = 300;
  private static final double[] TIMES = new double[N];

  static {
    for (int k = 0; k < N; k++) {
      TIMES[k] = STEP * k;
    }
  }

  private static final ParameterSet PARAMETERS =
      ParameterSet.of(
          Parameter.multiplier("rate", Owner.COOKER, 0.3, 0.01, 100, "made up"),
          Parameter.offset("start", "K", Owner.CUT, 1.5, -40, 40, "made up"),
          Parameter.offset("unseen", "K", Owner.PROBE, 2, -40, 40, "made up"));
  private static final Prior PRIOR = Prior.of(PARAMETERS);

  /** Rises by the first, shifts by the second, knows nothing of the third. */
  private static boolean linear(double[] z, double[] predicted, double @Nullable [][] derivatives) {
    for (int k = 0; k < N; k++) {
      predicted[k] = 40 * z[0] * k / N + z[1];
      if (derivatives != null) {
        derivatives[0][k] = 40.0 * k / N;
        derivatives[1][k] = 1;
        derivatives[2][k] = 0;
      }
    }
    return true;
  }

  /** What a cook with true coordinates would log. */
  static double[] logged(double[] truth, ErrorModel errors, SplittableRandom random) {
    double[] values = new double[N];
    linear(truth, values, null);
    double drift = 0;
    double memory = Math.exp(-STEP / errors.driftTime());
    for (int k = 0; k < N; k++) {
      double share = k == 0 ? 1 : Math.sqrt(1 - memory * memory);
      drift = memory * drift + errors.driftSpread() * share * StudentProposal.normal(random);
      values[k] += drift + errors.noise() * StudentProposal.normal(random);
    }
    return values;
  }

  private static Calibration calibration(double[] values) {
    Series series = Series.of("core", TIMES, values, ErrorModel.CORE);
    return Calibration.of(PRIOR, new Evidence(List.of(series), List.of()), CalibrationTest::linear);
  }

  private static double[] drawn(SplittableRandom random) {
    double[] truth = PRIOR.mean();
    for (int p = 0; p < truth.length; p++) {
      truth[p] += PRIOR.spread(p) * StudentProposal.normal(random);
    }
    return truth;
  }

  @Test
  void estimate_isGeneralisedLeastSquares() {
    SplittableRandom random = new SplittableRandom(3);
    double[] values = logged(drawn(random), ErrorModel.CORE, random);
    MapEstimate estimate = calibration(values).map();
    RealMatrix information = new Array2DRowRealMatrix(3, 3);
    double[] right = new double[3];
    double[][] rows = new double[3][N];
    linear(new double[3], new double[N], rows);
    double[][] white = new double[3][N];
    double[] whiteValues = new double[N];
    double[] weights = new double[N];
    for (int k = 0; k < N; k++) {
      weights[k] = estimate.weight(0, k);
    }
    // The errors after the last sweep, not those of the last search: settled to 0.01 nat.
    Whitening whitening = new Whitening(TIMES, estimate.errors(0), weights);
    whitening.apply(values, 0, whiteValues, 0);
    for (int p = 0; p < 3; p++) {
      whitening.apply(rows[p], 0, white[p], 0);
    }
    for (int p = 0; p < 3; p++) {
      for (int q = 0; q < 3; q++) {
        information.setEntry(p, q, dot(white[p], white[q]));
      }
      information.addToEntry(p, p, 1 / (PRIOR.spread(p) * PRIOR.spread(p)));
      right[p] = dot(white[p], whiteValues);
    }
    RealMatrix covariance = new LUDecomposition(information).getSolver().getInverse();
    double[] expected = covariance.operate(right);
    for (int p = 0; p < 3; p++) {
      double spread = Math.sqrt(covariance.getEntry(p, p));
      assertEquals(expected[p], estimate.coordinates()[p], 0.05 * spread, "coordinate " + p);
      assertTrue(estimate.spread(p) >= (1 - 1e-9) * spread, "spread " + p);
    }
  }

  @Test
  void unseenParameter_keepsItsPrior() {
    SplittableRandom random = new SplittableRandom(5);
    MapEstimate estimate = calibration(logged(drawn(random), ErrorModel.CORE, random)).map(5);
    assertEquals(0, estimate.coordinates()[2], 0.05 * PRIOR.spread(2));
    assertEquals(0, estimate.contraction(2), 1e-9);
    assertTrue(estimate.contraction(0) > 0.9, () -> "was " + estimate.contraction(0));
    assertEquals(1, estimate.agreement());
    List<MapEstimate.Direction> directions = estimate.directions();
    assertEquals(0, directions.get(2).information(), 1e-9);
    assertEquals(PRIOR.spread(2), Math.abs(directions.get(2).move(2)), 1e-9);
  }

  @Test
  void intervals_holdTheTruthAsOftenAsTheySay() {
    int cooks = 400;
    SplittableRandom random = new SplittableRandom(11);
    int[] inside = new int[2];
    double[] sum = new double[2];
    double[] squares = new double[2];
    for (int c = 0; c < cooks; c++) {
      double[] truth = drawn(random);
      ErrorModel errors =
          ErrorModel.CORE.scaled(
              Math.exp(0.5 * StudentProposal.normal(random)),
              Math.exp(0.5 * StudentProposal.normal(random)),
              Math.exp(0.3 * StudentProposal.normal(random)));
      MapEstimate estimate = calibration(logged(truth, errors, random)).map();
      for (int p = 0; p < 2; p++) {
        double error = (estimate.mean()[p] - truth[p]) / estimate.spread(p);
        sum[p] += error;
        squares[p] += error * error;
        inside[p] += Math.abs(error) < 1.6449 ? 1 : 0;
      }
    }
    for (int p = 0; p < 2; p++) {
      assertEquals(0.9, (double) inside[p] / cooks, 0.04, "coverage of " + p);
      assertEquals(0, sum[p] / cooks, 0.15, "bias of " + p);
      assertEquals(1, Math.sqrt(squares[p] / cooks), 0.1, "standardised error of " + p);
    }
  }

  @Test
  void readingsThatStandOut_countLess() {
    SplittableRandom random = new SplittableRandom(13);
    double[] values = logged(new double[] {0.2, 0.5, 0}, ErrorModel.CORE, random);
    MapEstimate clean = calibration(values).map();
    long inFull = IntStream.range(0, N).filter(k -> clean.weight(0, k) == 1).count();
    // One in 370 of normal readings stands out: of 120 more than three do once in 3000 logs.
    assertTrue(inFull >= N - 3, () -> inFull + " readings count in full");
    values[60] += 30;
    MapEstimate spoiled = calibration(values).map();
    assertTrue(spoiled.weight(0, 60) < 0.01, () -> "was " + spoiled.weight(0, 60));
    for (int p = 0; p < 2; p++) {
      assertEquals(clean.coordinates()[p], spoiled.coordinates()[p], 0.2 * clean.spread(p));
    }
  }

  @Test
  void singleReadings_enterWithTheirOwnSpread() {
    Evidence evidence = new Evidence(List.of(), List.of(new SingleReading("start", 3, 0.5, 0.1)));
    MapEstimate estimate =
        Calibration.of(
                PRIOR,
                evidence,
                (z, predicted, derivatives) -> {
                  predicted[0] = z[1];
                  if (derivatives != null) {
                    derivatives[0][0] = 0;
                    derivatives[1][0] = 1;
                    derivatives[2][0] = 0;
                  }
                  return true;
                })
            .map();
    double variance = 0.25 + 0.01 / 12;
    double share = 2.25 / (2.25 + variance);
    // Within what a search to 1e-3 nat may leave.
    assertEquals(3 * share, estimate.coordinates()[1], 0.05 * estimate.spread(1));
    assertEquals(Math.sqrt(2.25 * (1 - share)), estimate.spread(1), 2e-2 * estimate.spread(1));
  }

  @Test
  void modelThatFails_isAnOutcome() {
    Series series = Series.of("core", new double[] {0}, new double[] {1}, ErrorModel.CORE);
    MapEstimate estimate =
        Calibration.of(
                PRIOR, new Evidence(List.of(series), List.of()), (z, predicted, none) -> false)
            .map(3);
    assertFalse(estimate.isFound());
    assertEquals(LeastSquaresResult.Status.MODEL_FAILED, estimate.status());
  }

  @Test
  void importanceDraws_agreeWithTheNormalApproximation() {
    SplittableRandom random = new SplittableRandom(17);
    double[] values = logged(drawn(random), ErrorModel.CORE, random);
    Calibration calibration = calibration(values);
    MapEstimate estimate = calibration.map();
    WeightedDraws draws =
        ImportanceSampler.of(3, 1000)
            .sample(estimate, calibration.density(estimate), new SplittableRandom(19));
    assertTrue(draws.isReliable(), () -> "tail shape " + draws.tailShape());
    double[] mean = draws.mean();
    List<Double> ratios = new ArrayList<>();
    for (int p = 0; p < 3; p++) {
      assertEquals(estimate.mean()[p], mean[p], 0.2 * estimate.spread(p));
      ratios.add(Math.sqrt(draws.covariance()[p][p]) / estimate.spread(p));
    }
    for (double ratio : ratios) {
      assertEquals(1, ratio, 0.1, ratios::toString);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
