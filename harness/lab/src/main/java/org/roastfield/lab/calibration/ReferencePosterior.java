package org.roastfield.lab.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.LogDensity;
import org.roastfield.core.inference.Prior;

/**
 * Reference draws of several runs that know nothing of each other. A run that lost a peak on its
 * way cannot see that; that runs differ by more than their draws should shows it. Immutable.
 */
public final class ReferencePosterior {

  /** Largest {@link #scaleReduction} at which runs count as one: literature [Vehtari2021]. */
  public static final double CONVERGED = 1.01;

  private final List<ReferenceDraws> runs;
  private final int parameters;

  private ReferencePosterior(List<ReferenceDraws> runs, int parameters) {
    this.runs = List.copyOf(runs);
    this.parameters = parameters;
  }

  /**
   * Draws from a posterior, run after run.
   *
   * @param runs at least 2
   * @throws IllegalArgumentException if the runs are fewer, or as {@link TemperedSampler#sample}
   * @throws IllegalStateException as {@link TemperedSampler#sample}
   */
  public static ReferencePosterior of(
      int runs, TemperedSampler sampler, Prior prior, LogDensity density, RandomGenerator random) {
    Numbers.inRange("runs", runs, 2, 1000);
    List<ReferenceDraws> draws = new ArrayList<>();
    for (int r = 0; r < runs; r++) {
      draws.add(sampler.sample(prior, density, random));
    }
    return new ReferencePosterior(draws, prior.size());
  }

  /** The runs, all of one size. */
  public List<ReferenceDraws> runs() {
    return runs;
  }

  /** Mean of a number that follows from the coordinates. */
  public double mean(ToDoubleFunction<double[]> quantity) {
    return runs.stream().mapToDouble(run -> run.mean(quantity)).average().orElseThrow();
  }

  /** Standard error of that mean, from how far the runs lie apart. */
  public double standardError(ToDoubleFunction<double[]> quantity) {
    return Math.sqrt(betweenRuns(quantity) / runs.size());
  }

  /**
   * By what factor a spread may still be wrong, R̂ of Gelman and Rubin: the root of the variance
   * within runs and between them over that within; 1 if runs are alike, infinite if a quantity has
   * a value of its own in each.
   */
  public double scaleReduction(ToDoubleFunction<double[]> quantity) {
    double within =
        runs.stream().mapToDouble(run -> Math.pow(run.spread(quantity), 2)).average().orElseThrow();
    double between = betweenRuns(quantity);
    return between == 0 ? 1 : Math.sqrt(1 + between / within);
  }

  /** Whether every coordinate's {@link #scaleReduction} is below {@link #CONVERGED}. */
  public boolean isConverged() {
    for (int p = 0; p < parameters; p++) {
      int coordinate = p;
      if (!(scaleReduction(z -> z[coordinate]) < CONVERGED)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Draws of all runs, the same number of each, evenly spaced through its chains.
   *
   * @param each of a run, in [1, its size]
   * @return coordinates, [runs · each][parameter]
   */
  public double[][] evenly(int each) {
    return runs.stream()
        .flatMap(run -> List.of(run.evenly(each)).stream())
        .toArray(double[][]::new);
  }

  /** Variance of the runs' means. */
  private double betweenRuns(ToDoubleFunction<double[]> quantity) {
    double mean = mean(quantity);
    double squares = 0;
    for (ReferenceDraws run : runs) {
      squares += Math.pow(run.mean(quantity) - mean, 2);
    }
    return squares / (runs.size() - 1);
  }
}
