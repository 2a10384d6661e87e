package org.roastfield.bench;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;

/**
 * Errors and steps of one member of an ensemble: the case itself among neighbours drawn around it.
 *
 * @param core every minute of the roast, every second of the sear, every minute of the rest, and
 *     the ends of the stages [K]
 * @param legEnds face at the ends of the legs [K]
 * @param pull time of the pull [s]
 * @param accepted steps kept
 * @param rejected steps repeated
 */
record LaneErrors(double core, double legEnds, double pull, int accepted, int rejected) {

  private static final int MEMBERS = 16;
  private static final int MEMBER = 7;

  static LaneErrors of(String name, Settings settings, SimulationResult converged) {
    EnsembleSimulator simulator = EnsembleSimulator.with(settings);
    double pull = run(name, simulator).stageEnd(MEMBER, 0);
    double later = pull - CookErrors.pull(converged);
    double[] times = times(converged, later);
    EnsembleResult result = run(name, simulator.withSampleTimes(times));
    double core = 0;
    for (int i = 0; i < times.length; i++) {
      double exactTime = times[i] < pull ? times[i] : times[i] - later;
      double exact = converged.core().at(Math.min(exactTime, converged.endTime()));
      core = Math.max(core, Math.abs(exact - result.coreAt(MEMBER, i)));
    }
    double legEnds = 0;
    List<StageResult> stages = converged.stages();
    for (int i = 0; i < stages.size(); i++) {
      StageResult exact = stages.get(i);
      core = Math.max(core, Math.abs(exact.coreAtEnd() - result.coreAtEnd(MEMBER, i)));
      if (CookErrors.isLeg(exact)) {
        double face = exact.upperSurfaceAtEnd() - result.surfaceAtEnd(MEMBER, i);
        legEnds = Math.max(legEnds, Math.abs(face));
      }
    }
    return new LaneErrors(
        core, legEnds, later, result.acceptedSteps(MEMBER), result.rejectedSteps(MEMBER));
  }

  private static EnsembleResult run(String name, EnsembleSimulator simulator) {
    Cook cook = Rs1.cook(name);
    return simulator.run(cook, MEMBERS, i -> i == MEMBER ? cook : Rs1.member(name, i));
  }

  /**
   * Minutes of the roast up to the earlier pull, then seconds and minutes from the member's own.
   */
  private static double[] times(SimulationResult converged, double later) {
    List<Double> times = new ArrayList<>();
    double earlierPull = CookErrors.pull(converged) + Math.min(later, 0);
    for (double t = 60; t < earlierPull; t += 60) {
      times.add(t);
    }
    for (StageResult stage : converged.stages().subList(1, converged.stages().size())) {
      double every = CookErrors.isLeg(stage) ? 1 : 60;
      for (int i = 1; i * every < stage.duration(); i++) {
        times.add(stage.start() + later + i * every);
      }
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
