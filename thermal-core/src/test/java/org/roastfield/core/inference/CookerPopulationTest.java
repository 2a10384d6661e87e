package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Populations of cookers where everything is normal, against answers found another way. */
class CookerPopulationTest {

  private static final Parameter FIRST =
      Parameter.multiplier("first", Owner.COOKER, 0.3, 1e-3, 1e3, "made up");
  private static final Parameter SECOND =
      Parameter.offset("second", "K", Owner.COOKER, 8, -400, 400, "made up");
  private static final Parameter OF_COOK =
      Parameter.multiplier("first-of-cook", Owner.CUT, 0.15, 1e-3, 1e3, "made up");
  private static final Parameter OWN =
      Parameter.offset("own", "K", Owner.CUT, 3, -400, 400, "made up");
  private static final ParameterSet OWNED = ParameterSet.of(FIRST, SECOND);
  private static final Prior COOKERS = Prior.of(OWNED);
  private static final double[][] COOKS = {{0.15 * 0.15, 0}, {0, 0}};
  private static final CookerPopulation ASSUMED = CookerPopulation.assumed(COOKERS, COOKS);

  /** Log of a cook that measures sums of its numbers once each, with errors of 1. */
  private static final double[][] DESIGN = {{5, 5, 0.1, 0.3}, {2, 2, 0.2, -0.4}};

  private static MapEstimate fitted(Prior prior, double... read) {
    List<SingleReading> singles = new ArrayList<>();
    for (int k = 0; k < read.length; k++) {
      singles.add(new SingleReading("reading " + k, read[k], 1, 0));
    }
    return Calibration.of(prior, new Evidence(List.of(), singles), CookerPopulationTest::linear)
        .map();
  }

  private static boolean linear(double[] z, double[] predicted, double @Nullable [][] derivatives) {
    for (int k = 0; k < predicted.length; k++) {
      predicted[k] = 0;
      for (int p = 0; p < z.length; p++) {
        predicted[k] += DESIGN[k][p] * z[p];
        if (derivatives != null) {
          derivatives[p][k] = DESIGN[k][p];
        }
      }
    }
    return true;
  }

  private static final ParameterSet OF_A_COOK = ParameterSet.of(FIRST, OF_COOK, SECOND, OWN);
  private static final List<List<String>> SHARED =
      List.of(List.of("first", "first-of-cook"), List.of("second"));

  private static LogSite site(double... read) {
    return LogSite.of(fitted(Prior.of(OF_A_COOK), read), SHARED);
  }

  /** Posterior of (first, second) given the readings of several cooks, by one dense system. */
  private static RealMatrix[] joint(double[]... cooks) {
    int n = 2 * cooks.length;
    RealMatrix covariance = Matrices.identity(n);
    RealMatrix cross = Matrices.matrix(new double[2][n]);
    RealVector values = Matrices.vector(new double[n]);
    for (int a = 0; a < n; a++) {
      values.setEntry(a, cooks[a / 2][a % 2]);
      double[] row = DESIGN[a % 2];
      cross.setEntry(0, a, row[0] * 0.09);
      cross.setEntry(1, a, row[2] * 64);
      for (int b = 0; b < n; b++) {
        double[] other = DESIGN[b % 2];
        double shared = row[0] * other[0] * 0.09 + row[2] * other[2] * 64;
        double own = row[1] * other[1] * 0.0225 + row[3] * other[3] * 9;
        covariance.addToEntry(a, b, shared + (a / 2 == b / 2 ? own : 0));
      }
    }
    RealMatrix gain = cross.multiply(new LUDecomposition(covariance).getSolver().getInverse());
    RealMatrix prior = Matrices.matrix(new double[][] {{0.09, 0}, {0, 64}});
    RealMatrix mean = Matrices.matrix(new double[2][1]);
    mean.setColumnVector(0, gain.operate(values));
    return new RealMatrix[] {mean, prior.subtract(gain.multiply(cross.transpose()))};
  }

  private static void assertIs(RealMatrix[] expected, Prior is) {
    assertArrayEquals(expected[0].getColumn(0), is.mean(), 1e-6);
    for (int p = 0; p < 2; p++) {
      for (int q = 0; q < 2; q++) {
        double size = is.spread(p) * is.spread(q);
        assertEquals(expected[1].getEntry(p, q), is.covariance(p, q), 1e-6 * size);
      }
    }
  }

  @Test
  void cooker_isWhatAllReadingsAtOnceSay() {
    double[][] cooks = {{2, 1}, {-1, 3}, {4, 0.5}};
    List<LogSite> sites = List.of(site(cooks[0]), site(cooks[1]), site(cooks[2]));
    assertIs(joint(cooks), ASSUMED.cooker(sites));
    Prior cooker = ASSUMED.cooker(sites);
    Prior next = ASSUMED.nextCook(sites);
    assertEquals(cooker.covariance(0, 0) + 0.0225, next.covariance(0, 0), 1e-12);
    assertEquals(cooker.covariance(1, 1), next.covariance(1, 1), 1e-12);
    assertArrayEquals(cooker.mean(), next.mean(), 0);
  }

  @Test
  void profileAndOneMoreLog_equalAllLogsAtOnce() {
    double[][] cooks = {{2, 1}, {-1, 3}, {4, 0.5}};
    Prior two = ASSUMED.cooker(List.of(site(cooks[0]), site(cooks[1])));
    CookerPopulation profile = CookerPopulation.assumed(two, COOKS);
    // The third log is fitted under the profile, as `calibrate --cooker` does, not under the prior.
    double[] mean = {two.mean()[0], 0, two.mean()[1], 0};
    double[][] covariance = {
      {two.covariance(0, 0), 0, two.covariance(0, 1), 0},
      {0, 0.0225, 0, 0},
      {two.covariance(1, 0), 0, two.covariance(1, 1), 0},
      {0, 0, 0, 9}
    };
    MapEstimate third = fitted(Prior.of(OF_A_COOK, mean, covariance), cooks[2]);
    assertIs(joint(cooks), profile.cooker(List.of(LogSite.of(third, SHARED))));
  }

  /** What a profile says over what was believed before its logs is what they say together. */
  @Test
  void profileOverItsPrior_isTheSiteOfItsLogs() {
    Prior profile = ASSUMED.cooker(List.of(site(1, 2), site(2, -1)));
    LogSite together = LogSite.between(COOKERS, profile);
    CookerPopulation others =
        CookerPopulation.assumed(
            Prior.of(OWNED, new double[] {0.1, 2}, new double[][] {{0.04, 0}, {0, 9}}), COOKS);
    CookerPopulation settled =
        CookerPopulation.assumed(others.newCooker(), new double[COOKERS.size()][COOKERS.size()]);
    Prior expected = others.cooker(List.of(site(1, 2), site(2, -1)));
    Prior found = settled.cooker(List.of(together));
    assertArrayEquals(expected.mean(), found.mean(), 1e-9);
    assertEquals(expected.covariance(0, 1), found.covariance(0, 1), 1e-9);
    Prior one = Prior.of(ParameterSet.of(FIRST));
    assertThrows(IllegalArgumentException.class, () -> LogSite.between(COOKERS, one));
  }

  @Test
  void logThatSaysNothing_leavesThePopulation() {
    RealVector middle = Matrices.vector(new double[] {0.2, -3});
    RealMatrix wide = Matrices.matrix(new double[][] {{0.09, 0}, {0, 64}});
    LogSite nothing =
        LogSite.between(middle, wide, middle.mapMultiply(2), wide.scalarMultiply(1.1));
    assertArrayEquals(new double[2], nothing.shift(), 1e-12);
    Prior cooker = ASSUMED.cooker(List.of(nothing));
    assertArrayEquals(COOKERS.mean(), cooker.mean(), 1e-12);
    assertEquals(8, cooker.spread(1), 1e-9);
  }

  /** Balanced and read without error: the maximum of the likelihood is a formula of two sums. */
  @Test
  void learned_isTheAnalysisOfVariance() {
    ParameterSet one = ParameterSet.of(FIRST);
    CookerPopulation start = CookerPopulation.assumed(Prior.of(one), new double[][] {{0.02}});
    SplittableRandom random = new SplittableRandom(4);
    int groups = 12;
    int cooks = 5;
    List<List<LogSite>> logs = new ArrayList<>();
    double[][] values = new double[groups][cooks];
    for (double[] group : values) {
      double cooker = 0.4 + 0.3 * StudentProposal.normal(random);
      List<LogSite> sites = new ArrayList<>();
      for (int c = 0; c < cooks; c++) {
        group[c] = cooker + 0.1 * StudentProposal.normal(random);
        sites.add(exact(group[c]));
      }
      logs.add(sites);
    }
    CookerPopulation learned = start.learned(logs, 0);
    double within = 0;
    double between = 0;
    double all = 0;
    for (double[] group : values) {
      all += mean(group) / groups;
    }
    for (double[] group : values) {
      between += cooks * square(mean(group) - all);
      for (double value : group) {
        within += square(value - mean(group));
      }
    }
    double ofCooks = within / (groups * (cooks - 1));
    double ofCookers = (between / groups - ofCooks) / cooks;
    assertEquals(ofCooks, learned.betweenCooks()[0][0], 1e-4 * ofCooks);
    assertEquals(ofCookers, learned.betweenCookers()[0][0], 1e-4 * ofCookers);
    assertEquals(all, learned.newCooker().mean()[0], 1e-5);
    assertEquals(ofCookers * (1 + 1.0 / groups), learned.newCooker().covariance(0, 0), 1e-5);
    assertTrue(learned.isPublishable());
    assertFalse(start.isPublishable());
  }

  /** A reading of a spread far below all others. */
  private static LogSite exact(double value) {
    RealMatrix wide = Matrices.matrix(new double[][] {{1e6}});
    RealMatrix narrow = Matrices.matrix(new double[][] {{1e-10}});
    return LogSite.between(
        Matrices.vector(new double[1]), wide, Matrices.vector(new double[] {value}), narrow);
  }

  @Test
  void weight_holdsOnToWhatWasAssumed() {
    List<List<LogSite>> logs = List.of(List.of(site(3, 1)), List.of(site(-2, 1)));
    CookerPopulation heavy = ASSUMED.learned(logs, 1e9);
    assertEquals(0.09, heavy.betweenCookers()[0][0], 1e-6);
    assertEquals(0.0225, heavy.betweenCooks()[0][0], 1e-6);
    CookerPopulation light = ASSUMED.learned(logs, 4);
    assertEquals(0, light.betweenCooks()[1][1], 0);
    assertEquals(2, light.cookers());
    assertFalse(light.isPublishable());
  }

  @Test
  void wrongArguments_areNamed() {
    assertThrows(IllegalArgumentException.class, () -> ASSUMED.learned(List.of(), 1));
    assertThrows(
        IllegalArgumentException.class, () -> ASSUMED.learned(List.of(List.of(site(1, 1))), -1));
    assertThrows(
        IllegalArgumentException.class,
        () -> CookerPopulation.assumed(COOKERS, new double[][] {{1}}));
    assertThrows(
        IllegalArgumentException.class,
        () -> LogSite.of(fitted(Prior.of(OF_A_COOK), 1, 1), List.of(List.of("nobody"))));
  }

  private static double mean(double[] of) {
    double sum = 0;
    for (double each : of) {
      sum += each;
    }
    return sum / of.length;
  }

  private static double square(double of) {
    return of * of;
  }
}
