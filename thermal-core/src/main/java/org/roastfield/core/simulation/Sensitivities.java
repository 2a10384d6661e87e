package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.MovedCook;
import org.roastfield.core.integration.TangentIntegration;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * One cook and the derivatives of what came of it by parameters. Immutable. Parameters count from
 * 0, and so do stages.
 *
 * <p>They are the derivatives of the discrete scheme on the steps of this run, whose lengths stay
 * but for the last of each stage, which moves with the stage's end. A derivative has the unit of
 * the quantity per unit of the parameter.
 */
public final class Sensitivities {

  private final ParameterPoint point;
  private final Outcome outcome;
  private final SimulationResult result;
  private final CookIntegration integration;
  private final TangentIntegration tangents;
  private final List<StageSensitivity> stages;

  Sensitivities(
      ParameterPoint point,
      Outcome outcome,
      CookIntegration integration,
      TangentIntegration tangents,
      List<StageSensitivity> stages) {
    this.point = point;
    this.outcome = outcome;
    this.result =
        outcome instanceof Outcome.Failed failed ? failed.partial() : outcome.orElseThrow();
    this.integration = integration;
    this.tangents = tangents;
    this.stages = List.copyOf(stages);
  }

  /** The parameters and where the derivatives are taken. */
  public ParameterPoint point() {
    return point;
  }

  /** How the cook ended; derivatives are of what was computed. */
  public Outcome outcome() {
    return outcome;
  }

  /** What was computed: the same as without derivatives, bit for bit. */
  public SimulationResult result() {
    return result;
  }

  /** Derivatives of the temperature over time in the middle. */
  public SensitivityTrace core() {
    return probe(Probe.CORE);
  }

  /** Derivatives of the temperature over time of the surface; in a slab, of the upper face. */
  public SensitivityTrace upperSurface() {
    return probe(Probe.SURFACE);
  }

  /** Derivatives of the temperature over time of a slab's lower face. */
  public SensitivityTrace lowerSurface() {
    Reading reading = integration.readingAt(-result.cook().cut().shape().halfThickness());
    return new SensitivityTrace("lower surface", reading, tangents.reading(reading), tangents);
  }

  /**
   * Derivatives of the temperature over time at a probe. One that the cook lists moves as the cooks
   * around the point place it; another stays at its depth.
   */
  public SensitivityTrace probe(Probe probe) {
    Reading reading = integration.reading(probe);
    return new SensitivityTrace(
        probe.name(),
        reading,
        tangents.reading(probe, reading, integration.slope(probe)),
        tangents);
  }

  /**
   * The result as it would be at another value of one parameter, to first order: temperatures,
   * stages and evaporated water, from which differences give the derivative of anything that is
   * read from a result. A move must be small beside what bends them.
   *
   * @param amount that the parameter is moved by
   * @param cook at the value that it is moved to: its size and probes are taken
   * @return a result whose heat, water on the faces and work are not known: asking for them is an
   *     {@link IllegalStateException}
   */
  public SimulationResult moved(int parameter, double amount, Cook cook) {
    checked(parameter);
    return new SimulationResult(
        cook,
        result.settings(),
        new MovedCook(integration, tangents, parameter, amount, cook),
        tangents.trajectory().moved(parameter, amount),
        movedStages(parameter, amount),
        result.notes());
  }

  private List<StageResult> movedStages(int parameter, double amount) {
    List<StageResult> moved = new ArrayList<>();
    double start = 0;
    for (int i = 0; i < stages.size(); i++) {
      StageResult of = result.stages().get(i);
      StageSensitivity by = stages.get(i);
      double end = of.end() + amount * by.end[parameter];
      moved.add(
          new StageResult(
              of.name(),
              i == 0 ? of.start() : start,
              end,
              of.endRule(),
              of.coreAtEnd() + amount * by.core[parameter],
              of.upperSurfaceAtEnd() + amount * by.upper[parameter],
              of.lowerSurfaceAtEnd() + amount * by.lower[parameter]));
      start = end;
    }
    return moved;
  }

  /** Derivative of the time at which a completed stage ended [s]. */
  public double stageEnd(int stage, int parameter) {
    return stage(stage).end[checked(parameter)];
  }

  /** Derivative of the core at the end of a completed stage, along with that end [K]. */
  public double coreAtEnd(int stage, int parameter) {
    return stage(stage).core[checked(parameter)];
  }

  /** Derivative of the surface, or the upper face, at the end of a completed stage [K]. */
  public double upperSurfaceAtEnd(int stage, int parameter) {
    return stage(stage).upper[checked(parameter)];
  }

  /** Derivative of the lower face at the end of a completed stage [K]. */
  public double lowerSurfaceAtEnd(int stage, int parameter) {
    return stage(stage).lower[checked(parameter)];
  }

  private StageSensitivity stage(int stage) {
    return stages.get(Check.inRange("stage", stage, 0, stages.size() - 1));
  }

  private int checked(int parameter) {
    return Check.inRange("parameter", parameter, 0, point.size() - 1);
  }

  /**
   * Derivatives of {@link SimulationResult#corePeak} of a completed stage. Where the peak is the
   * stage's end or start, they are those of that end.
   */
  public PeakSensitivity corePeak(int stage, int parameter) {
    StageResult of = result.stages().get(Check.inRange("stage", stage, 0, stages.size() - 1));
    checked(parameter);
    Peak peak = result.corePeak(of);
    if (peak.interior()) {
      return core().peak(parameter, peak.time());
    }
    if (peak.time() == of.end()) {
      return new PeakSensitivity(stageEnd(stage, parameter), coreAtEnd(stage, parameter));
    }
    return stage == 0
        ? new PeakSensitivity(0, tangents.start(parameter))
        : new PeakSensitivity(stageEnd(stage - 1, parameter), coreAtEnd(stage - 1, parameter));
  }

  /** Derivative of the water evaporated from the surface, or the upper face [kg/m²]. */
  public double evaporatedUpper(int parameter) {
    return tangents.evaporatedUpper(checked(parameter));
  }

  /** Derivative of the water evaporated from the lower face [kg/m²]. */
  public double evaporatedLower(int parameter) {
    return tangents.evaporatedLower(checked(parameter));
  }

  /** Tridiagonal solves for the derivatives, the same on every machine. */
  public long solves() {
    return tangents.solves();
  }

  /** Evaluations of a face's laws for the derivatives, the same on every machine. */
  public long fluxEvaluations() {
    return tangents.fluxEvaluations();
  }
}
