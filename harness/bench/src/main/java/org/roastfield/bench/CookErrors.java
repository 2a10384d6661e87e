package org.roastfield.bench;

import java.util.List;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.simulation.Trace;

/**
 * Largest differences of a cook of RS-1 from a converged one. In the roast times are compared as
 * they are, after the pull from the start of each stage, as one who stands by would.
 *
 * @param core every minute of roast and rest, every second of the sear, the ends of stages [K]
 * @param soon face in the sear, every half second from 3 s after a switch to the end of the leg [K]
 * @param later the same from 10 s after a switch [K]
 * @param legEnds face at the ends of the legs [K]
 * @param pull time of the pull [s]
 */
record CookErrors(double core, double soon, double later, double legEnds, double pull) {

  private static final double SOON = 3;
  private static final double LATER = 10;
  private static final double MINUTE = 60;

  static CookErrors of(SimulationResult converged, SimulationResult result) {
    double core = 0;
    double soon = 0;
    double later = 0;
    double legEnds = 0;
    List<StageResult> stages = result.stages();
    for (int i = 0; i < stages.size(); i++) {
      Pair pair = new Pair(converged.stages().get(i), stages.get(i));
      double every = isLeg(pair.stage) ? 1 : MINUTE;
      core = Math.max(core, Math.abs(pair.exact.coreAtEnd() - pair.stage.coreAtEnd()));
      core = Math.max(core, pair.largest(converged.core(), result.core(), every, 0));
      if (isLeg(pair.stage)) {
        Trace exact = converged.upperSurface();
        Trace surface = result.upperSurface();
        double end = pair.exact.upperSurfaceAtEnd() - pair.stage.upperSurfaceAtEnd();
        legEnds = Math.max(legEnds, Math.abs(end));
        soon = Math.max(soon, pair.largest(exact, surface, 0.5, SOON));
        later = Math.max(later, pair.largest(exact, surface, 0.5, LATER));
      }
    }
    return new CookErrors(
        core,
        Math.max(soon, legEnds),
        Math.max(later, legEnds),
        legEnds,
        pull(result) - pull(converged));
  }

  /** Whether a stage is a leg of the sear. */
  static boolean isLeg(StageResult stage) {
    return stage.name().equals("sear");
  }

  /** Time of the pull [s]. */
  static double pull(SimulationResult result) {
    return result.stages().get(0).end();
  }

  /** The same stage in both cooks. */
  private record Pair(StageResult exact, StageResult stage) {

    /** Over times that both have, without the very start, where the face jumps. */
    double largest(Trace exactTrace, Trace trace, double every, double from) {
      double length = Math.min(exact.duration(), stage.duration());
      double largest = 0;
      for (int i = 1; i * every < length; i++) {
        double since = i * every;
        if (since >= from) {
          double should = exactTrace.at(exact.start() + since);
          largest = Math.max(largest, Math.abs(should - trace.at(stage.start() + since)));
        }
      }
      return largest;
    }
  }
}
