package org.roastfield.core.inference;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/**
 * Nonlinear least squares after [Levenberg1944] and [Marquardt1963], with steps scaled by the
 * derivatives seen as in [More1978] (but forgetting half of the largest at each step, so that a far
 * start does not slow the search for ever), and damping by the ratio of gained to promised
 * decrease. Immutable.
 *
 * <p>A search stops where a linear model promises less than a tolerance, or three steps in a row
 * brought less. Near round-off, where values no longer tell steps apart, the promise itself does.
 * It finds the certified answers of 26 of the 27 problems of [NistStrd2003] from their far starts,
 * and all from their near ones.
 */
public final class LevenbergMarquardt {

  private static final double FIRST_DAMPING = 1e-3;
  private static final double LEAST_DAMPING = 1e-20;
  private static final double MOST_DAMPING = 1e40;
  private static final double LEAST_GAIN = 1e-4;
  private static final double GOOD_GAIN = 0.75;
  private static final double POOR_GAIN = 0.25;
  private static final double EASED = 1.0 / 5;
  private static final double HARDENED = 6;

  /** Share of an unknown's scale that outlives a step on which its derivatives shrink. */
  private static final double REMEMBERED = 0.5;

  /** Steps in a row that may gain less than the tolerance. */
  private static final int MOST_IDLE = 3;

  /** Promises below this share of the value drown in its round-off. */
  private static final double POLISHED = 1e-10;

  private final double tolerance;
  private final int mostSteps;
  private final double[] longest;

  private LevenbergMarquardt(double tolerance, int mostSteps, double[] longest) {
    this.tolerance = tolerance;
    this.mostSteps = mostSteps;
    this.longest = longest;
  }

  /** A search to a promise of 1e-3 nat, at most 60 steps of any length. */
  public static LevenbergMarquardt standard() {
    return new LevenbergMarquardt(1e-3, 60, new double[0]);
  }

  /**
   * The same with another tolerance.
   *
   * @param nats decrease of half the sum of squares not worth another step, at least 0
   */
  public LevenbergMarquardt withTolerance(double nats) {
    return new LevenbergMarquardt(Check.notNegative("nats", nats), mostSteps, longest);
  }

  /**
   * The same with another limit of steps.
   *
   * @param steps at least 1
   */
  public LevenbergMarquardt withMostSteps(int steps) {
    return new LevenbergMarquardt(
        tolerance, Check.inRange("steps", steps, 1, Integer.MAX_VALUE), longest);
  }

  /**
   * The same with steps no longer than given ones, one an unknown; a longer step is shortened as a
   * whole.
   */
  public LevenbergMarquardt withLongestStep(double[] lengths) {
    for (double length : lengths) {
      Check.positive("lengths", length);
    }
    return new LevenbergMarquardt(tolerance, mostSteps, lengths.clone());
  }

  /**
   * Searches from a point on.
   *
   * @throws IllegalArgumentException if the start or the longest step has another length than the
   *     problem has unknowns
   */
  public LeastSquaresResult search(LeastSquaresProblem problem, double[] start) {
    int n = problem.unknowns();
    Check.inRange("length of start", start.length, n, n);
    if (longest.length > 0) {
      Check.inRange("length of the longest step", longest.length, n, n);
    }
    return new Search(problem, start).run();
  }

  /** One search: where it stands and what is known there. */
  private final class Search {

    private final LeastSquaresProblem problem;
    private final int n;
    private final double[] scale;
    private double[] x;
    private double[] r;
    private double[][] jacobian;
    private double[] trialResiduals;
    private double[][] trialJacobian;
    private double value;
    private double lastValue;
    private double damping = FIRST_DAMPING;
    private double hardening = HARDENED;
    private int steps;
    private int idle;
    private int evaluations;
    private int derivatives;

    Search(LeastSquaresProblem problem, double[] start) {
      this.problem = problem;
      n = problem.unknowns();
      x = start.clone();
      r = new double[problem.residuals()];
      trialResiduals = new double[r.length];
      jacobian = new double[n][r.length];
      trialJacobian = new double[n][r.length];
      scale = new double[n];
    }

    LeastSquaresResult run() {
      if (!evaluate(x, r, jacobian)) {
        return new LeastSquaresResult(
            LeastSquaresResult.Status.MODEL_FAILED,
            x,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            new double[n][n],
            new LeastSquaresResult.Work(steps, evaluations, derivatives));
      }
      value = halfSquares(r);
      Triangle triangle = linearised();
      while (true) {
        if (triangle.decrement() <= tolerance) {
          return result(LeastSquaresResult.Status.CONVERGED, triangle);
        }
        if (steps >= mostSteps) {
          return result(LeastSquaresResult.Status.MOST_STEPS, triangle);
        }
        double before = value;
        boolean polishing = triangle.decrement() < POLISHED * value;
        boolean moved = polishing ? polished(triangle) : descended(triangle);
        if (!moved) {
          return result(stuck(triangle), triangle);
        }
        steps++;
        idle = !polishing && before - value < tolerance ? idle + 1 : 0;
        if (idle == MOST_IDLE) {
          return result(LeastSquaresResult.Status.STALLED, linearised());
        }
        triangle = linearised();
      }
    }

    private LeastSquaresResult.Status stuck(Triangle triangle) {
      boolean failed = evaluations > 1 && !Double.isFinite(lastValue);
      boolean promising = triangle.decrement() > POLISHED * value;
      return failed && promising
          ? LeastSquaresResult.Status.MODEL_FAILED
          : LeastSquaresResult.Status.AT_ROUND_OFF;
    }

    private LeastSquaresResult result(LeastSquaresResult.Status status, Triangle triangle) {
      return new LeastSquaresResult(
          status,
          x,
          value,
          triangle.decrement(),
          triangle.curvature(),
          new LeastSquaresResult.Work(steps, evaluations, derivatives));
    }

    private Triangle linearised() {
      for (int p = 0; p < n; p++) {
        double length = Math.sqrt(2 * halfSquares(jacobian[p]));
        scale[p] = Math.max(REMEMBERED * scale[p], length > 0 ? length : Double.MIN_NORMAL);
      }
      return new Triangle(jacobian, r);
    }

    /** Shortens the step until it leads down; false if none that can be told from none does. */
    private boolean descended(Triangle triangle) {
      while (damping < MOST_DAMPING) {
        double[] d = shortened(triangle.step(damping, scale));
        double[] trial = sum(x, d);
        if (Arrays.equals(trial, x)) {
          return false;
        }
        boolean computed = evaluate(trial, trialResiduals, null);
        lastValue = computed ? halfSquares(trialResiduals) : Double.POSITIVE_INFINITY;
        double gain = (value - lastValue) / triangle.decrease(d);
        if (gain > LEAST_GAIN) {
          adapt(gain);
          evaluate(trial, trialResiduals, trialJacobian);
          accept(trial);
          return true;
        }
        damping *= hardening;
        hardening *= 2;
      }
      return false;
    }

    private void adapt(double gain) {
      hardening = HARDENED;
      if (gain > GOOD_GAIN) {
        damping = Math.max(LEAST_DAMPING, damping * EASED);
      } else if (gain < POOR_GAIN) {
        damping *= HARDENED;
      }
    }

    /** An undamped step, kept if the next one promises less. */
    private boolean polished(Triangle triangle) {
      double[] trial = sum(x, shortened(triangle.step(0, scale)));
      if (Arrays.equals(trial, x) || !evaluate(trial, trialResiduals, trialJacobian)) {
        return false;
      }
      lastValue = halfSquares(trialResiduals);
      Triangle next = new Triangle(trialJacobian, trialResiduals);
      boolean sameValue = lastValue <= value * (1 + POLISHED);
      if (!sameValue || !(next.decrement() < triangle.decrement())) {
        return false;
      }
      accept(trial);
      return true;
    }

    private void accept(double[] trial) {
      x = trial;
      double[] oldResiduals = r;
      r = trialResiduals;
      trialResiduals = oldResiduals;
      double[][] oldJacobian = jacobian;
      jacobian = trialJacobian;
      trialJacobian = oldJacobian;
      value = halfSquares(r);
    }

    private boolean evaluate(double[] at, double[] into, double @Nullable [][] derivativesInto) {
      evaluations++;
      if (derivativesInto != null) {
        derivatives++;
      }
      return problem.at(at, into, derivativesInto) && Double.isFinite(halfSquares(into));
    }

    private double[] shortened(double[] d) {
      double factor = 1;
      for (int p = 0; p < longest.length; p++) {
        factor = Math.min(factor, longest[p] / Math.abs(d[p]));
      }
      for (int p = 0; p < n; p++) {
        d[p] *= factor;
      }
      return d;
    }
  }

  private static double[] sum(double[] x, double[] d) {
    double[] sum = new double[x.length];
    for (int p = 0; p < sum.length; p++) {
      sum[p] = x[p] + d[p];
    }
    return sum;
  }

  private static double halfSquares(double[] r) {
    double sum = 0;
    for (double each : r) {
      sum += each * each;
    }
    return 0.5 * sum;
  }
}
