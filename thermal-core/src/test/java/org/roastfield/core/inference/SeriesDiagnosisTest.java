package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Diagnostics of a logged trace whose errors drift. */
class SeriesDiagnosisTest {

  private static final int N = 160;
  private static final double STEP = 180;
  private static final double[] TIMES = new double[N];

  static {
    for (int k = 0; k < N; k++) {
      TIMES[k] = STEP * k;
    }
  }

  private static final Prior PRIOR =
      Prior.of(
          ParameterSet.of(
              Parameter.multiplier("rate", Owner.COOKER, 0.1, 0.5, 2, "made up"),
              Parameter.offset("start", "K", Owner.CUT, 1.5, -10, 10, "made up")));

  private static boolean model(double[] z, double[] predicted, double @Nullable [][] derivatives) {
    for (int k = 0; k < N; k++) {
      double rise = 50.0 * k / N;
      predicted[k] = rise * Math.exp(z[0]) + z[1];
      if (derivatives != null) {
        derivatives[0][k] = rise * Math.exp(z[0]);
        derivatives[1][k] = 1;
      }
    }
    return true;
  }

  private static double[] logged(double rate, double start, SplittableRandom random) {
    ErrorModel errors = ErrorModel.CORE;
    double[] values = new double[N];
    assertTrue(model(new double[] {rate, start}, values, null));
    double memory = Math.exp(-STEP / errors.driftTime());
    double drift = 0;
    for (int k = 0; k < N; k++) {
      double share = k == 0 ? 1 : Math.sqrt(1 - memory * memory);
      drift = memory * drift + errors.driftSpread() * share * StudentProposal.normal(random);
      values[k] += drift + errors.noise() * StudentProposal.normal(random);
    }
    return values;
  }

  private static Calibration calibration(double[] values) {
    Series series = Series.of("core", TIMES, values, ErrorModel.CORE);
    return Calibration.of(
        PRIOR, new Evidence(List.of(series), List.of()), SeriesDiagnosisTest::model);
  }

  @Test
  void goodLogs_areSeldomDoubted() {
    SplittableRandom random = new SplittableRandom(41);
    int logs = 300;
    int conflicts = 0;
    int strained = 0;
    int correlated = 0;
    for (int log = 0; log < logs; log++) {
      double rate = 0.1 * StudentProposal.normal(random);
      double start = 1.5 * StudentProposal.normal(random);
      Calibration calibration = calibration(logged(rate, start, random));
      Diagnosis diagnosis = Diagnosis.of(FirstOrder.of(calibration, calibration.map()));
      conflicts += diagnosis.conflict().chance() < Diagnosis.LEAST_CHANCE ? 1 : 0;
      strained += diagnosis.series().get(0).isStrained() ? 1 : 0;
      correlated +=
          diagnosis.series().get(0).whiteness().chanceOfCorrelation() < Diagnosis.LEAST_CHANCE
              ? 1
              : 0;
    }
    // One in a hundred of each; a binomial of 300 exceeds 9 once in 800.
    assertTrue(conflicts <= 9, "conflicts " + conflicts);
    assertTrue(strained <= 9, "strained " + strained);
    assertTrue(correlated <= 9, "correlated " + correlated);
  }

  @Test
  void rateBeyondItsPrior_isAConflict() {
    Calibration calibration = calibration(logged(0.5, 0, new SplittableRandom(43)));
    MapEstimate estimate = calibration.map();
    Diagnosis diagnosis = Diagnosis.of(FirstOrder.of(calibration, estimate));
    assertTrue(diagnosis.isDoubtful(), () -> diagnosis.conflict() + " " + diagnosis.series());
    assertFalse(diagnosis.correlated(0).isEmpty());
    assertEquals(
        Math.abs(estimate.correlation(0, 1)),
        Math.abs(diagnosis.correlated(0).get(0).correlation()));
  }

  @Test
  void bendThatTheModelCannotMake_strainsTheErrors() {
    double[] values = logged(0, 0, new SplittableRandom(47));
    for (int k = N / 3; k < N; k++) {
      values[k] -= 20 * Math.sin(Math.PI * (k - N / 3) / (2.0 * N / 3));
    }
    Calibration calibration = calibration(values);
    Diagnosis diagnosis = Diagnosis.of(FirstOrder.of(calibration, calibration.map()));
    Diagnosis.SeriesCheck check = diagnosis.series().get(0);
    assertTrue(check.isStrained(), check::toString);
    assertTrue(check.strain().drift() > 1.5, check::toString);
    assertTrue(diagnosis.isDoubtful());
  }

  @Test
  void readingsThatStandOut_areCounted() {
    double[] values = logged(0, 0, new SplittableRandom(53));
    for (int k = 5; k < N; k += 20) {
      values[k] += 12;
    }
    Calibration calibration = calibration(values);
    Diagnosis diagnosis = Diagnosis.of(FirstOrder.of(calibration, calibration.map()));
    assertEquals(8.0 / N, diagnosis.series().get(0).outlying(), 1.0 / N);
  }

  @Test
  void coordinateAtABound_isListed() {
    Calibration calibration = calibration(logged(Math.log(2.5), 0, new SplittableRandom(59)));
    assertEquals(
        List.of(0), Diagnosis.of(FirstOrder.of(calibration, calibration.map())).atBounds());
    Calibration within = calibration(logged(0, 0, new SplittableRandom(59)));
    assertEquals(List.of(), Diagnosis.of(FirstOrder.of(within, within.map())).atBounds());
  }

  @Test
  void nothingFound_isNotDiagnosed() {
    Calibration failing =
        Calibration.of(
            PRIOR, calibration(new double[N]).evidence(), (z, predicted, derivatives) -> false);
    MapEstimate none = failing.map();
    assertThrows(IllegalArgumentException.class, () -> Diagnosis.of(FirstOrder.of(failing, none)));
    assertEquals(Double.NEGATIVE_INFINITY, none.logEvidence());
  }

  @Test
  void influenceOfALog_isItsRefit() {
    // Two logs of one cooker; the second says another rate.
    SplittableRandom random = new SplittableRandom(61);
    Series first = Series.of("first", TIMES, logged(0.05, 0, random), ErrorModel.CORE);
    Series second = Series.of("second", TIMES, logged(-0.1, 0, random), ErrorModel.CORE);
    ForwardModel both =
        (z, predicted, derivatives) -> {
          double[] one = new double[N];
          double[][] rows = new double[2][N];
          boolean computed = model(z, one, rows);
          for (int k = 0; k < N; k++) {
            predicted[k] = one[k];
            predicted[N + k] = one[k];
            for (int p = 0; derivatives != null && p < 2; p++) {
              derivatives[p][k] = rows[p][k];
              derivatives[p][N + k] = rows[p][k];
            }
          }
          return computed;
        };
    Calibration joint =
        Calibration.of(PRIOR, new Evidence(List.of(first, second), List.of()), both);
    MapEstimate estimate = joint.map();
    Influence influence = Influence.of(FirstOrder.of(joint, estimate), EvidencePart.ofSeries(1));
    Calibration alone =
        Calibration.of(PRIOR, new Evidence(List.of(first), List.of()), SeriesDiagnosisTest::model);
    MapEstimate refit = alone.map();
    double moved = refit.coordinates()[0] - estimate.coordinates()[0];
    // Errors are found anew in the refit: within a third of its spread, and the same way.
    assertEquals(moved, influence.move(0), refit.spread(0) / 3);
    assertTrue(influence.move(0) > 0 && moved > 0);
    assertTrue(influence.distance(0) > 0.5, () -> "distance " + influence.distance(0));
  }
}
