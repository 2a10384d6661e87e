package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.material.Material;
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

  private final Stepper stepper;
  private final StageProgress progress;
  private final Counters counters;
  private final DenseStep dense;
  private final double accuracy;
  private final long mostSteps;
  private final double cellSquared;
  private double firstStep;
  private State state;
  private State next;
  private @Nullable TangentIntegration tangents;

  StageIntegration(HeatProblem problem, double accuracy, long mostSteps, double startTemperature) {
    Grid grid = problem.grid();
    this.counters = new Counters();
    this.stepper = new Stepper(problem, accuracy, counters);
    this.progress = new StageProgress(accuracy);
    this.accuracy = accuracy;
    this.mostSteps = mostSteps;
    this.state = new State(grid.cells(), problem.material().isConstant());
    this.next = new State(grid.cells(), problem.material().isConstant());
    this.dense = new DenseStep(state, next, stepper.stageFaces);
    double width = grid.width(grid.upper().cell());
    this.cellSquared = width * width;
    start(startTemperature);
  }

  /**
   * Begins another cook on the same grid.
   *
   * @param material constant if and only if the material so far is
   * @param length what ξ = 1 stands for [m]
   * @param depth of the body behind each square metre of face [m]
   */
  void reset(Material material, double length, double depth, double startTemperature) {
    stepper.bind(material, length, depth);
    counters.clear();
    start(startTemperature);
  }

  /** Goes on from where a cook with the same body stood. */
  void resume(Standing from) {
    state.copy(from.state());
    counters.copy(from.counters());
  }

  private void start(double temperature) {
    firstStep = StageProgress.firstStep(accuracy) * cellSquared / stepper.timeScale();
    state.clear();
    java.util.Arrays.fill(state.temperature, temperature);
    java.util.Arrays.fill(state.face, temperature);
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

  Stepper stepper() {
    return stepper;
  }

  /** Carries derivatives along from here on. */
  void follow(TangentIntegration tangents) {
    this.tangents = tangents;
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
   * @param upper law that knows when its stage began
   * @param lower the same of the lower face
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
    if (tangents != null) {
      tangents.restarted(state);
    }
    if (threshold != null && threshold.missing(state) <= 0) {
      return End.THRESHOLD;
    }
    double period = Math.min(upper.shortestPeriod(), lower.shortestPeriod());
    progress.begin(state.time + duration, period, firstStep);
    while (state.time < progress.end()) {
      if (counters.acceptedSteps + counters.rejectedSteps >= mostSteps) {
        return End.TOO_MANY_STEPS;
      }
      boolean solved = stepper.attempt(state, progress.nextStep(state.time), next);
      StageProgress.Verdict verdict = judge(solved, threshold);
      switch (verdict) {
        case ACCEPT -> accept(listener);
        case ACCEPT_LAST -> {
          next.time = progress.end();
          accept(listener);
        }
        case ACCEPT_THRESHOLD -> {
          accept(listener);
          return End.THRESHOLD;
        }
        case REPEAT -> counters.rejectedSteps++;
        case GIVE_UP -> {
          return solved ? End.STEP_TOO_SMALL : End.FACE_UNBALANCED;
        }
      }
    }
    return End.DURATION;
  }

  private StageProgress.Verdict judge(boolean solved, @Nullable Threshold threshold) {
    double error = solved ? stepper.error() : Double.NaN;
    double growth = StepControl.growth(error, accuracy);
    if (!progress.accepts(error)) {
      return progress.refuse(solved, error, growth);
    }
    if (threshold == null) {
      return progress.keep(state.time, error, growth);
    }
    StepReading reading = dense.between(state, next).reading(threshold.reading());
    return progress.keep(state.time, error, growth, threshold, reading);
  }

  private void accept(StepListener listener) {
    counters.acceptedSteps++;
    listener.accepted(dense.between(state, next));
    if (tangents != null) {
      tangents.accepted(dense);
    }
    State former = state;
    state = next;
    next = former;
  }
}
