package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Derivatives of a cook by parameters, carried along with its integration: those of the discrete
 * scheme on its step plan. Steps keep their lengths, but for the last of a stage, which moves with
 * the stage's end.
 */
public final class TangentIntegration {

  private final Cook cook;
  private final List<CookVariation> variations;
  private final int faces;
  private final Stepper stepper;
  private final TangentStages stages;
  private final TangentStages lengthStages;
  private final Counters counters = new Counters();
  private final Tangents tangents;
  private final Tangents byLength;
  private final FaceSlopes slopes;

  private final TangentFronts fronts;

  /** Of the laws in the stages of the step whose length is changed. */
  private final FaceSlopes trends = new FaceSlopes(1, counters);

  private final TangentTrajectory trajectory;
  private final double[] shifts;

  /** Whether the slopes of each face's law are right in the stage at hand [2]. */
  private final boolean[] believed = new boolean[2];

  /** Laws of the stage at hand, from its beginning on [2]. */
  private final SurfaceLaw[] laws = {SurfaceLaw.insulated(), SurfaceLaw.insulated()};

  /** When what counts from the beginning of a stage began [s]. */
  private double begun;

  /** Its change [parameters] [s per unit of the parameter]. */
  private final double[] begunChange;

  private int stage = -1;
  private @Nullable DenseStep lastStep;

  TangentIntegration(
      Cook cook,
      List<CookVariation> variations,
      Stepper stepper,
      HeatProblem problem,
      Trajectory plain) {
    int n = problem.grid().cells();
    this.cook = cook;
    this.variations = List.copyOf(variations);
    this.stepper = stepper;
    this.faces = problem.grid().isTwoSided() ? 2 : 1;
    int size = variations.size();
    double kappa = problem.length() / stepper.material().conductivity();
    boolean constant = problem.material().isConstant();
    tangents = new Tangents(size, n, constant);
    fronts = new TangentFronts(cook, variations, stepper, problem, tangents, counters);
    stages =
        constant
            ? new TangentStepper(problem.grid(), stepper, kappa, size, fronts.faces())
            : new VaryingTangentStepper(problem.grid(), stepper, kappa, variations, fronts.faces());
    lengthStages =
        constant
            ? stages
            : new VaryingTangentStepper(problem.grid(), stepper, kappa, List.of(), fronts.faces());
    shifts = new double[size];
    begunChange = new double[size];
    for (int p = 0; p < size; p++) {
      CookVariation variation = variations.get(p);
      tangents.logTimeScale[p] = variation.logTimeScale();
      tangents.logResistance[p] = variation.logFaceResistance();
      tangents.logLength[p] = variation.logLength();
      tangents.logLambda[p] = tangents.logTimeScale[p];
      tangents.fill(p, variation.start());
      stages.fill(p, cook.cut().startTemperature(), tangents);
      if (variation.changesCut()) {
        tangents.move(p);
      }
    }
    byLength = new Tangents(1, n, constant);
    byLength.move(0);
    slopes = new FaceSlopes(size, counters);
    trajectory = new TangentTrajectory(plain);
  }

  /** Number of parameters. */
  public int parameters() {
    return tangents.size();
  }

  /** Derivatives of all steps so far. */
  public TangentTrajectory trajectory() {
    return trajectory;
  }

  /** Change of the time reached [s per unit of the parameter]. */
  public double time(int parameter) {
    return tangents.time[parameter];
  }

  /**
   * Change of a reading at the time reached, along with that time, at its place [K per unit of the
   * parameter].
   */
  public double now(int parameter, Reading reading) {
    return now(tangents, parameter, reading);
  }

  private static double now(Tangents t, int parameter, Reading reading) {
    return reading.ofCells(t.temperature[parameter], 0)
        + reading.upperWeight() * t.face[State.UPPER][parameter]
        + reading.lowerWeight() * t.face[State.LOWER][parameter];
  }

  /** Change of the water evaporated from the upper face [kg/m² per unit of the parameter]. */
  public double evaporatedUpper(int parameter) {
    return tangents.evaporated[State.UPPER][parameter];
  }

  /** Change of the water evaporated from the lower face [kg/m² per unit of the parameter]. */
  public double evaporatedLower(int parameter) {
    return tangents.evaporated[State.LOWER][parameter];
  }

  /** Change of the water of a face [kg/m² per unit of the parameter]. */
  CarriedWater carriedWater(boolean upper, int p) {
    int f = upper ? State.UPPER : State.LOWER;
    DenseStep step = lastStep;
    boolean crusted = step != null && step.to().carried.water[f] < 0;
    double held = tangents.water.now[f][p];
    double ranOff = tangents.given[f][p] + tangents.fed.now[f][p] - held;
    return new CarriedWater(tangents.drawn(f, p, crusted), tangents.poured[f][p], ranOff, held);
  }

  /** Change of the humidity ratio of the air around a face [kg/kg per unit of the parameter]. */
  double humidity(boolean upper, int parameter) {
    return tangents.humidity.now[upper ? State.UPPER : State.LOWER][parameter];
  }

  /** dT/dp at the start [K per unit of the parameter]. */
  public double start(int parameter) {
    return variations.get(parameter).start();
  }

  /**
   * A probe's reading, for derivatives.
   *
   * @param slope its derivative by ξ
   */
  public TangentReading reading(Probe probe, Reading reading, Reading slope) {
    double[] places = new double[tangents.size()];
    for (int p = 0; p < places.length; p++) {
      places[p] = variations.get(p).place(probe, cook.probes().contains(probe));
    }
    return new TangentReading(reading, slope, places);
  }

  /** A reading that stays at its ξ, for derivatives. */
  public TangentReading reading(Reading reading) {
    return new TangentReading(reading, reading, new double[tangents.size()]);
  }

  /** Solves for derivatives. */
  public long solves() {
    return counters.solves;
  }

  /** Evaluations of a face's laws for derivatives. */
  public long fluxEvaluations() {
    return counters.fluxEvaluations;
  }

  /** A stage has begun: faces are balanced anew. */
  void restarted(State state) {
    stage++;
    lastStep = null;
    java.util.Arrays.fill(tangents.length, 0);
    for (int p = 0; p < tangents.size(); p++) {
      if (variations.get(p).changesLaw(stage)) {
        tangents.move(p);
      }
    }
    begin(cook.stages().get(stage), state.time);
    boolean moving = anyTimeMoves();
    for (int f = 0; f < faces; f++) {
      if (fronts.isPresent(f)) {
        fronts.restarted(f, stage, state);
        fronts.differentiate(f, stage, begun, moving ? begunChange : null);
      } else {
        believed[f] = slopes.believes(laws[f], state.face[f], state.time);
        differentiate(f, state.face[f], state.time, moving);
      }
    }
    stages.restart(state, slopes, tangents);
    counters.solves += tangents.moving();
    trajectory.restarted(tangents);
  }

  private void begin(Stage now, double time) {
    if (!now.continued()) {
      begun = time;
      System.arraycopy(tangents.time, 0, begunChange, 0, begunChange.length);
    }
    laws[State.UPPER] = now.upper().from(begun);
    laws[State.LOWER] = now.lower().from(begun);
    fronts.laws(laws);
  }

  private boolean anyTimeMoves() {
    for (double time : tangents.time) {
      if (time != 0) {
        return true;
      }
    }
    return false;
  }

  private void differentiate(int f, double face, double time, boolean moving) {
    if (moving) {
      slopes.byTemperatureAndTime(f, laws[f], believed[f], face, time);
    } else {
      slopes.byTemperature(f, laws[f], believed[f], face, time);
    }
    for (int p = 0; p < tangents.size(); p++) {
      CookVariation variation = variations.get(p);
      if (variation.changesLaw(stage, f)) {
        slopes.byParameter(f, p, variation, stage, begun, face, time);
      } else {
        slopes.change[f][p] = 0;
        slopes.evaporationChange[f][p] = 0;
      }
    }
    if (moving && laws[f].remembers()) {
      slopes.byBeginning(f, laws[f], begun, begunChange, face, time);
    }
  }

  /** A step stands. */
  void accepted(DenseStep step) {
    lastStep = step;
    double h = step.end() - step.start();
    boolean moving = anyTimeMoves();
    TangentStages.begin(faces, tangents);
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      double share = Esdirk4.c(s);
      for (int f = 0; f < faces; f++) {
        if (fronts.isPresent(f)) {
          fronts.inStep(f, s, step);
          fronts.differentiate(f, stage, begun, moving ? begunChange : null);
        } else {
          double face = stepper.stageFaces.temperature[s][f];
          differentiate(f, face, step.start() + share * h, moving);
        }
      }
      stages.stage(s, h, slopes, share, tangents);
    }
    counters.solves += (long) (Esdirk4.STAGES - 1) * tangents.moving();
    trajectory.accepted(tangents);
  }

  /** The stage has ended after its duration. */
  void endedAfter() {
    for (int p = 0; p < shifts.length; p++) {
      shifts[p] = variations.get(p).target(stage);
    }
    moveEnd();
  }

  /** The stage has ended at a time. */
  void endedAt() {
    for (int p = 0; p < shifts.length; p++) {
      shifts[p] = variations.get(p).target(stage) - tangents.time[p];
    }
    moveEnd();
  }

  private void moveEnd() {
    DenseStep step = lastStep;
    boolean moves = false;
    for (double shift : shifts) {
      moves |= shift != 0;
    }
    if (step != null && moves) {
      differentiateByLength(step);
      applyShifts();
    }
  }

  /**
   * The stage has ended at a threshold, if after a step: the last step moves so that the reading
   * stays at the target.
   *
   * @param slope derivative of the reading by its place
   */
  void endedAt(Threshold threshold, Reading slope) {
    DenseStep step = lastStep;
    if (step == null) {
      return;
    }
    differentiateByLength(step);
    State to = step.to();
    Reading reading = threshold.reading();
    double byPlace = slope.of(to.temperature, to.surface(State.UPPER), to.surface(State.LOWER));
    double perSecond = now(byLength, 0, reading);
    for (int p = 0; p < shifts.length; p++) {
      CookVariation variation = variations.get(p);
      double change = now(tangents, p, reading) + variation.awaitedPlace(stage) * byPlace;
      shifts[p] = (variation.target(stage) - change) / perSecond;
    }
    applyShifts();
  }

  /** Derivative of the last step by its own length. */
  private void differentiateByLength(DenseStep step) {
    double h = step.end() - step.start();
    Tangents t = byLength;
    t.newTemperature(0);
    t.fill(0, 0);
    t.newRate(0);
    java.util.Arrays.fill(t.enthalpy[0], 0);
    java.util.Arrays.fill(t.enthalpyRate[0], 0);
    double[] rate = t.enthalpyRate[0].length > 0 ? t.enthalpyRate[0] : t.rate[0];
    Rows.add(rate.length, 1 / h, step.from().enthalpyRate, rate);
    t.time[0] = 0;
    t.length[0] = 1;
    t.logLambda[0] = 1 / h;
    for (int f = 0; f < faces; f++) {
      t.evaporation[f][0] = 0;
      t.evaporated[f][0] = 0;
      t.aside[f][0] = 0;
      t.given[f][0] = 0;
      CarriedFaces carried = step.from().carried;
      t.water.lengthen(f, carried.waterRate[f] / h);
      t.humidity.lengthen(f, carried.humidityRate[f] / h);
      t.fed.lengthen(f, carried.feeding[f] / h);
    }
    TangentStages.begin(faces, t);
    for (int s = 1; s < Esdirk4.STAGES; s++) {
      double[] face = stepper.stageFaces.temperature[s];
      double time = step.start() + Esdirk4.c(s) * h;
      for (int f = 0; f < faces; f++) {
        if (fronts.isPresent(f)) {
          fronts.inStep(f, s, step);
          fronts.byTime(f);
        } else {
          trends.byTemperatureAndTime(f, laws[f], believed[f], face[f], time);
        }
      }
      lengthStages.stage(s, h, trends, Esdirk4.c(s), t);
      counters.solves++;
    }
  }

  private void applyShifts() {
    for (int p = 0; p < shifts.length; p++) {
      if (shifts[p] != 0) {
        tangents.move(p);
        tangents.lengthen(p, shifts[p], byLength);
      }
    }
    trajectory.lengthened(tangents);
  }
}
