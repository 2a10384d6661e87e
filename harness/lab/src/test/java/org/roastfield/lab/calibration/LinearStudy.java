package org.roastfield.lab.calibration;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.Normal;

/**
 * A level and a slope seen in eight readings with independent errors: the posterior is normal and
 * known. Its faults are added on purpose.
 */
final class LinearStudy implements SimulatedStudy<double[]> {

  static final double SPREAD = 1.5;
  static final double NOISE = 0.8;
  private static final int N = 8;

  private final double stretch;
  private final double shift;

  /**
   * @param stretch of the posterior's spread, 1 if right
   * @param shift of the posterior, in its spreads, 0 if right
   */
  LinearStudy(double stretch, double shift) {
    this.stretch = stretch;
    this.shift = shift;
  }

  @Override
  public double[] truth(RandomGenerator random) {
    return new double[] {SPREAD * Normal.standard(random), SPREAD * Normal.standard(random)};
  }

  @Override
  public double[] data(double[] truth, RandomGenerator random) {
    double[] y = new double[N];
    for (int k = 0; k < N; k++) {
      y[k] = truth[0] + truth[1] * place(k) + NOISE * Normal.standard(random);
    }
    return y;
  }

  @Override
  public Optional<double[][]> posterior(double[] y, int count, RandomGenerator random) {
    double precision = 1 / (NOISE * NOISE);
    double a = 1 / (SPREAD * SPREAD);
    double b = 0;
    double c = 1 / (SPREAD * SPREAD);
    double u = 0;
    double v = 0;
    for (int k = 0; k < N; k++) {
      a += precision;
      b += precision * place(k);
      c += precision * place(k) * place(k);
      u += precision * y[k];
      v += precision * y[k] * place(k);
    }
    double det = a * c - b * b;
    double[] mean = {(c * u - b * v) / det, (a * v - b * u) / det};
    double[][] covariance = {{c / det, -b / det}, {-b / det, a / det}};
    mean[0] += shift * Math.sqrt(covariance[0][0]);
    Normal exact = Normal.of(new double[2], covariance);
    double[][] draws = new double[count][];
    for (int i = 0; i < count; i++) {
      draws[i] = exact.moved(mean, stretch, random);
    }
    return Optional.of(draws);
  }

  @Override
  public List<String> names() {
    return List.of("level", "slope", "log-likelihood", "end");
  }

  @Override
  public double[] quantities(double[] z, double[] y) {
    return new double[] {z[0], z[1], logLikelihood(z, y), z[0] + 2 * z[1]};
  }

  static double logLikelihood(double[] z, double[] y) {
    double sum = 0;
    for (int k = 0; k < N; k++) {
      double w = (y[k] - z[0] - z[1] * place(k)) / NOISE;
      sum -= 0.5 * w * w;
    }
    return sum;
  }

  private static double place(int k) {
    return k / (N - 1.0);
  }
}
