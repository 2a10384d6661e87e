package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.surface.SurfaceLaw;

/** Integrates one stage after another from a state that it owns. */
final class StageIntegration {

  /** How a stage came to its end. */
  enum End {
    DURATION,
    THRESHOLD,
    TOO_MANY_STEPS,
    STEP_TOO_SMALL,
    FACE_UNBALANCED
  }

  /**
   * First step of a stage in units of the time in which heat crosses the cell at the face, d²/α.
   */
  private static final double FIRST_STEP = 0.5;

  private static final double PERIOD_SHARE = 0.25;
  private static final double SMALLEST_STEP = 1e-9;
  private static final double SHRINK_AFTER_FAILURE = 0.25;
  private static final double EVENT_TIME_TOLERANCE = 1e-4;
  private static final double EVENT_TEMPERATURE_TOLERANCE = 1e-9;
  private static final int MOST_EVENT_ATTEMPTS = 40;

  /** Places inside a step where a threshold is looked for besides the end. */
  private static final double[] INSIDE = {0.25, 0.5, 0.75};

  private final Stepper stepper;
  private final StepControl control;
  private final Counters counters;
  private final long mostSteps;
  private final double firstStep;
  private State state;
  private State next;
  private final DenseStep dense;

  StageIntegration(HeatProblem problem, double accuracy, long mostSteps, double startTemperature) {
    Grid grid = problem.grid();
    this.counters = new Counters();
    this.stepper = new Stepper(problem, accuracy, counters);
    this.control = new StepControl(accuracy);
    this.mostSteps = mostSteps;
    this.state = new State(grid.cells(), problem.material().isConstant());
    this.next = new State(grid.cells(), problem.material().isConstant());
    this.dense = new DenseStep(state, next, stepper.stageFace);
    double width = grid.width(grid.upper().cell());
    this.firstStep = FIRST_STEP * width * width / stepper.timeScale();
    java.util.Arrays.fill(state.temperature, startTemperature);
    java.util.Arrays.fill(state.face, startTemperature);
    resetEnthalpy();
  }

  /** Makes the enthalpies those of the temperatures; for starts that are not uniform. */
  void resetEnthalpy() {
    for (int i = 0; i < state.temperature.length; i++) {
      state.enthalpy[i] = stepper.material().enthalpy(state.temperature[i]);
    }
  }

  State state() {
    return state;
  }

  Counters counters() {
    return counters;
  }

  ScaledMaterial material() {
    return stepper.material();
  }

  /**
   * Integrates a stage.
   *
   * @param duration longest duration [s]
   * @param threshold ends the stage when reached, null for none
   * @param listener told of each accepted step
   */
  End run(
      SurfaceLaw upper,
      SurfaceLaw lower,
      double duration,
      @Nullable Threshold threshold,
      StepListener listener) {
    stepper.laws(upper, lower);
    if (!stepper.restart(state)) {
      return End.FACE_UNBALANCED;
    }
    control.restart();
    if (threshold != null && threshold.missing(state) <= 0) {
      return End.THRESHOLD;
    }
    double end = state.time + duration;
    double longest = PERIOD_SHARE * Math.min(upper.shortestPeriod(), lower.shortestPeriod());
    return steps(end, longest, threshold, listener);
  }

  private End steps(
      double end, double longest, @Nullable Threshold threshold, StepListener listener) {
    double wish = firstStep;
    while (state.time < end) {
      if (counters.acceptedSteps + counters.rejectedSteps >= mostSteps) {
        return End.TOO_MANY_STEPS;
      }
      double step = fit(Math.min(wish, longest), end - state.time);
      boolean solved = stepper.attempt(state, step, next);
      double error = solved ? stepper.error() : Double.NaN;
      if (!control.accepts(error)) {
        counters.rejectedSteps++;
        wish = step * (error >= 0 ? control.factor(error) : SHRINK_AFTER_FAILURE);
        if (!(wish > SMALLEST_STEP * Math.max(1, end))) {
          return solved ? End.STEP_TOO_SMALL : End.FACE_UNBALANCED;
        }
        continue;
      }
      dense.between(state, next);
      if (threshold != null) {
        double share = crossing(threshold, dense);
        if (share < Double.POSITIVE_INFINITY) {
          locate(threshold, share * step);
          accept(listener);
          return End.THRESHOLD;
        }
      }
      boolean last = step >= end - state.time;
      accept(listener);
      if (last) {
        state.time = end;
      }
      wish = step * control.factor(error);
    }
    return End.DURATION;
  }

  /** Step that ends with the stage, or leaves at least as much for the next. */
  private static double fit(double step, double remaining) {
    if (step >= remaining) {
      return remaining;
    }
    return 2 * step > remaining ? remaining / 2 : step;
  }

  private void accept(StepListener listener) {
    counters.acceptedSteps++;
    listener.accepted(dense);
    State former = state;
    state = next;
    next = former;
  }

  /**
   * First share θ of a step at which the threshold is passed, by the dense output; infinite if not.
   */
  private static double crossing(Threshold threshold, DenseStep dense) {
    double before = 0;
    for (double theta : INSIDE) {
      if (threshold.missing(dense, theta) <= 0) {
        return root(threshold, dense, before, theta);
      }
      before = theta;
    }
    if (threshold.missing(dense.to()) <= 0) {
      return root(threshold, dense, before, 1);
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double root(Threshold threshold, DenseStep dense, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < MOST_EVENT_ATTEMPTS; i++) {
      double middle = 0.5 * (a + b);
      if (threshold.missing(dense, middle) <= 0) {
        b = middle;
      } else {
        a = middle;
      }
    }
    return b;
  }

  /**
   * Repeats the step with the length at which the threshold is met, by the secant rule inside a
   * bracket.
   */
  private void locate(Threshold threshold, double firstGuess) {
    double low = 0;
    double missingLow = threshold.missing(state);
    double high = Double.POSITIVE_INFINITY;
    double missingHigh = Double.NaN;
    double step = firstGuess;
    for (int i = 0; i < MOST_EVENT_ATTEMPTS; i++) {
      stepper.attempt(state, step, next);
      counters.rejectedSteps++;
      double missing = threshold.missing(next);
      if (missing > 0) {
        low = step;
        missingLow = missing;
      } else {
        high = step;
        missingHigh = missing;
      }
      boolean met = Math.abs(missing) <= EVENT_TEMPERATURE_TOLERANCE;
      if (met || high - low <= EVENT_TIME_TOLERANCE) {
        break;
      }
      step = nextTrial(low, missingLow, high, missingHigh, step);
    }
    counters.rejectedSteps--;
  }

  private static double nextTrial(
      double low, double missingLow, double high, double missingHigh, double step) {
    if (high == Double.POSITIVE_INFINITY) {
      return step * 1.01 + EVENT_TIME_TOLERANCE;
    }
    double secant = low + (high - low) * missingLow / (missingLow - missingHigh);
    double margin = 0.01 * (high - low);
    return Math.max(low + margin, Math.min(high - margin, secant));
  }
}
