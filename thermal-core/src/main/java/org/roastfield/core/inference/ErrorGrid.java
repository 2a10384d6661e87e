package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;

/**
 * Error models that the residuals of a series may come from: nodes of Gauss-Hermite quadrature over
 * the logarithms of drift spread, drift time and noise, laid around their most probable values with
 * the widths that the residuals give. What is not known of the errors is averaged over, not fitted.
 */
final class ErrorGrid {

  /** Prior standard deviations of the logarithms, status assumed. */
  private static final double[] PRIOR = {0.5, 0.5, 0.3};

  /** Nodes in standard deviations and weights, exact for polynomials to degree 9 and 5. */
  private static final double[] FIVE = {
    -2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806
  };

  private static final double[] FIVE_WEIGHTS = {
    0.011257411327721, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.011257411327721
  };
  private static final double[] THREE = {-1.7320508075688772, 0, 1.7320508075688772};
  private static final double[] THREE_WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

  private static final int MOST_STEPS = 20;
  private static final double DIFFERENCE = 1e-3;
  private static final double SETTLED = 1e-4;

  private final Series series;
  private final double[] precision;
  private final List<Whitening> whitenings = new ArrayList<>();
  private final List<Double> logWeights = new ArrayList<>();
  private final double[] mode;
  private final double[][] covariance;

  /**
   * @param precision factor on the inverse white variance of each reading
   * @param residuals of all evidence, those of this series from {@code from} on
   */
  ErrorGrid(Series series, double[] precision, double[] residuals, int from) {
    this.series = series;
    this.precision = precision;
    mode = new double[PRIOR.length];
    double[][] curvature = descend(residuals, from);
    covariance = Cholesky.of(curvature).inverse();
    Cholesky width = Cholesky.of(covariance);
    for (int i = 0; i < FIVE.length; i++) {
      for (int j = 0; j < THREE.length; j++) {
        for (int k = 0; k < THREE.length; k++) {
          double weight = FIVE_WEIGHTS[i] * THREE_WEIGHTS[j] * THREE_WEIGHTS[k];
          add(width, new double[] {FIVE[i], THREE[j], THREE[k]}, weight);
        }
      }
    }
  }

  private void add(Cholesky width, double[] node, double weight) {
    double[] logs = width.coloured(node);
    double squares = 0;
    for (int c = 0; c < logs.length; c++) {
      logs[c] += mode[c];
      squares += node[c] * node[c];
    }
    whitenings.add(whitening(logs));
    logWeights.add(
        StrictMath.log(weight) + 0.5 * squares + width.halfLogDeterminant() - prior(logs));
  }

  private Whitening whitening(double[] logs) {
    return new Whitening(series.times(), model(logs), precision);
  }

  private ErrorModel model(double[] logs) {
    return series
        .errors()
        .scaled(StrictMath.exp(logs[0]), StrictMath.exp(logs[1]), StrictMath.exp(logs[2]));
  }

  /** Minus the logarithm of the prior density of logarithms, without 2π. */
  private static double prior(double[] logs) {
    double sum = 0;
    for (int c = 0; c < logs.length; c++) {
      double x = logs[c] / PRIOR[c];
      sum += 0.5 * x * x + StrictMath.log(PRIOR[c]);
    }
    return sum;
  }

  private double misfit(double[] logs, double[] residuals, int from) {
    return whitening(logs).negativeLogDensity(residuals, from) + prior(logs);
  }

  /** Moves the mode to the most probable logarithms by Newton's method; returns the curvature. */
  private double[][] descend(double[] residuals, int from) {
    double value = misfit(mode, residuals, from);
    for (int step = 0; ; step++) {
      double[] gradient = new double[mode.length];
      double[][] curvature = curvature(value, gradient, residuals, from);
      double[] move = move(curvature, gradient);
      double promise = 0;
      for (int c = 0; c < move.length; c++) {
        promise -= 0.5 * move[c] * gradient[c];
      }
      if (promise < SETTLED || step == MOST_STEPS) {
        return curvature;
      }
      double better = moved(move, value, residuals, from);
      if (!(better < value)) {
        return curvature;
      }
      value = better;
    }
  }

  /** Halves a step until it leads down, and takes it; the old value if none does. */
  private double moved(double[] move, double value, double[] residuals, int from) {
    for (double share = 1; share > 1e-3; share /= 2) {
      double[] trial = mode.clone();
      for (int c = 0; c < trial.length; c++) {
        trial[c] += share * move[c];
      }
      double better = misfit(trial, residuals, from);
      if (better < value) {
        System.arraycopy(trial, 0, mode, 0, trial.length);
        return better;
      }
    }
    return value;
  }

  /** −curvature⁻¹ gradient, no longer than a prior standard deviation each. */
  private static double[] move(double[][] curvature, double[] gradient) {
    double[][] inverse = Cholesky.of(curvature).inverse();
    double[] move = new double[gradient.length];
    double factor = 1;
    for (int c = 0; c < move.length; c++) {
      for (int d = 0; d < move.length; d++) {
        move[c] -= inverse[c][d] * gradient[d];
      }
      factor = Math.min(factor, PRIOR[c] / Math.abs(move[c]));
    }
    for (int c = 0; c < move.length; c++) {
      move[c] *= factor;
    }
    return move;
  }

  /** Gradient and curvature by differences; the curvature of the prior alone if not convex. */
  private double[][] curvature(double value, double[] gradient, double[] residuals, int from) {
    int n = mode.length;
    double[][] curvature = new double[n][n];
    for (int c = 0; c < n; c++) {
      double above = shifted(c, DIFFERENCE, c, 0, residuals, from);
      double below = shifted(c, -DIFFERENCE, c, 0, residuals, from);
      gradient[c] = (above - below) / (2 * DIFFERENCE);
      curvature[c][c] = (above - 2 * value + below) / (DIFFERENCE * DIFFERENCE);
      for (int d = 0; d < c; d++) {
        double mixed =
            shifted(c, DIFFERENCE, d, DIFFERENCE, residuals, from)
                - shifted(c, DIFFERENCE, d, -DIFFERENCE, residuals, from)
                - shifted(c, -DIFFERENCE, d, DIFFERENCE, residuals, from)
                + shifted(c, -DIFFERENCE, d, -DIFFERENCE, residuals, from);
        curvature[c][d] = mixed / (4 * DIFFERENCE * DIFFERENCE);
        curvature[d][c] = curvature[c][d];
      }
    }
    return Cholesky.isPositive(curvature) ? curvature : priorCurvature();
  }

  private double shifted(int c, double byC, int d, double byD, double[] residuals, int from) {
    double[] logs = mode.clone();
    logs[c] += byC;
    logs[d] += byD;
    return misfit(logs, residuals, from);
  }

  private static double[][] priorCurvature() {
    double[][] curvature = new double[PRIOR.length][PRIOR.length];
    for (int c = 0; c < PRIOR.length; c++) {
      curvature[c][c] = 1 / (PRIOR[c] * PRIOR[c]);
    }
    return curvature;
  }

  /** How many error models. */
  int size() {
    return whitenings.size();
  }

  /** How many readings. */
  int readings() {
    return series.size();
  }

  /** Whitening under one of them. */
  Whitening whitening(int node) {
    return whitenings.get(node);
  }

  /** Logarithm of the weight of one of them. */
  double logWeight(int node) {
    return logWeights.get(node);
  }

  /** The most probable logarithms of drift spread, drift time and noise over their medians. */
  double logarithm(int which) {
    return mode[which];
  }

  /** Between what was believed of these and what the residuals say. */
  Conflict conflict() {
    double[][] prior = new double[PRIOR.length][PRIOR.length];
    for (int c = 0; c < PRIOR.length; c++) {
      prior[c][c] = PRIOR[c] * PRIOR[c];
    }
    Cholesky factor = Cholesky.of(prior);
    return Conflict.of(MapEstimate.Direction.all(factor, covariance), factor.whitened(mode));
  }

  /** The most probable error model. */
  ErrorModel mode() {
    return model(mode);
  }

  /** Minus the logarithm of the density of residuals, averaged over the error models. */
  double negativeLogDensity(double[] residuals, int from) {
    double[] logs = new double[size()];
    double most = Double.NEGATIVE_INFINITY;
    for (int g = 0; g < logs.length; g++) {
      logs[g] = logWeight(g) - whitening(g).negativeLogDensity(residuals, from);
      most = Math.max(most, logs[g]);
    }
    double sum = 0;
    for (double each : logs) {
      sum += StrictMath.exp(each - most);
    }
    return -most - StrictMath.log(sum);
  }
}
