package org.roastfield.core.inference;

import java.util.random.RandomGenerator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Gamma;

/** A multivariate Student distribution with six degrees of freedom. */
final class StudentProposal {

  private static final int DEGREES = 6;
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final double[] centre;
  private final Cholesky factor;
  private final double constant;

  /**
   * @param scale LLᵀ of the distribution: two thirds of its covariance
   */
  StudentProposal(double[] centre, double[][] scale) {
    this.centre = centre.clone();
    factor = Cholesky.of(scale);
    int n = centre.length;
    constant =
        Gamma.logGamma(0.5 * (DEGREES + n))
            - Gamma.logGamma(0.5 * DEGREES)
            - 0.5 * n * StrictMath.log(DEGREES * Math.PI)
            - factor.halfLogDeterminant();
  }

  double[] draw(RandomGenerator random) {
    double squares = 0;
    for (int k = 0; k < DEGREES; k++) {
      double normal = normal(random);
      squares += normal * normal;
    }
    double stretch = Math.sqrt(DEGREES / squares);
    double[] x = new double[centre.length];
    for (int p = 0; p < x.length; p++) {
      x[p] = stretch * normal(random);
    }
    double[] draw = factor.coloured(x);
    for (int p = 0; p < draw.length; p++) {
      draw[p] += centre[p];
    }
    return draw;
  }

  double logDensity(double[] z) {
    double[] x = new double[z.length];
    for (int p = 0; p < x.length; p++) {
      x[p] = z[p] - centre[p];
    }
    double squares = 0;
    for (double w : factor.whitened(x)) {
      squares += w * w;
    }
    return constant - 0.5 * (DEGREES + z.length) * StrictMath.log1p(squares / DEGREES);
  }

  /** A normal number by the inverse of its distribution: the same on every JVM. */
  static double normal(RandomGenerator random) {
    double uniform = random.nextDouble();
    return NORMAL.inverseCumulativeProbability(Math.max(uniform, 0x1p-54));
  }
}
