package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A mixture of normal distributions, one for each error model that the residuals may come from:
 * each with the curvature and the step from the mode that its own whitening gives, weighted by its
 * evidence. Its covariance is wider than that at the most likely errors, by what is not known of
 * them. Everything is to first order around the mode, as Laplace's approximation is.
 */
final class ErrorMixture {

  /** Combinations of nodes tried when there are several series; one series has all its nodes. */
  private static final int MOST_COMBINATIONS = 200;

  private final int n;
  private final double[][] information;
  private final double[] gradient;
  private final List<Part[]> parts = new ArrayList<>();
  private final double[] mean;
  private final double[][] covariance;

  /** What one series under one error model adds. */
  private static final class Part {

    private final double[][] information;
    private final double[] gradient;
    private final double logWeight;

    Part(double[][] information, double[] gradient, double logWeight) {
      this.information = information;
      this.gradient = gradient;
      this.logWeight = logWeight;
    }
  }

  /**
   * @param mode coordinates
   * @param residuals there
   * @param derivatives there, one row a coordinate
   */
  ErrorMixture(
      Prior prior,
      Evidence evidence,
      List<ErrorGrid> grids,
      double[] mode,
      double[] residuals,
      double[][] derivatives) {
    n = mode.length;
    information = prior.factor().inverse();
    gradient = new double[n];
    double[] mean = prior.mean();
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        gradient[p] += information[p][q] * (mode[q] - mean[q]);
      }
    }
    int row = 0;
    for (int s = 0; s < grids.size(); s++) {
      parts.add(parts(grids.get(s), residuals, derivatives, row));
      row += evidence.series().get(s).size();
    }
    for (SingleReading single : evidence.singles()) {
      addSingle(single, residuals[row], derivatives, row);
      row++;
    }
    this.mean = new double[n];
    covariance = new double[n][n];
    mix(mode);
  }

  private void addSingle(SingleReading single, double residual, double[][] by, int row) {
    double precision = 1 / (single.totalSpread() * single.totalSpread());
    for (int p = 0; p < n; p++) {
      gradient[p] += precision * by[p][row] * residual;
      for (int q = 0; q < n; q++) {
        information[p][q] += precision * by[p][row] * by[q][row];
      }
    }
  }

  private Part[] parts(ErrorGrid grid, double[] residuals, double[][] derivatives, int row) {
    Part[] of = new Part[grid.size()];
    int rows = grid.readings();
    double[] r = new double[rows];
    double[][] columns = new double[n][rows];
    for (int g = 0; g < of.length; g++) {
      Whitening whitening = grid.whitening(g);
      whitening.apply(residuals, row, r, 0);
      for (int p = 0; p < n; p++) {
        whitening.apply(derivatives[p], row, columns[p], 0);
      }
      double[][] curvature = new double[n][n];
      double[] slope = new double[n];
      for (int p = 0; p < n; p++) {
        slope[p] = product(columns[p], r);
        for (int q = 0; q <= p; q++) {
          curvature[p][q] = product(columns[p], columns[q]);
          curvature[q][p] = curvature[p][q];
        }
      }
      double logWeight = grid.logWeight(g) - 0.5 * product(r, r) - whitening.halfLogDeterminant();
      of[g] = new Part(curvature, slope, logWeight);
    }
    return of;
  }

  private void mix(double[] mode) {
    List<double[]> steps = new ArrayList<>();
    List<double[][]> covariances = new ArrayList<>();
    List<Double> logs = new ArrayList<>();
    for (Part[] combination : combinations()) {
      double[][] h = copy(information);
      double[] g = gradient.clone();
      double log = 0;
      for (Part part : combination) {
        add(h, part.information);
        for (int p = 0; p < n; p++) {
          g[p] += part.gradient[p];
        }
        log += part.logWeight;
      }
      Cholesky factor = Cholesky.of(h);
      double[][] inverse = factor.inverse();
      double[] step = new double[n];
      double gain = 0;
      for (int p = 0; p < n; p++) {
        for (int q = 0; q < n; q++) {
          step[p] -= inverse[p][q] * g[q];
        }
        gain -= 0.5 * step[p] * g[p];
      }
      steps.add(step);
      covariances.add(inverse);
      logs.add(log + gain - factor.halfLogDeterminant());
    }
    average(mode, steps, covariances, shares(logs));
  }

  /**
   * All nodes of one series; of several, independent draws of nodes in proportion to likelihood.
   */
  private List<Part[]> combinations() {
    List<Part[]> combinations = new ArrayList<>();
    if (parts.isEmpty()) {
      combinations.add(new Part[0]);
    } else if (parts.size() == 1) {
      for (Part part : parts.get(0)) {
        combinations.add(new Part[] {part});
      }
    } else {
      drawCombinations(combinations);
    }
    return combinations;
  }

  private void drawCombinations(List<Part[]> combinations) {
    SplittableRandom random = new SplittableRandom(1);
    for (int c = 0; c < MOST_COMBINATIONS; c++) {
      Part[] combination = new Part[parts.size()];
      for (int s = 0; s < combination.length; s++) {
        combination[s] = drawn(parts.get(s), random.nextDouble());
      }
      combinations.add(combination);
    }
  }

  /** A node by its likelihood at the mode; its weight is then spent. */
  private static Part drawn(Part[] of, double uniform) {
    List<Double> logs = new ArrayList<>();
    for (Part part : of) {
      logs.add(part.logWeight);
    }
    double[] shares = shares(logs);
    int chosen = 0;
    double reached = shares[0];
    while (reached < uniform && chosen < shares.length - 1) {
      reached += shares[++chosen];
    }
    return new Part(of[chosen].information, of[chosen].gradient, 0);
  }

  private void average(
      double[] mode, List<double[]> steps, List<double[][]> covariances, double[] shares) {
    double[] middle = new double[n];
    for (int c = 0; c < shares.length; c++) {
      for (int p = 0; p < n; p++) {
        middle[p] += shares[c] * steps.get(c)[p];
      }
    }
    for (int p = 0; p < n; p++) {
      mean[p] = mode[p] + middle[p];
      for (int q = 0; q < n; q++) {
        for (int c = 0; c < shares.length; c++) {
          double apart = (steps.get(c)[p] - middle[p]) * (steps.get(c)[q] - middle[q]);
          covariance[p][q] += shares[c] * (covariances.get(c)[p][q] + apart);
        }
      }
    }
  }

  private static double[] shares(List<Double> logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      most = Math.max(most, log);
    }
    double[] shares = new double[logs.size()];
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = StrictMath.exp(logs.get(i) - most);
      sum += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return shares;
  }

  /** Mean of the mixture. */
  double[] mean() {
    return mean;
  }

  /** Covariance of the mixture. */
  double[][] covariance() {
    return covariance;
  }

  private static void add(double[][] to, double[][] more) {
    for (int p = 0; p < to.length; p++) {
      for (int q = 0; q < to.length; q++) {
        to[p][q] += more[p][q];
      }
    }
  }

  private static double[][] copy(double[][] of) {
    double[][] copy = new double[of.length][];
    for (int p = 0; p < copy.length; p++) {
      copy[p] = of[p].clone();
    }
    return copy;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
