package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/** The one-pass filter against dense algebra on the whole covariance. */
class WhiteningTest {

  private static final ErrorModel MODEL = new ErrorModel(0.8, 2700, 0.2, 0.5);
  private static final int N = 60;
  private static final double[] TIMES = new double[N];
  private static final double[] PRECISION = new double[N];
  private static final double[] RESIDUALS = new double[N];

  static {
    SplittableRandom random = new SplittableRandom(7);
    double t = 300;
    for (int k = 0; k < N; k++) {
      t += 10 + 600 * random.nextDouble() * random.nextDouble();
      TIMES[k] = t;
      PRECISION[k] = k % 7 == 0 ? 0.05 : 1;
      RESIDUALS[k] = 2 * random.nextDouble() - 1;
    }
  }

  private static RealMatrix drift() {
    RealMatrix matrix = new Array2DRowRealMatrix(N, N);
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double age = Math.abs(TIMES[i] - TIMES[j]) / MODEL.driftTime();
        matrix.setEntry(i, j, 0.64 * Math.exp(-age));
      }
    }
    return matrix;
  }

  private static RealMatrix covariance() {
    RealMatrix matrix = drift();
    for (int i = 0; i < N; i++) {
      matrix.addToEntry(i, i, (0.04 + 0.25 / 12) / PRECISION[i]);
    }
    return matrix;
  }

  @Test
  void density_isThatOfTheWholeCovariance() {
    LUDecomposition dense = new LUDecomposition(covariance());
    RealVector r = new ArrayRealVector(RESIDUALS);
    double expected =
        0.5 * r.dotProduct(dense.getSolver().solve(r))
            + 0.5 * Math.log(dense.getDeterminant())
            + 0.5 * N * Math.log(2 * Math.PI);
    Whitening whitening = new Whitening(TIMES, MODEL, PRECISION);
    assertEquals(expected, whitening.negativeLogDensity(RESIDUALS, 0), 1e-10 * expected);
    double[] white = new double[N + 3];
    whitening.apply(RESIDUALS, 0, white, 3);
    assertEquals(
        expected,
        0.5 * new ArrayRealVector(white).dotProduct(new ArrayRealVector(white))
            + whitening.halfLogDeterminant(),
        1e-10 * expected);
  }

  @Test
  void whiteningIsLinear_andKeepsInnerProducts() {
    double[] other = new double[N];
    for (int k = 0; k < N; k++) {
      other[k] = Math.sin(k);
    }
    Whitening whitening = new Whitening(TIMES, MODEL, PRECISION);
    double[] a = new double[N];
    double[] b = new double[N];
    whitening.apply(RESIDUALS, 0, a, 0);
    whitening.apply(other, 0, b, 0);
    double expected =
        new ArrayRealVector(RESIDUALS)
            .dotProduct(
                new LUDecomposition(covariance()).getSolver().solve(new ArrayRealVector(other)));
    assertEquals(expected, new ArrayRealVector(a).dotProduct(new ArrayRealVector(b)), 1e-10);
  }

  @Test
  void driftTakenOut_isTheMeanGivenAllResiduals() {
    RealVector r = new ArrayRealVector(RESIDUALS);
    RealVector mean = drift().operate(new LUDecomposition(covariance()).getSolver().solve(r));
    double[] white = new Whitening(TIMES, MODEL, PRECISION).withoutDrift(RESIDUALS, 0);
    for (int k = 0; k < N; k++) {
      assertEquals(RESIDUALS[k] - mean.getEntry(k), white[k], 1e-10, "reading " + k);
    }
  }

  @Test
  void driftVariance_isThatGivenAllResiduals() {
    RealMatrix drift = drift();
    RealMatrix known =
        drift.multiply(new LUDecomposition(covariance()).getSolver().getInverse()).multiply(drift);
    double[] variance = new Whitening(TIMES, MODEL, PRECISION).driftVariance();
    for (int k = 0; k < N; k++) {
      double expected = drift.getEntry(k, k) - known.getEntry(k, k);
      assertEquals(expected, variance[k], 1e-10, "reading " + k);
    }
  }
}
