package org.roastfield.lab.heldout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.ForwardModel;
import org.roastfield.core.inference.Normal;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.score.ScoreSummary;

/** Scores of bodies that warm exponentially, at a rate that is the cooker's. */
class HeldOutScoresTest {

  private static final double STEP = 200;
  private static final double HORIZON = 20 * 3600;
  private static final double TARGET = 330;
  private static final Prior PRIOR =
      Prior.of(
          ParameterSet.of(
              Parameter.multiplier("rate", Owner.COOKER, 0.3, 0.1, 10, "made up"),
              Parameter.multiplier("own-rate", Owner.CUT, 0.05, 0.1, 10, "made up")));

  /** From 280 K towards 380 K. */
  private static double core(double[] z, double time) {
    return 380 - 100 * Math.exp(-Math.exp(z[0] + z[1]) * time / 14_400);
  }

  /** A body with a drift of 0.8 K in its log. */
  private static final class Warming implements ScoredCook {

    private final String name;
    private final String cooker;
    private final double[] readings;

    Warming(String name, String cooker, double[] readings) {
      this.name = name;
      this.cooker = cooker;
      this.readings = readings;
    }

    static Warming of(String name, String cooker, double rate, SplittableRandom random) {
      double[] truth = {rate, 0.05 * Normal.standard(random)};
      double[] readings = new double[250];
      double kept = Math.exp(-STEP / ErrorModel.CORE.driftTime());
      double drift = 0.8 * Normal.standard(random);
      for (int k = 0; k < readings.length; k++) {
        readings[k] = core(truth, k * STEP) + drift + 0.2 * Normal.standard(random);
        drift = kept * drift + 0.8 * Math.sqrt(1 - kept * kept) * Normal.standard(random);
      }
      return new Warming(name, cooker, readings);
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public String cooker() {
      return cooker;
    }

    @Override
    public double[] readings() {
      return readings.clone();
    }

    @Override
    public double[] times() {
      double[] times = new double[readings.length];
      for (int k = 0; k < times.length; k++) {
        times[k] = k * STEP;
      }
      return times;
    }

    @Override
    public double target() {
      return TARGET;
    }

    @Override
    public double horizon() {
      return HORIZON;
    }

    @Override
    public Prior prior() {
      return PRIOR;
    }

    private double[] seen(double until) {
      return Arrays.stream(times()).filter(time -> time <= until).toArray();
    }

    @Override
    public Evidence evidence(double until) {
      double[] seen = seen(until);
      double[] values = Arrays.copyOf(readings, seen.length);
      return new Evidence(List.of(Series.of("core", seen, values, ErrorModel.CORE)), List.of());
    }

    @Override
    public ForwardModel model(double until) {
      double[] seen = seen(until);
      return (z, predicted, derivatives) -> {
        for (int k = 0; k < seen.length; k++) {
          predicted[k] = core(z, seen[k]);
          if (derivatives != null) {
            double slope = (380 - predicted[k]) * Math.exp(z[0] + z[1]) * seen[k] / 14_400;
            derivatives[0][k] = slope;
            derivatives[1][k] = slope;
          }
        }
        return true;
      };
    }

    @Override
    public double[] shown(double[] coordinates, double[] at) {
      return Arrays.stream(at).map(time -> core(coordinates, time)).toArray();
    }
  }

  private static List<ScoredCook> cooks(int cookers, int each) {
    SplittableRandom random = new SplittableRandom(6);
    List<ScoredCook> cooks = new ArrayList<>();
    for (int g = 0; g < cookers; g++) {
      double rate = 0.3 * Normal.standard(random);
      for (int c = 0; c < each; c++) {
        cooks.add(Warming.of("cook " + g + "-" + c, "cooker " + g, rate, random));
      }
    }
    return cooks;
  }

  @Test
  void profiles_helpAndIntervalsHold() {
    int cookers = 10;
    HeldOutScores scores = HeldOutScores.of(cooks(cookers, 4), 1, what -> {});
    assertEquals(40, scores.errors().size());
    assertEquals(3, scores.errors().get(0).others());
    assertTrue(scores.leftOut().isEmpty(), scores.leftOut()::toString);
    ScoreSummary early = scores.of(0.25, HeldOutScores.PROFILE);
    assertEquals(40, early.cooks());
    // 36 expected; below 30 or above 39 in one of a hundred.
    double covered = early.coverage(0.9).covered();
    assertTrue(covered >= 30, () -> "covered " + covered);
    double prior = scores.of(0.25, HeldOutScores.PRIOR).crps();
    assertTrue(early.crps() < 0.5 * prior, () -> early.crps() + " of " + prior);
    ScoreSummary late = scores.of(0.75, HeldOutScores.PROFILE);
    assertTrue(late.crps() < early.crps(), () -> late.crps() + " after " + early.crps());
    // Warming slows down, which a straight line does not know: it is early.
    assertTrue(scores.of(0.5, HeldOutScores.LINE).bias() < 0);
    double line = scores.of(0.5, HeldOutScores.LINE).crps();
    assertTrue(scores.of(0.5, HeldOutScores.PROFILE).crps() < line);
  }

  @Test
  void cookWithoutCompany_getsThePriors() {
    HeldOutScores scores = HeldOutScores.of(cooks(3, 1), 1, what -> {});
    for (HeldOutScores.TraceError error : scores.errors()) {
      assertEquals(0, error.others());
    }
    Warming first = (Warming) cooks(3, 1).get(0);
    double squares = 0;
    for (int k = 0; k < first.readings().length; k++) {
      double off = core(PRIOR.mean(), k * STEP) - first.readings()[k];
      squares += off * off / first.readings().length;
    }
    assertEquals(Math.sqrt(squares), scores.errors().get(0).rootMeanSquare(), 1e-9);
  }

  @Test
  void sameSeed_scoresTheSame() {
    HeldOutScores one = HeldOutScores.of(cooks(2, 2), 5, what -> {});
    HeldOutScores again = HeldOutScores.of(cooks(2, 2), 5, what -> {});
    assertEquals(
        one.of(0.5, HeldOutScores.PROFILE).scores(), again.of(0.5, HeldOutScores.PROFILE).scores());
  }

  @Test
  void oneCook_isTooFew() {
    List<ScoredCook> one = cooks(1, 1);
    assertThrows(IllegalArgumentException.class, () -> HeldOutScores.of(one, 1, what -> {}));
  }

  @Test
  void straightLine_findsStraightWarming() {
    double[] times = {0, 600, 1200, 1800, 2400};
    double[] readings = {300, 301, 302, 303, 304};
    assertEquals(6000, StraightLine.crossing(times, readings, 310, 1e6), 1e-6);
    assertEquals(5000, StraightLine.crossing(times, readings, 310, 5000), 0);
    assertEquals(9e5, StraightLine.crossing(times, new double[] {5, 4, 3, 2, 1}, 310, 9e5), 0);
  }
}
