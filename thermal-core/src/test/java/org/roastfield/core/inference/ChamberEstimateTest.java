package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.Lid;

class ChamberEstimateTest {

  private static final double LEVEL = 383;
  private static final Prior CHANCE = Prior.of(FireParameters.ofHabit());

  private static double[] times(int count, SplittableRandom random) {
    double[] times = new double[count];
    double time = 0;
    for (int k = 0; k < count; k++) {
      times[k] = time;
      time += 60 + 240 * random.nextDouble();
    }
    return times;
  }

  /** Made from the definition of the process, not by what is tested. */
  private static ChamberTrace made(
      double[] coordinates, int count, double step, Optional<Lid> lid, SplittableRandom random) {
    double[] habit = FireParameters.ofHabit().values(coordinates);
    double[] times = times(count, random);
    double[] values = new double[count];
    double drift = habit[0] * Normal.standard(random);
    for (int k = 0; k < count; k++) {
      if (k > 0) {
        double kept = StrictMath.exp((times[k - 1] - times[k]) / habit[1]);
        drift = kept * drift + habit[0] * Math.sqrt(1 - kept * kept) * Normal.standard(random);
      }
      double fallen = lid.isEmpty() ? 0 : lid.get().fallen(times[k], habit[3]);
      values[k] =
          LEVEL
              + (times[k] >= 9000 ? step : 0)
              + drift
              - habit[2] * fallen * (LEVEL - Lid.OPEN_AIR)
              + ChamberTrace.NOISE * Normal.standard(random);
    }
    return ChamberTrace.of(
        times, values, LEVEL, step == 0 ? new double[0] : new double[] {9000}, lid);
  }

  private static Optional<Lid> openings() {
    return Optional.of(new Lid(List.of(new Lid.Opening(3000, 120), new Lid.Opening(7000, 200))));
  }

  /** Air that an oven keeps strays by less than is believed of any fire: at the bound, and told. */
  @Test
  void steadyAir_settlesAtTheLeastDrift() {
    SplittableRandom random = new SplittableRandom(4);
    double[] times = new double[90];
    double[] values = new double[90];
    for (int k = 0; k < times.length; k++) {
      times[k] = 120 * k;
      values[k] = LEVEL + 0.3 * Normal.standard(random);
    }
    ChamberTrace trace = ChamberTrace.of(times, values, LEVEL, new double[0], Optional.empty());
    double[] found = ChamberEstimate.of(trace, CHANCE).coordinates();
    double least = FireParameters.DRIFT.lowest();
    assertEquals(least, found[0], 0.5);
    assertTrue(found[0] >= least, "drift " + StrictMath.exp(found[0]) + " K");
  }

  /** The determinant and the quadratic form of the full covariance matrix. */
  @Test
  void likelihood_isThatOfTheWholeCovariance() {
    double[] times = {0, 100, 250, 700, 900, 1500, 1600, 2400, 2500};
    double[] values = {380, 382, 379, 375, 381, 390, 388, 384, 386};
    ChamberTrace trace = ChamberTrace.of(times, values, LEVEL, new double[0], Optional.empty());
    double difference =
        trace.negativeLogLikelihood(at(6, 1500)) - trace.negativeLogLikelihood(at(9, 2600));
    assertEquals(dense(times, values, 6, 1500) - dense(times, values, 9, 2600), difference, 1e-9);
  }

  private static double[] at(double deviation, double time) {
    return new double[] {StrictMath.log(deviation), StrictMath.log(time), 0, 0};
  }

  private static double dense(double[] times, double[] values, double deviation, double time) {
    int n = times.length;
    double[][] covariance = new double[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        double apart = Math.abs(times[a] - times[b]);
        covariance[a][b] = deviation * deviation * StrictMath.exp(-apart / time);
      }
      covariance[a][a] += ChamberTrace.NOISE * ChamberTrace.NOISE;
    }
    double[][] inverse = Cholesky.of(covariance).inverse();
    double ones = 0;
    double weighted = 0;
    double squares = 0;
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        ones += inverse[a][b];
        weighted += inverse[a][b] * values[b];
        squares += inverse[a][b] * values[a] * values[b];
      }
    }
    return Cholesky.of(covariance).halfLogDeterminant()
        + 0.5 * StrictMath.log(ones)
        + 0.5 * (squares - weighted * weighted / ones);
  }

  @Test
  void longTrace_findsWhatMadeIt() {
    double[] truth = {
      StrictMath.log(5), StrictMath.log(1200), StrictMath.log(1.2), StrictMath.log(0.6)
    };
    ChamberTrace trace = made(truth, 2000, 0, openings(), new SplittableRandom(3));
    ChamberEstimate estimate = ChamberEstimate.of(trace, CHANCE);
    for (int p = 0; p < truth.length; p++) {
      double off = (estimate.coordinates()[p] - truth[p]) / estimate.asPrior().spread(p);
      assertTrue(Math.abs(off) < 3, "number " + p + " is off by " + off);
      assertTrue(estimate.asPrior().spread(p) < 0.5 * CHANCE.spread(p), "number " + p);
    }
  }

  /** A step of the setting that is known adds nothing to the drift; one that is not known does. */
  @Test
  void changedSetting_isNoDrift() {
    double[] truth = CHANCE.mean();
    ChamberTrace known = made(truth, 120, 40, Optional.empty(), new SplittableRandom(4));
    ChamberTrace steady = made(truth, 120, 0, Optional.empty(), new SplittableRandom(4));
    assertEquals(
        ChamberEstimate.of(steady, CHANCE).coordinates()[0],
        ChamberEstimate.of(known, CHANCE).coordinates()[0],
        0.1);
  }

  /** Over truths drawn from the prior: 90 % intervals, ± 4 standard errors of 200 cooks. */
  @Test
  void intervals_holdTheTruth_andRightPriorsAreNotInConflict() {
    SplittableRandom random = new SplittableRandom(5);
    int cooks = 200;
    int[] held = new int[4];
    int conflicts = 0;
    for (int i = 0; i < cooks; i++) {
      double[] truth = CHANCE.draw(random);
      ChamberEstimate estimate = ChamberEstimate.of(made(truth, 40, 0, openings(), random), CHANCE);
      for (int p = 0; p < truth.length; p++) {
        double off = Math.abs(estimate.coordinates()[p] - truth[p]);
        held[p] += off < 1.645 * estimate.asPrior().spread(p) ? 1 : 0;
      }
      conflicts += estimate.conflict().chance() < Diagnosis.LEAST_CHANCE ? 1 : 0;
    }
    for (int each : held) {
      assertEquals(0.9, (double) each / cooks, 0.085);
    }
    assertTrue(conflicts <= 8, "conflicts " + conflicts);
  }

  @Test
  void logsOfACooker_narrowItToItsOwnNumbers() {
    SplittableRandom random = new SplittableRandom(6);
    double[] cooker = {
      StrictMath.log(4), StrictMath.log(1500), StrictMath.log(0.8), StrictMath.log(1.6)
    };
    List<ChamberTrace> traces = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      double[] cook = cooker.clone();
      for (int p = 0; p < cook.length; p++) {
        String id = FireParameters.ofHabit().get(p).id();
        cook[p] += FireParameters.betweenCooks(id) * Normal.standard(random);
      }
      traces.add(made(cook, 60, 0, openings(), random));
    }
    Prior known = ChamberEstimate.cooker(CHANCE, traces);
    for (int p = 0; p < cooker.length; p++) {
      double off = (known.mean()[p] - cooker[p]) / known.spread(p);
      assertTrue(Math.abs(off) < 3, "number " + p + " is off by " + off);
    }
    assertTrue(known.spread(0) < 0.6 * CHANCE.spread(0));
    assertEquals(CHANCE.mean()[0], ChamberEstimate.cooker(CHANCE, List.of()).mean()[0], 1e-12);
  }

  /** By how much a cooker's own profile is the better is by chance; in the mean it is. */
  @Test
  void tracesAreMoreProbable_withWhatIsTrue() {
    SplittableRandom random = new SplittableRandom(7);
    double own = 0;
    double other = 0;
    for (int i = 0; i < 40; i++) {
      double[] cooker = CHANCE.draw(random);
      Prior known =
          ChamberEstimate.cooker(CHANCE, List.of(made(cooker, 200, 0, openings(), random)));
      Prior wrong =
          ChamberEstimate.cooker(
              CHANCE, List.of(made(CHANCE.draw(random), 200, 0, openings(), random)));
      List<ChamberTrace> seen = List.of(made(cooker, 60, 0, openings(), random));
      own += ChamberEstimate.logRatio(known, seen) / 40;
      other += ChamberEstimate.logRatio(wrong, seen) / 40;
      assertEquals(0, ChamberEstimate.logRatio(Prior.of(FireParameters.ofHabit()), seen), 1e-9);
    }
    assertTrue(own > 0.1 && other < -0.5, own + " and " + other);
    assertTrue(new ProfileRatio(-1, -0.5).isAnother());
    assertTrue(!new ProfileRatio(-1, -0.3).isAnother());
    assertThrows(IllegalArgumentException.class, () -> new ProfileRatio(Double.NaN, 0));
  }

  @Test
  void tooFewReadings_areRefused() {
    double[] few = {0, 1, 2};
    assertThrows(
        IllegalArgumentException.class,
        () -> ChamberTrace.of(few, few, LEVEL, new double[0], Optional.empty()));
  }
}
