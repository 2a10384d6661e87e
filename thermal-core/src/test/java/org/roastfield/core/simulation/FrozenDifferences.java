package org.roastfield.core.simulation;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.integration.FrozenPlan;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * Central differences of cooks on the frozen step plan of one run, over a sweep of step sizes, and
 * how far derivatives are from them.
 */
final class FrozenDifferences {

  private static final double[] SWEEP = {1e-4, 1e-5, 1e-6, 1e-7};

  private static final double[] SHARES = {0.05, 0.3, 0.5, 0.8, 0.98};

  private final ParameterPoint point;
  private final Sensitivities sensitivities;
  private final FrozenPlan plan;
  private final FrozenPlan.Replay[][] above;
  private final FrozenPlan.Replay[][] below;
  private final FrozenPlan.Replay at;

  FrozenDifferences(Settings settings, ParameterPoint point, Function<ParameterPoint, Cook> cooks) {
    this.point = point;
    this.sensitivities = Simulator.with(settings).sensitivities(point, cooks);
    this.plan = FrozenPlan.of(cooks.apply(point), settings.integrationAccuracy());
    this.at = plan.replay(cooks.apply(point));
    this.above = new FrozenPlan.Replay[point.size()][SWEEP.length];
    this.below = new FrozenPlan.Replay[point.size()][SWEEP.length];
    for (int p = 0; p < point.size(); p++) {
      for (int i = 0; i < SWEEP.length; i++) {
        double value = point.coordinate(p).value();
        above[p][i] = plan.replay(cooks.apply(point.moved(p, value + step(p, i))));
        below[p][i] = plan.replay(cooks.apply(point.moved(p, value - step(p, i))));
      }
    }
  }

  Sensitivities sensitivities() {
    return sensitivities;
  }

  /** The cook at the point on the plan. */
  FrozenPlan.Replay at() {
    return at;
  }

  private double step(int p, int i) {
    return SWEEP[i] * point.coordinate(p).scale();
  }

  /** Error of one number's derivative times the parameter's scale, in the unit of the number. */
  double scaledError(int p, double derivative, ToDoubleFunction<FrozenPlan.Replay> number) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SWEEP.length; i++) {
      double rise = number.applyAsDouble(above[p][i]) - number.applyAsDouble(below[p][i]);
      least = Math.min(least, Math.abs(derivative - rise / (2 * step(p, i))));
    }
    return least * point.coordinate(p).scale();
  }

  /** Relative error of one number's derivative. */
  double error(int p, double derivative, ToDoubleFunction<FrozenPlan.Replay> number) {
    double least = Double.POSITIVE_INFINITY;
    double size = 0;
    for (int i = 0; i < SWEEP.length; i++) {
      double quotient =
          (number.applyAsDouble(above[p][i]) - number.applyAsDouble(below[p][i]))
              / (2 * step(p, i));
      least = Math.min(least, Math.abs(derivative - quotient));
      size = Math.max(size, Math.abs(quotient));
    }
    return least == 0 ? 0 : least / size;
  }

  /**
   * Error of a trace's derivative over its largest value, at five places of each step: to the
   * nearest of the differences whose cooks all have the place inside the same step. At least three
   * places of five must have one.
   */
  double error(int p, SensitivityTrace trace, Probe probe) {
    return error(p, trace, probe, 0);
  }

  /** The same without steps shorter than a length [s]. */
  double error(int p, SensitivityTrace trace, Probe probe, double shortest) {
    int steps = 0;
    double largest = 0;
    double worst = 0;
    int compared = 0;
    for (int step = 0; step < at.steps(); step++) {
      double h = at.stepEnd(step) - at.stepStart(step);
      steps += h < shortest ? 0 : 1;
      for (double share : SHARES) {
        if (h < shortest) {
          break;
        }
        double derivative = trace.at(p, plan.start(step) + share * h);
        largest = Math.max(largest, Math.abs(derivative));
        double error = pointError(p, derivative, probe, step, at.stepStart(step) + share * h);
        if (error < Double.POSITIVE_INFINITY) {
          worst = Math.max(worst, error);
          compared++;
        }
      }
    }
    if (compared < 3 * steps) {
      throw new IllegalStateException("only " + compared + " places of the plan can be compared");
    }
    return worst == 0 ? 0 : worst / largest;
  }

  private double pointError(int p, double derivative, Probe probe, int step, double time) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SWEEP.length; i++) {
      if (inside(above[p][i], step, time) && inside(below[p][i], step, time)) {
        double rise = above[p][i].at(probe, step, time) - below[p][i].at(probe, step, time);
        least = Math.min(least, Math.abs(derivative - rise / (2 * step(p, i))));
      }
    }
    return least;
  }

  private static boolean inside(FrozenPlan.Replay replay, int step, double time) {
    return time >= replay.stepStart(step) && time <= replay.stepEnd(step);
  }
}
