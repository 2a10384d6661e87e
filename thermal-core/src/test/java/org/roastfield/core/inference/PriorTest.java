package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;

class PriorTest {

  private static final Parameter A =
      Parameter.offset("a", "K", Owner.COOKER, 2, -50, 50, "made up");
  private static final Parameter B = Parameter.offset("b", "K", Owner.CUT, 3, -50, 50, "made up");
  private static final Parameter C = Parameter.offset("c", "K", Owner.COOKER, 1, -1, 1, "made up");
  private static final Prior PRIOR =
      Prior.of(
          ParameterSet.of(A, B, C),
          new double[] {1, 2, 0},
          new double[][] {{4, 1, 0.5}, {1, 9, 0.2}, {0.5, 0.2, 1}});

  @Test
  void knownParameters_takeTheOthersPlace_andNothingElse() {
    Prior known =
        Prior.of(
            ParameterSet.of(C, A), new double[] {0.3, -2}, new double[][] {{0.2, 0.1}, {0.1, 0.6}});
    Prior with = PRIOR.with(known);
    assertArrayEquals(new double[] {-2, 2, 0.3}, with.mean(), 0);
    assertEquals(0.6, with.covariance(0, 0));
    assertEquals(0.1, with.covariance(0, 2));
    assertEquals(0.2, with.covariance(2, 2));
    assertEquals(9, with.covariance(1, 1));
    assertEquals(0, with.covariance(0, 1));
    assertEquals(0, with.covariance(1, 2));
    Prior stranger =
        Prior.of(ParameterSet.of(Parameter.offset("d", "K", Owner.CUT, 1, -5, 5, "made up")));
    assertThrows(IllegalArgumentException.class, () -> PRIOR.with(stranger));
  }

  /** Determinant of the covariance by hand: 4·(9 − 0.04) − (1 − 0.1) + 0.5·(0.2 − 4.5) = 32.79. */
  @Test
  void density_isTheNormalOne() {
    double atMean = -1.5 * Math.log(2 * Math.PI) - 0.5 * Math.log(32.79) - PRIOR.logLeft();
    assertEquals(atMean, PRIOR.logDensity(PRIOR.mean()), 1e-12);
    // One standard deviation along the conditional of b alone is half a nat: 1/(C⁻¹)_bb.
    double precision = (4 * 1 - 0.25) / 32.79;
    double[] moved = {1, 2 + 1 / Math.sqrt(precision), 0};
    assertEquals(atMean - 0.5, PRIOR.logDensity(moved), 1e-12);
  }

  /** A bound in the middle leaves half of the weight, and makes the rest twice as dense. */
  @Test
  void density_isOfWhatTheBoundsLeave() {
    Parameter half = new Parameter("h", "K", Owner.CUT, Scale.PLAIN, 0.5, 2, 0, 90, "made up");
    Prior cut = Prior.of(ParameterSet.of(half), new double[] {0}, new double[][] {{4}});
    assertEquals(Math.log(0.5), cut.logLeft(), 1e-12);
    double whole = -0.5 * Math.log(2 * Math.PI * 4);
    assertEquals(whole + Math.log(2), cut.logDensity(new double[] {0}), 1e-12);
  }

  /** A half normal distribution has the mean √(2/π); what goes with it moves along. */
  @Test
  void expected_isTheMeanOfWhatTheBoundsLeave() {
    Parameter half = new Parameter("h", "K", Owner.CUT, Scale.PLAIN, 0.5, 2, 0, 90, "made up");
    Prior cut =
        Prior.of(ParameterSet.of(A, half), new double[] {1, 0}, new double[][] {{9, 3}, {3, 4}});
    double[] expected = cut.expected();
    double mean = 2 * Math.sqrt(2 / Math.PI);
    assertEquals(mean, expected[1], 1e-9);
    assertEquals(1 + 3.0 / 4 * mean, expected[0], 1e-9);
    assertArrayEquals(new double[] {1, 0}, cut.mean(), 0);
  }

  @Test
  void expected_isTheMeanOfDraws_andAtTheBoundWhereNothingIsLeft() {
    SplittableRandom random = new SplittableRandom(3);
    int draws = 20_000;
    double[] sum = new double[3];
    for (int i = 0; i < draws; i++) {
      double[] drawn = PRIOR.draw(random);
      for (int p = 0; p < 3; p++) {
        sum[p] += drawn[p] / draws;
      }
    }
    double[] expected = PRIOR.expected();
    for (int p = 0; p < 3; p++) {
      assertEquals(sum[p], expected[p], 4 * PRIOR.spread(p) / Math.sqrt(draws));
    }
    Prior beyond = Prior.of(ParameterSet.of(C), new double[] {40}, new double[][] {{1}});
    assertEquals(1, beyond.expected()[0], 1e-12);
  }

  @Test
  void draws_keepWithinTheBounds() {
    SplittableRandom random = new SplittableRandom(2);
    double sum = 0;
    int draws = 4000;
    for (int i = 0; i < draws; i++) {
      double[] z = PRIOR.draw(random);
      assertTrue(PRIOR.allows(z));
      sum += z[1];
    }
    assertEquals(2, sum / draws, 4 * 3 / Math.sqrt(draws));
  }
}
