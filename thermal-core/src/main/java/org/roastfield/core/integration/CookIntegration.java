package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.FaceWater;

/** Integration of a whole cook: chooses the grid, and offers what a result is made of. */
public final class CookIntegration implements ComputedCook {

  /**
   * Depth beyond which fluxes are of fourth order [m]; nearer to a face they overshoot when its
   * conditions jump.
   */
  private static final double COMPACT_DEPTH = 5e-3;

  private Cook cook;
  private final Grid grid;
  private double length;
  private final HeatProblem problem;
  private final StageIntegration stages;
  private final Balances balances;
  private final Threshold threshold;
  private double startEnthalpy;
  private double begun;
  private final Reading core;
  private final Reading surface;
  private final ToAll toAll;
  private @Nullable TangentIntegration tangents;

  private CookIntegration(Cook cook, Accuracy accuracy) {
    this.cook = cook;
    Material material = cook.cut().material();
    this.length = length(cook);
    this.grid = grid(cook, accuracy);
    this.problem =
        new HeatProblem(grid, length, material, null, cook.cut().shape().volumePerArea());
    this.stages =
        new StageIntegration(
            problem, accuracy.tolerance(), accuracy.mostSteps(), cook.cut().startTemperature());
    this.balances = new Balances(grid.cells(), material.lowest(), material.highest());
    this.core = readingAt(0);
    this.surface = Reading.at(grid, 1);
    this.threshold = new Threshold(core, 0, true);
    this.toAll = new ToAll(balances);
    this.startEnthalpy = stages.state().enthalpy[0];
  }

  /**
   * How accurately and finely to compute.
   *
   * @param tolerance of a step's error [K]
   * @param cells number of cells from a heated face to the middle
   * @param surfaceCell wished width at the faces [m]
   * @param mostSteps bound on accepted and repeated steps
   */
  public record Accuracy(double tolerance, int cells, double surfaceCell, long mostSteps) {}

  /** Keeps the balances and tells the caller; not a lambda, since the first of a JVM is dear. */
  private static final class ToAll implements StepListener {

    private final Balances balances;
    private @Nullable StepListener listener;

    ToAll(Balances balances) {
      this.balances = balances;
    }

    @Override
    public void accepted(DenseStep step) {
      balances.accepted(step);
      if (listener != null) {
        listener.accepted(step);
      }
    }
  }

  /** Integration of a cook. */
  public static CookIntegration of(Cook cook, Accuracy accuracy) {
    return new CookIntegration(cook, accuracy);
  }

  /** Whether another cook can take the place of this one: same kind of grid and of properties. */
  boolean fits(Cook other) {
    return other.isSymmetric() != grid.isTwoSided()
        && other.cut().shape().exponent() == grid.exponent()
        && other.cut().material().isConstant() == cook.cut().material().isConstant();
  }

  /** Begins another cook, one that {@link #fits}, on the same grid over ξ. */
  void reset(Cook other) {
    cook = other;
    length = length(other);
    Material material = other.cut().material();
    double depth = other.cut().shape().volumePerArea();
    stages.reset(material, length, depth, other.cut().startTemperature());
    balances.reset(material.lowest(), material.highest());
    startEnthalpy = stages.state().enthalpy[0];
    begun = 0;
  }

  /** Begins another cook where one stood that begins alike; sums that no record keeps do there. */
  void resume(Cook other, Standing from) {
    reset(other);
    begun = from.begun();
    stages.resume(from);
  }

  /** Where it stands, after what a record keeps of a member. */
  public Standing standing(MemberRecord record, int member) {
    return new Standing(cook, begun, stages.state(), stages.counters(), record, member);
  }

  /** Grid of a cook: of half the body where it is treated alike all round. */
  static Grid grid(Cook cook, Accuracy accuracy) {
    double length = length(cook);
    double relative = accuracy.surfaceCell() / length;
    double compact = COMPACT_DEPTH / length;
    return cook.isSymmetric()
        ? Grid.symmetric(cook.cut().shape().exponent(), accuracy.cells(), relative, compact)
        : Grid.twoSided(2 * accuracy.cells(), relative, compact);
  }

  /** What ξ = 1 stands for in the equations of a cook [m]. */
  static double length(Cook cook) {
    Shape shape = cook.cut().shape();
    return cook.isSymmetric() ? shape.equivalentRadius() : shape.thickness();
  }

  /** How a stage came to its end. */
  public enum End {
    RULE_MET,
    RULE_NOT_MET,
    TOO_MANY_STEPS,
    STEP_TOO_SMALL,
    FACE_UNBALANCED
  }

  /** Integrates a stage from where the last one ended, and keeps its steps in a trajectory. */
  public End run(Stage stage, Trajectory trajectory) {
    return run(stage, (StepListener) trajectory);
  }

  /** Integrates a stage from where the last one ended. */
  End run(Stage stage, StepListener listener) {
    toAll.listener = listener;
    double[] pouring = stages.state().carried.pouring;
    pouring[State.UPPER] = stage.wetting().upper();
    pouring[State.LOWER] = stage.wetting().lower();
    if (!stage.continued()) {
      begun = time();
    }
    StageEnd rule = stage.end();
    boolean awaiting = await(rule);
    StageIntegration.End end =
        stages.run(
            stage.upper().from(begun),
            stage.lower().from(begun),
            rule.longest(time()),
            awaiting ? threshold : null,
            toAll);
    if (tangents != null) {
      follow(tangents, end, rule);
    }
    return switch (end) {
      case THRESHOLD -> End.RULE_MET;
      case DURATION -> awaiting ? End.RULE_NOT_MET : End.RULE_MET;
      case TOO_MANY_STEPS -> End.TOO_MANY_STEPS;
      case STEP_TOO_SMALL -> End.STEP_TOO_SMALL;
      case FACE_UNBALANCED -> End.FACE_UNBALANCED;
    };
  }

  /**
   * Carries derivatives along from the start of the cook.
   *
   * @param variations one a parameter
   * @param trajectory that the steps are kept in
   */
  public TangentIntegration follow(List<CookVariation> variations, Trajectory trajectory) {
    TangentIntegration following =
        new TangentIntegration(cook, variations, stages.stepper(), problem, trajectory);
    stages.follow(following);
    tangents = following;
    return following;
  }

  private void follow(TangentIntegration tangents, StageIntegration.End end, StageEnd rule) {
    if (end == StageIntegration.End.THRESHOLD) {
      tangents.endedAt(threshold, slope(awaited(rule)));
    } else if (end == StageIntegration.End.DURATION && rule instanceof StageEnd.After) {
      tangents.endedAfter();
    } else if (end == StageIntegration.End.DURATION && rule instanceof StageEnd.At) {
      tangents.endedAt();
    }
  }

  private static Probe awaited(StageEnd rule) {
    return rule instanceof StageEnd.Rises rises ? rises.probe() : ((StageEnd.Falls) rule).probe();
  }

  private boolean await(StageEnd rule) {
    if (rule instanceof StageEnd.Rises rises) {
      threshold.set(reading(rises.probe()), rises.temperature(), true);
      return true;
    }
    if (rule instanceof StageEnd.Falls falls) {
      threshold.set(reading(falls.probe()), falls.temperature(), false);
      return true;
    }
    return false;
  }

  @Override
  public Reading reading(Probe probe) {
    return reading(probe, cook);
  }

  /** Reading of a probe in a cook on this grid. */
  Reading reading(Probe probe, Cook in) {
    if (probe.isCore()) {
      return core;
    }
    if (probe.depth() == 0) {
      return surface;
    }
    return readingAt(probe.distanceFromMiddle(in.cut().shape()), in);
  }

  @Override
  public Reading readingAt(double distance) {
    return readingAt(distance, cook);
  }

  /** Reading at a distance from the middle of a cook on this grid [m]. */
  Reading readingAt(double distance, Cook in) {
    return Reading.at(grid, place(distance, extent(in), grid.isTwoSided()));
  }

  /** Derivative by ξ of the reading of a probe, in kelvin for a unit of ξ. */
  public Reading slope(Probe probe) {
    return Reading.slopeAt(grid, place(cook, probe, grid.isTwoSided()));
  }

  /** ξ of a probe in a cook. */
  static double place(Cook cook, Probe probe, boolean twoSided) {
    Shape shape = cook.cut().shape();
    return place(probe.distanceFromMiddle(shape), extent(shape, twoSided), twoSided);
  }

  private static double place(double distance, double extent, boolean twoSided) {
    double xi = twoSided ? 0.5 + distance / extent : Math.abs(distance) / extent;
    return Math.max(0, Math.min(1, xi));
  }

  @Override
  public double extent() {
    return extent(cook);
  }

  /** What ξ = 1 stands for in the piece of a cook on this grid [m]. */
  double extent(Cook in) {
    return extent(in.cut().shape(), grid.isTwoSided());
  }

  private static double extent(Shape shape, boolean twoSided) {
    return twoSided ? shape.thickness() : shape.halfThickness();
  }

  /** An empty trajectory for this cook's steps, that starts now. */
  public Trajectory newTrajectory() {
    return new Trajectory(grid, stages.state());
  }

  @Override
  public double time() {
    return stages.state().time;
  }

  @Override
  public double now(Reading reading) {
    State state = stages.state();
    return reading.of(state.temperature, state.surface(State.UPPER), state.surface(State.LOWER));
  }

  @Override
  public double stored() {
    return heatUnit() * gained();
  }

  @Override
  public double throughUpper() {
    return heatUnit() * stages.state().heatTaken[State.UPPER];
  }

  @Override
  public double throughLower() {
    return heatUnit() * stages.state().heatTaken[State.LOWER];
  }

  @Override
  public double turnover() {
    return heatUnit() * balances.turnover();
  }

  @Override
  public double evaporatedUpper() {
    return stages.state().evaporated[State.UPPER];
  }

  @Override
  public double evaporatedLower() {
    return stages.state().evaporated[State.LOWER];
  }

  @Override
  public @Nullable FaceWater faceWater(boolean upper) {
    CarriedFaces carried = stages.state().carried;
    int f = upper ? State.UPPER : State.LOWER;
    return carried.begun[f] ? carried.water(f) : null;
  }

  @Override
  public CarriedWater carriedWater(boolean upper) {
    int f = upper ? State.UPPER : State.LOWER;
    CarriedFaces carried = stages.state().carried;
    double drawn = stages.state().drawn(f);
    return new CarriedWater(drawn, carried.poured[f], carried.dripped[f], carried.water[f]);
  }

  @Override
  public double humidityRatio(boolean upper) {
    return stages.state().carried.humidity[upper ? State.UPPER : State.LOWER];
  }

  /** Highest cell temperature so far [K]; negative infinity before the first step. */
  public double hottest() {
    return balances.hottest();
  }

  /** Lowest cell temperature so far [K]; infinity before the first step. */
  public double coldest() {
    return balances.coldest();
  }

  /** Time in which some cell was outside the range of the material's curves [s]. */
  public double timeOutside() {
    return balances.timeOutside();
  }

  @Override
  public long acceptedSteps() {
    return stages.counters().acceptedSteps;
  }

  @Override
  public long rejectedSteps() {
    return stages.counters().rejectedSteps;
  }

  @Override
  public long solves() {
    return stages.counters().solves;
  }

  @Override
  public long factorisations() {
    return stages.counters().factorisations;
  }

  @Override
  public long fluxEvaluations() {
    return stages.counters().fluxEvaluations;
  }

  private double heatUnit() {
    return stages.material().volumetricHeatCapacity() * length;
  }

  /**
   * Σ V (u − u at the start), which was the same in all cells: differences first, so that a little
   * heat in a thick cut does not drown in the round-off of all that the cut holds [K].
   */
  private double gained() {
    double sum = 0;
    for (int i = 0; i < grid.cells(); i++) {
      sum += grid.volume(i) * (stages.state().enthalpy[i] - startEnthalpy);
    }
    return sum;
  }
}
