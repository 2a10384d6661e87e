package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.CookVariations;
import org.roastfield.core.integration.TangentIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.units.Temperatures;

/** Computes cooks. Immutable and stateless: one simulator serves any number of threads. */
public final class Simulator {

  /** Below it a moist face comes to where vapour over ice would be asked for [K]. */
  private static final double FREEZING = SaturationPressure.LOWEST + 1;

  private final Settings settings;

  private Simulator(Settings settings) {
    this.settings = settings;
  }

  /** Simulator with {@link Settings#withDefaults()}. */
  public static Simulator withDefaults() {
    return new Simulator(Settings.withDefaults());
  }

  /** Simulator with the given settings. */
  public static Simulator with(Settings settings) {
    return new Simulator(settings);
  }

  /** How this simulator computes. */
  public Settings settings() {
    return settings;
  }

  /**
   * Computes a cook from time 0 to the end of its last stage.
   *
   * @return completed, or failed with reason, advice and what was computed so far; every run is
   *     bounded in time and steps
   */
  public Outcome run(Cook cook) {
    CookIntegration integration = CookIntegration.of(cook, settings.integrationAccuracy());
    return run(cook, integration, integration.newTrajectory(), null);
  }

  /**
   * Computes the cook at a point and the derivatives of what comes of it by each parameter.
   *
   * <p>The cook's own numbers (properties, size, start, laws at a face, end rules, probes) are
   * differentiated by central differences of the cooks that {@code cooks} builds next to the point,
   * two a parameter; where it accepts one side only, by one-sided ones. Laws need no derivatives,
   * but must be smooth near the faces' temperatures. A law that is equal on both sides of a
   * parameter costs nothing, so laws are best records.
   *
   * <p>Costs about half a plain run for each parameter: with six of them, about four plain runs.
   * Memory: 1.3 kB for each parameter and step with 40 cells.
   *
   * @param point the parameters
   * @param cooks builds the cook at a point; the same stages, kinds of end rules and faces
   *     everywhere near {@code point}
   * @throws IllegalArgumentException if cooks near the point differ in more than numbers
   */
  public Sensitivities sensitivities(ParameterPoint point, Function<ParameterPoint, Cook> cooks) {
    Cook cook = cooks.apply(point);
    CookIntegration integration = CookIntegration.of(cook, settings.integrationAccuracy());
    Trajectory trajectory = integration.newTrajectory();
    TangentIntegration tangents =
        integration.follow(CookVariations.around(point, cook, cooks), trajectory);
    double half = cook.cut().shape().halfThickness();
    StageSensitivity.Collector stages = new StageSensitivity.Collector(integration, tangents, half);
    Outcome outcome = run(cook, integration, trajectory, stages);
    return new Sensitivities(point, outcome, integration, tangents, stages.stages());
  }

  private Outcome run(
      Cook cook,
      CookIntegration integration,
      Trajectory trajectory,
      StageSensitivity.@Nullable Collector derivatives) {
    List<StageResult> results = new ArrayList<>();
    for (Stage stage : cook.stages()) {
      double start = integration.time();
      CookIntegration.End end = integration.run(stage, trajectory);
      if (end != CookIntegration.End.RULE_MET) {
        return failed(result(cook, integration, trajectory, results), stage, end);
      }
      results.add(stageResult(cook, integration, stage, start));
      if (derivatives != null) {
        derivatives.ended();
      }
    }
    return new Outcome.Completed(result(cook, integration, trajectory, results));
  }

  private static StageResult stageResult(
      Cook cook, CookIntegration integration, Stage stage, double start) {
    Reading lower = integration.readingAt(-cook.cut().shape().halfThickness());
    return new StageResult(
        stage.name(),
        start,
        integration.time(),
        stage.end().description(),
        integration.now(integration.reading(Probe.CORE)),
        integration.now(integration.reading(Probe.SURFACE)),
        integration.now(lower));
  }

  private SimulationResult result(
      Cook cook, CookIntegration integration, Trajectory trajectory, List<StageResult> stages) {
    List<Note> notes = Notes.of(cook, integration, trajectory, stages);
    return new SimulationResult(cook, settings, integration, trajectory, stages, notes);
  }

  private Outcome failed(SimulationResult partial, Stage stage, CookIntegration.End end) {
    String where =
        String.format(
            Locale.ROOT,
            "stage \"%s\" at %.0f s, core %.1f °C",
            stage.name(),
            partial.endTime(),
            Temperatures.toCelsius(partial.coreNow()));
    return switch (end) {
      case RULE_MET -> throw new IllegalArgumentException("end must not be " + end);
      case RULE_NOT_MET ->
          new Outcome.Failed(
              FailureReason.END_RULE_NOT_MET,
              stage.name(),
              partial.endTime(),
              where
                  + ": the rule \""
                  + stage.end().description()
                  + "\" was not met in the time allowed",
              stage.end() instanceof StageEnd.Falls
                  ? "cool the surroundings, raise the target or allow more time"
                  : "raise the chamber temperature, lower the target or allow more time",
              partial);
      case TOO_MANY_STEPS ->
          new Outcome.Failed(
              FailureReason.TOO_MANY_STEPS,
              stage.name(),
              partial.endTime(),
              where + ": " + settings.mostSteps() + " steps did not suffice",
              "ask for less accuracy, or allow more steps",
              partial);
      case STEP_TOO_SMALL ->
          new Outcome.Failed(
              FailureReason.STEP_TOO_SMALL,
              stage.name(),
              partial.endTime(),
              where + ": the step fell below round-off",
              "look for a surface law that is not continuous in surface temperature or time",
              partial);
      case FACE_UNBALANCED -> unbalanced(partial, stage, where);
    };
  }

  private static Outcome.Failed unbalanced(SimulationResult partial, Stage stage, String where) {
    return partial.coldestFaceNow() < FREEZING
        ? new Outcome.Failed(
            FailureReason.FACE_FREEZES,
            stage.name(),
            partial.endTime(),
            where + ": a face freezes",
            "warm the surroundings or what touches the cut: frozen food is out of range",
            partial)
        : new Outcome.Failed(
            FailureReason.FACE_UNBALANCED,
            stage.name(),
            partial.endTime(),
            where + ": no surface temperature balances the laws of the face",
            "look for a surface law whose flux rises with surface temperature or has no value"
                + " there; air by correlation has none where the mean of face and air is outside"
                + " 240-800 K",
            partial);
  }
}
