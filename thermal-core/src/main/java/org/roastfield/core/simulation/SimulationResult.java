package org.roastfield.core.simulation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.integration.ComputedCook;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.internal.Check;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Signal;

/** What came of one cook: stages, traces, profiles, balances and work. Immutable. */
public final class SimulationResult {

  private final Cook cook;
  private final Settings settings;
  private final ComputedCook integration;
  private final Trajectory trajectory;
  private final List<StageResult> stages;
  private final List<Note> notes;

  SimulationResult(
      Cook cook,
      Settings settings,
      ComputedCook integration,
      Trajectory trajectory,
      List<StageResult> stages,
      List<Note> notes) {
    this.cook = cook;
    this.settings = settings;
    this.integration = integration;
    this.trajectory = trajectory;
    this.stages = List.copyOf(stages);
    this.notes = List.copyOf(notes);
  }

  /** The cook that was computed. */
  public Cook cook() {
    return cook;
  }

  /** How it was computed. */
  public Settings settings() {
    return settings;
  }

  /** Time reached since the start of the cook [s]. */
  public double endTime() {
    return integration.time();
  }

  /** The stages that were completed, in order. */
  public List<StageResult> stages() {
    return stages;
  }

  /**
   * The completed stage of the given name, the first if several have it.
   *
   * @throws IllegalArgumentException if there is none
   */
  public StageResult stage(String name) {
    return stages.stream()
        .filter(stage -> stage.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name must be that of a completed stage, was \"" + name + "\""));
  }

  /** Temperature over time in the middle. */
  public Trace core() {
    return probe(Probe.CORE);
  }

  /** Temperature over time of the surface; in a slab, of the upper face. */
  public Trace upperSurface() {
    return probe(Probe.SURFACE);
  }

  /**
   * Temperature over time of a slab's lower face; that of the upper where the cut is treated alike
   * all round.
   */
  public Trace lowerSurface() {
    double distance = -cook.cut().shape().halfThickness();
    return new Trace("lower surface", integration.readingAt(distance), trajectory);
  }

  /**
   * Temperature over time at any place.
   *
   * @param position distance from the middle [m], between the ends of {@link #profile}
   */
  public Trace place(double position) {
    TemperatureProfile range = profile(endTime());
    double low = range.position(0);
    double inside =
        Check.inRoundedRange("position", position, low, range.position(range.size() - 1));
    String name = "place";
    return new Trace(
        name, Places.reading(trajectory.grid(), integration.extent(), inside), trajectory);
  }

  /** Start of the first step and ends of all steps [s]; a new array, of one time if none. */
  public double[] stepTimes() {
    double[] times = new double[trajectory.steps() + 1];
    times[0] = trajectory.start();
    for (int i = 0; i < trajectory.steps(); i++) {
      times[i + 1] = trajectory.stepEnd(i);
    }
    return times;
  }

  /** Temperature over time at a probe, whether listed in the cook or not. */
  public Trace probe(Probe probe) {
    return new Trace(probe.name(), integration.reading(probe), trajectory);
  }

  /**
   * What a probe shows over time, whether listed in the cook or not; {@link #probe} is the truth at
   * its tip.
   *
   * @throws IllegalArgumentException if it does not fit the cut, or its stem takes on a share of
   *     the temperature of the air, which is not known here
   */
  public ProbeTrace shownBy(Probe probe) {
    double share = probe.instrument().stem().airShare();
    if (share != 0) {
      throw new IllegalArgumentException(
          "airShare of probe " + probe.name() + " must be 0 where no air is given, was " + share);
    }
    return shownBy(probe, Signal.constant(cook.cut().startTemperature()));
  }

  /**
   * What a probe shows over time whose stem sticks out into air of a temperature [K].
   *
   * @throws IllegalArgumentException if it does not fit the cut
   */
  public ProbeTrace shownBy(Probe probe, Signal air) {
    StemSensing sensing = new StemSensing(integration, probe, cook.cut().shape(), air);
    return new ProbeTrace(probe, probe(probe), core(), trajectory, sensing);
  }

  /** Highest core temperature in a completed stage. */
  public Peak corePeak(StageResult stage) {
    return core().peak(stage.start(), stage.end());
  }

  /**
   * Temperature over depth at a time.
   *
   * @param time since the start of the cook [s], in [0, {@link #endTime()}]
   */
  public TemperatureProfile profile(double time) {
    double inside = Check.inRoundedRange("time", time, 0, endTime());
    return new TemperatureProfile(trajectory, integration.extent(), inside);
  }

  /** Core temperature at {@link #endTime()} [K]; that at the start if no step was made. */
  double coreNow() {
    return integration.now(integration.reading(Probe.CORE));
  }

  double coldestFaceNow() {
    double lower = -cook.cut().shape().halfThickness();
    return Math.min(
        integration.now(integration.reading(Probe.SURFACE)),
        integration.now(integration.readingAt(lower)));
  }

  /** Heat of the whole cook. */
  public EnergyBalance energy() {
    return new EnergyBalance(
        integration.stored(),
        integration.throughUpper(),
        integration.throughLower(),
        integration.turnover());
  }

  /** Water of the whole cook. */
  public WaterBalance water() {
    return water(cook.cut().material().moisture());
  }

  /**
   * Water of the whole cook, were this what is known of the food's water: what its inside pressed
   * out and its faces did not take is counted by it, while these took what they did.
   */
  public WaterBalance water(Moisture moisture) {
    return WaterBalance.of(cook, integration, trajectory, moisture);
  }

  /**
   * Water of the surface, or the upper face, since its first stage with memory; empty if its laws
   * never remembered.
   */
  public Optional<FaceWater> upperFaceWater() {
    return Optional.ofNullable(integration.faceWater(true));
  }

  /** Water of a slab's lower face, as {@link #upperFaceWater()}. */
  public Optional<FaceWater> lowerFaceWater() {
    return Optional.ofNullable(integration.faceWater(false));
  }

  /**
   * Water of the surface, or the upper face, at a time [kg/m²]: below 0 what a crust has lost, 0
   * while no law remembers it.
   *
   * @param time since the start of the cook [s], in [0, {@link #endTime()}]
   */
  public double upperFaceWaterAt(double time) {
    return trajectory.water(true, Check.inRoundedRange("time", time, 0, endTime()));
  }

  /**
   * Humidity ratio of the air around the surface, or the upper face, at {@link #endTime()} [kg/kg];
   * empty unless the face's law computes it from its vapour.
   */
  public OptionalDouble humidityRatio() {
    double humidity = integration.humidityRatio(true);
    return humidity > 0 ? OptionalDouble.of(humidity) : OptionalDouble.empty();
  }

  /** Work done. */
  public WorkCounters work() {
    return new WorkCounters(
        integration.acceptedSteps(),
        integration.rejectedSteps(),
        integration.solves(),
        integration.factorisations(),
        integration.fluxEvaluations());
  }

  /** What a reader must know. */
  public List<Note> notes() {
    return notes;
  }
}
