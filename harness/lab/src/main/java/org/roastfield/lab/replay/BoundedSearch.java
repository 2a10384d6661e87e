package org.roastfield.lab.replay;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.LeastSquaresProblem;
import org.roastfield.core.inference.LevenbergMarquardt;

/**
 * Least squares of a few parameters within bounds by {@link LevenbergMarquardt}, with central
 * differences. A search that leaves the bounds sees the nearest point within them, where what lies
 * beyond makes no difference; it goes on from there as long as a slope leads back inside.
 */
final class BoundedSearch implements LeastSquaresProblem {

  /** Decrease of half the sum of squares not worth another step [K²]. */
  private static final double SETTLED = 1e-9;

  private static final int MOST_STEPS = 100;

  /** Searches from one start, each but the first from a bound back inside. */
  private static final int MOST_SEARCHES = 5;

  /** Differences between computed and measured; infinite where nothing can be computed. */
  interface Residuals {
    double[] at(double[] parameters);
  }

  private final Residuals residuals;
  private final int count;
  private final double[] step;
  private final double[] low;
  private final double[] high;

  /**
   * @param count of the residuals
   * @param step half the difference for derivatives [parameters]
   * @param low lower bounds [parameters]
   * @param high upper bounds [parameters]
   */
  BoundedSearch(Residuals residuals, int count, double[] step, double[] low, double[] high) {
    this.residuals = residuals;
    this.count = count;
    this.step = step.clone();
    this.low = low.clone();
    this.high = high.clone();
  }

  /** Parameters of a least sum of squares near {@code start}. */
  double[] solve(double[] start) {
    double[] x = start.clone();
    for (int i = 0; i < MOST_SEARCHES && x.length > 0; i++) {
      double[] found =
          LevenbergMarquardt.standard()
              .withTolerance(SETTLED)
              .withMostSteps(MOST_STEPS)
              .search(this, x)
              .x();
      x = inside(found);
      if (Arrays.equals(x, found) || !leadsInside(found, x)) {
        break;
      }
    }
    return x;
  }

  /** Whether the squares become less from a bound inwards. */
  private boolean leadsInside(double[] found, double[] x) {
    double[] r = residuals.at(x);
    for (int p = 0; p < x.length; p++) {
      double slope = product(column(x, r, p), r);
      if ((found[p] < low[p] && slope < 0) || (found[p] > high[p] && slope > 0)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public int unknowns() {
    return step.length;
  }

  @Override
  public int residuals() {
    return count;
  }

  @Override
  public boolean at(double[] x, double[] r, double @Nullable [][] jacobian) {
    double[] inside = inside(x);
    double[] here = residuals.at(inside);
    System.arraycopy(here, 0, r, 0, count);
    if (jacobian != null) {
      for (int p = 0; p < x.length; p++) {
        boolean beyond = x[p] != inside[p];
        double[] slopes = beyond ? new double[count] : column(inside, here, p);
        System.arraycopy(slopes, 0, jacobian[p], 0, count);
      }
    }
    return Double.isFinite(squares(here));
  }

  /** Slopes by one parameter; to one side only at a bound or beside what cannot be computed. */
  private double[] column(double[] x, double[] here, int p) {
    double[] above = x.clone();
    double[] below = x.clone();
    above[p] = Math.min(high[p], x[p] + step[p]);
    below[p] = Math.max(low[p], x[p] - step[p]);
    double[] more = residuals.at(above);
    double[] less = residuals.at(below);
    if (!Double.isFinite(squares(more))) {
      more = here;
      above = x;
    }
    if (!Double.isFinite(squares(less))) {
      less = here;
      below = x;
    }
    double[] slopes = new double[count];
    for (int i = 0; i < count && above[p] > below[p]; i++) {
      slopes[i] = (more[i] - less[i]) / (above[p] - below[p]);
    }
    return slopes;
  }

  private double[] inside(double[] x) {
    double[] inside = new double[x.length];
    for (int p = 0; p < x.length; p++) {
      inside[p] = Math.max(low[p], Math.min(high[p], x[p]));
    }
    return inside;
  }

  /** Sum of squares; infinite where a difference is no number. */
  static double squares(double[] r) {
    double sum = product(r, r);
    return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
