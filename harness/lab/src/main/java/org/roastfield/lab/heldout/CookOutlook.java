package org.roastfield.lab.heldout;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.DriftState;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.lab.score.ForecastCase;
import org.roastfield.lab.score.Predictive;

/** What is said at some time of when a cook gets to its target. */
final class CookOutlook {

  private static final double STEP = 120;
  private static final int DRAWS = 99;

  private final ScoredCook cook;
  private final double outcome;

  CookOutlook(ScoredCook cook) {
    this.cook = cook;
    this.outcome = reached(cook.times(), cook.readings(), cook.target(), Double.POSITIVE_INFINITY);
  }

  /** When the readings first got to the target [s]; ∞ if they did not. */
  double outcome() {
    return outcome;
  }

  /**
   * Forecast of a prior that is fitted to the log so far, with the drift that its residuals show.
   * An estimate that is not found leaves the prior.
   */
  ForecastCase fitted(Prior prior, double now, RandomGenerator random) {
    Calibration calibration = Calibration.of(prior, cook.evidence(now), cook.model(now));
    MapEstimate estimate = calibration.map();
    ErrorModel errors = estimate.isFound() ? estimate.errors(0) : ErrorModel.CORE;
    return drawn(estimate.asPrior(), errors, now, random);
  }

  /** Forecast of a prior that has seen nothing of the log. */
  ForecastCase unseen(Prior prior, double now, RandomGenerator random) {
    double[] ahead = ahead(0);
    double[] left = new double[DRAWS];
    for (int d = 0; d < DRAWS; d++) {
      double[] shown = cook.shown(prior.draw(random), ahead);
      double[] drift = new DriftState(ErrorModel.CORE, -STEP, 0, 0).path(ahead, random);
      left[d] = Math.max(0, reached(ahead, sum(shown, drift), cook.target(), cook.horizon()) - now);
    }
    return scored(Predictive.ofDraws(left), now);
  }

  /** Forecast of a straight line. */
  ForecastCase straight(double now) {
    double[] times = seen(now);
    double time = StraightLine.crossing(times, cook.readings(), cook.target(), cook.horizon());
    return scored(Predictive.ofPoint(time - now), now);
  }

  private ForecastCase drawn(Prior from, ErrorModel errors, double now, RandomGenerator random) {
    double[] seen = seen(now);
    double[] ahead = ahead(now);
    double[] all = new double[seen.length + ahead.length];
    System.arraycopy(seen, 0, all, 0, seen.length);
    System.arraycopy(ahead, 0, all, seen.length, ahead.length);
    double[] left = new double[DRAWS];
    for (int d = 0; d < DRAWS; d++) {
      double[] shown = cook.shown(from.draw(random), all);
      double[] residuals = new double[seen.length];
      for (int k = 0; k < seen.length; k++) {
        residuals[k] = cook.readings()[k] - shown[k];
      }
      double[] drift = DriftState.after(errors, seen, residuals).path(ahead, random);
      double[] later = sum(Arrays.copyOfRange(shown, seen.length, all.length), drift);
      left[d] = reached(ahead, later, cook.target(), cook.horizon()) - now;
    }
    return scored(Predictive.ofDraws(left), now);
  }

  private ForecastCase scored(Predictive forecast, double now) {
    return new ForecastCase(cook.name(), forecast, outcome - now).censoredAt(cook.horizon() - now);
  }

  private double[] seen(double now) {
    int count = 0;
    while (count < cook.times().length && cook.times()[count] <= now) {
      count++;
    }
    return Arrays.copyOf(cook.times(), count);
  }

  private double[] ahead(double now) {
    int count = (int) ((cook.horizon() - now) / STEP);
    double[] times = new double[count];
    for (int k = 0; k < count; k++) {
      times[k] = now + (k + 1) * STEP;
    }
    return times;
  }

  private static double[] sum(double[] a, double[] b) {
    double[] sum = a.clone();
    for (int k = 0; k < sum.length; k++) {
      sum[k] += b[k];
    }
    return sum;
  }

  /** When readings first get to a target, straight between them. */
  private static double reached(double[] times, double[] values, double target, double never) {
    for (int k = 0; k < times.length; k++) {
      if (values[k] >= target) {
        if (k == 0) {
          return times[0];
        }
        double share = (target - values[k - 1]) / (values[k] - values[k - 1]);
        return times[k - 1] + share * (times[k] - times[k - 1]);
      }
    }
    return never;
  }
}
