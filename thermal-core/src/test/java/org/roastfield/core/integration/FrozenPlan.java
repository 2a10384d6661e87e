package org.roastfield.core.integration;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;

/**
 * The grid and the lengths of all steps of one run, with which other cooks are computed: a smooth
 * function of their numbers. The last step of a stage alone moves with the stage's end.
 */
public final class FrozenPlan {

  private static final double BALANCE_ACCURACY = 1e-9;
  private static final int MOST_TRIALS = 60;

  private final Grid grid;
  private final List<double[]> lengths = new ArrayList<>();
  private final List<Double> starts = new ArrayList<>();

  private FrozenPlan(Grid grid) {
    this.grid = grid;
  }

  /** Records the run of a cook, which must complete. */
  public static FrozenPlan of(Cook cook, CookIntegration.Accuracy accuracy) {
    FrozenPlan plan = new FrozenPlan(CookIntegration.grid(cook, accuracy));
    CookIntegration integration = CookIntegration.of(cook, accuracy);
    for (Stage stage : cook.stages()) {
      List<Double> steps = new ArrayList<>();
      CookIntegration.End end =
          integration.run(
              stage,
              step -> {
                plan.starts.add(step.start());
                steps.add(step.end() - step.start());
              });
      if (end != CookIntegration.End.RULE_MET) {
        throw new IllegalArgumentException("cook must complete, was " + end);
      }
      plan.lengths.add(steps.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return plan;
  }

  /**
   * Start of a step in the recorded run [s]: the replay of the same cook meets thresholds more
   * exactly, so its steps start up to 0.1 ms elsewhere.
   */
  public double start(int step) {
    return starts.get(step);
  }

  /** Computes a cook with these steps. */
  public Replay replay(Cook cook) {
    return new Replay(cook);
  }

  /** A cook on the plan. */
  public final class Replay {

    private final Cook cook;
    private final Stepper stepper;
    private final Trajectory trajectory;
    private final double[] ends = new double[lengths.size()];
    private final double[] cores = new double[lengths.size()];
    private final double[] surfaces = new double[lengths.size()];
    private double begun;
    private State state;
    private State next;

    private Replay(Cook cook) {
      this.cook = cook;
      HeatProblem problem =
          new HeatProblem(
              grid,
              CookIntegration.length(cook),
              cook.cut().material(),
              null,
              cook.cut().shape().volumePerArea());
      stepper = new Stepper(problem, BALANCE_ACCURACY, new Counters());
      state = new State(grid.cells(), problem.material().isConstant());
      next = new State(grid.cells(), problem.material().isConstant());
      double start = cook.cut().startTemperature();
      java.util.Arrays.fill(state.temperature, start);
      java.util.Arrays.fill(state.face, start);
      java.util.Arrays.fill(state.enthalpy, stepper.material().enthalpy(start));
      trajectory = new Trajectory(grid, state);
      for (int i = 0; i < ends.length; i++) {
        run(i);
      }
    }

    private void run(int i) {
      Stage stage = cook.stages().get(i);
      if (!stage.continued()) {
        begun = state.time;
      }
      stepper.laws(stage.upper().from(begun), stage.lower().from(begun));
      state.carried.pouring[State.UPPER] = stage.wetting().upper();
      state.carried.pouring[State.LOWER] = stage.wetting().lower();
      require(stepper.restart(state));
      double start = state.time;
      double[] steps = lengths.get(i);
      for (int j = 0; j < steps.length; j++) {
        double h = j < steps.length - 1 ? steps[j] : last(stage.end(), start, steps[j]);
        require(stepper.attempt(state, h, next));
        trajectory.accepted(new DenseStep(state, next, stepper.stageFaces));
        State former = state;
        state = next;
        next = former;
      }
      ends[i] = state.time;
      cores[i] = now(reading(Probe.CORE), state);
      surfaces[i] = now(reading(Probe.SURFACE), state);
    }

    private double last(StageEnd rule, double start, double planned) {
      if (rule instanceof StageEnd.After after) {
        return start + after.duration() - state.time;
      }
      if (rule instanceof StageEnd.At at) {
        return at.time() - state.time;
      }
      if (rule instanceof StageEnd.Rises rises) {
        return lengthTo(reading(rises.probe()), rises.temperature(), planned);
      }
      StageEnd.Falls falls = (StageEnd.Falls) rule;
      return lengthTo(reading(falls.probe()), falls.temperature(), planned);
    }

    /** Secant rule for the length at which a reading has a value. */
    private double lengthTo(Reading reading, double temperature, double planned) {
      double a = 0.999 * planned;
      double fa = after(a, reading) - temperature;
      double b = planned;
      for (int trial = 0; trial < MOST_TRIALS; trial++) {
        double fb = after(b, reading) - temperature;
        if (Math.abs(fb) < 1e-12 || fb == fa) {
          return b;
        }
        double c = b - fb * (b - a) / (fb - fa);
        a = b;
        fa = fb;
        b = c;
        if (Math.abs(b - a) < 1e-13 * planned) {
          return b;
        }
      }
      throw new IllegalStateException("no length of the last step reaches " + temperature + " K");
    }

    private double after(double length, Reading reading) {
      require(stepper.attempt(state, length, next));
      return now(reading, next);
    }

    /** Reading of a probe, where this cook has it if it lists one of that name. */
    private Reading reading(Probe probe) {
      Probe own =
          cook.probes().stream()
              .filter(listed -> listed.name().equals(probe.name()))
              .findFirst()
              .orElse(probe);
      return Reading.at(grid, CookIntegration.place(cook, own, grid.isTwoSided()));
    }

    private static double now(Reading reading, State at) {
      return reading.of(at.temperature, at.surface(State.UPPER), at.surface(State.LOWER));
    }

    private static void require(boolean solved) {
      if (!solved) {
        throw new IllegalStateException("a step of the plan could not be solved");
      }
    }

    /** All steps. */
    public Trajectory trajectory() {
      return trajectory;
    }

    /** Reading of the core. */
    public Reading coreReading() {
      return reading(Probe.CORE);
    }

    /** Number of steps. */
    public int steps() {
      return trajectory.steps();
    }

    /** Start of a step [s]. */
    public double stepStart(int step) {
      return trajectory.stepStart(step);
    }

    /** End of a step [s]. */
    public double stepEnd(int step) {
      return trajectory.stepEnd(step);
    }

    /** Temperature at a probe inside a step [K]. */
    public double at(Probe probe, int step, double time) {
      return trajectory.inStep(reading(probe), step, time);
    }

    /** End of a stage [s]. */
    public double end(int stage) {
      return ends[stage];
    }

    /** Core at the end of a stage [K]. */
    public double core(int stage) {
      return cores[stage];
    }

    /** Surface at the end of a stage [K]. */
    public double surface(int stage) {
      return surfaces[stage];
    }

    /** Water evaporated from the upper face [kg/m²]. */
    public double evaporated() {
      return state.evaporated[State.UPPER];
    }

    /** Water evaporated from the lower face [kg/m²]. */
    public double evaporatedLower() {
      return state.evaporated[State.LOWER];
    }
  }
}
