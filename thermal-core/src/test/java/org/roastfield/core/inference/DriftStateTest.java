package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/** A drift's state against conditioning of the whole covariance at once. */
class DriftStateTest {

  private static final ErrorModel ERRORS = new ErrorModel(0.8, 2700, 0.2, 0);
  private static final double[] TIMES = {0, 300, 700, 2000, 2100};
  private static final double[] RESIDUALS = {0.5, 0.9, -0.2, 1.1, 1.3};

  @Test
  void state_isThatOfTheJointDistribution() {
    int n = TIMES.length;
    RealMatrix covariance = Matrices.identity(n).scalarMultiply(0.04);
    RealVector with = Matrices.vector(new double[n]);
    for (int a = 0; a < n; a++) {
      with.setEntry(a, 0.64 * Math.exp((TIMES[a] - TIMES[n - 1]) / 2700));
      for (int b = 0; b < n; b++) {
        covariance.addToEntry(a, b, 0.64 * Math.exp(-Math.abs(TIMES[a] - TIMES[b]) / 2700));
      }
    }
    RealVector gain = Matrices.inverse(covariance).operate(with);
    DriftState state = DriftState.after(ERRORS, TIMES, RESIDUALS);
    assertEquals(gain.dotProduct(Matrices.vector(RESIDUALS)), state.mean(), 1e-12);
    assertEquals(0.64 - gain.dotProduct(with), state.variance(), 1e-12);
    assertEquals(2100, state.time());
  }

  @Test
  void path_goesBackToTheUsualSpread() {
    DriftState state = new DriftState(ERRORS, 0, 2, 0);
    SplittableRandom random = new SplittableRandom(9);
    int draws = 20_000;
    double[] sum = new double[2];
    double[] squares = new double[2];
    for (int i = 0; i < draws; i++) {
      double[] path = state.path(new double[] {1350, 1e6}, random);
      for (int k = 0; k < 2; k++) {
        sum[k] += path[k];
        squares[k] += path[k] * path[k];
      }
    }
    double kept = Math.exp(-0.5);
    assertEquals(2 * kept, sum[0] / draws, 4 * 0.8 / Math.sqrt(draws));
    assertEquals(0, sum[1] / draws, 4 * 0.8 / Math.sqrt(draws));
    double variance = squares[0] / draws - sum[0] / draws * sum[0] / draws;
    assertEquals(0.64 * (1 - kept * kept), variance, 0.05 * 0.64);
    assertEquals(0.64, squares[1] / draws, 0.05 * 0.64);
  }

  @Test
  void wrongArguments_areNamed() {
    assertThrows(
        IllegalArgumentException.class,
        () -> DriftState.after(ERRORS, new double[0], new double[0]));
    assertThrows(
        IllegalArgumentException.class, () -> DriftState.after(ERRORS, TIMES, new double[1]));
  }
}
