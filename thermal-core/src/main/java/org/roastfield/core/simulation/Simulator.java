package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.units.Temperatures;

/** Computes cooks. Immutable and stateless: one simulator serves any number of threads. */
public final class Simulator {

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
    Trajectory trajectory = integration.newTrajectory();
    List<StageResult> results = new ArrayList<>();
    for (Stage stage : cook.stages()) {
      double start = integration.time();
      CookIntegration.End end = integration.run(stage, trajectory);
      if (end != CookIntegration.End.RULE_MET) {
        return failed(result(cook, integration, trajectory, results), stage, end);
      }
      results.add(stageResult(cook, integration, stage, start));
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
    return new SimulationResult(
        cook, settings, integration, trajectory, stages, notes(cook, integration));
  }

  private static List<Note> notes(Cook cook, CookIntegration integration) {
    List<Note> notes = new ArrayList<>();
    double lowest = cook.cut().material().lowest();
    double highest = cook.cut().material().highest();
    if (integration.hottest() > highest || integration.coldest() < lowest) {
      notes.add(
          new Note(
              "property range",
              String.format(
                  Locale.ROOT,
                  "cell temperatures ran from %.1f to %.1f °C; the properties of %s are known from %.1f to %.1f °C and"
                      + " were held constant outside for %.0f s",
                  Temperatures.toCelsius(integration.coldest()),
                  Temperatures.toCelsius(integration.hottest()),
                  cook.cut().material().name(),
                  Temperatures.toCelsius(lowest),
                  Temperatures.toCelsius(highest),
                  integration.timeOutside())));
    }
    return notes;
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
              "raise the chamber temperature, lower the target or allow more time",
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
      case FACE_UNBALANCED ->
          new Outcome.Failed(
              FailureReason.FACE_UNBALANCED,
              stage.name(),
              partial.endTime(),
              where + ": no surface temperature balances the laws of the face",
              "look for a surface law whose flux rises with surface temperature or has no value"
                  + " there",
              partial);
    };
  }
}
