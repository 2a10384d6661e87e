package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;

/** Where and when a computed cook is read for its pictures. */
final class CookSampling {

  private static final int TIMES_OVERALL = 280;
  private static final int TIMES_PER_STAGE = 40;
  private static final int TIMES_PER_PART = 10;
  private static final int DEPTHS_OVERALL = 48;
  private static final double[] DEPTHS_NEAR_FACE = {0.25, 0.5, 1, 1.5, 2.5};

  private CookSampling() {}

  /** The stages of the cook file as far as they were computed; turns count as one stage. */
  static List<Span> spans(CookFile file, List<StageResult> results) {
    List<Span> spans = new ArrayList<>();
    for (StageSetup setup : file.stages()) {
      int last = Math.min(setup.lastStage(), results.size() - 1);
      if (setup.firstStage() <= last) {
        double start = results.get(setup.firstStage()).start();
        spans.add(new Span(setup.name(), start, results.get(last).end()));
      }
    }
    return spans;
  }

  /** Times [s], increasing, more of them in short stages. */
  static List<Double> times(List<Span> stages, List<StageResult> parts, double end) {
    TreeSet<Double> times = new TreeSet<>();
    addEven(0, end, TIMES_OVERALL, times);
    stages.forEach(stage -> addEven(stage.start(), stage.end(), TIMES_PER_STAGE, times));
    parts.forEach(part -> addEven(part.start(), part.end(), TIMES_PER_PART, times));
    return List.copyOf(times);
  }

  /**
   * Depths [mm], increasing, more of them near the faces.
   *
   * @param deepest [mm]
   * @param secondFace whether the deepest place is a face too
   */
  static List<Double> depths(double deepest, boolean secondFace) {
    TreeSet<Double> depths = new TreeSet<>();
    addEven(0, deepest, DEPTHS_OVERALL, depths);
    for (double depth : DEPTHS_NEAR_FACE) {
      if (depth < deepest / 2) {
        depths.add(depth);
        if (secondFace) {
          depths.add(deepest - depth);
        }
      }
    }
    return List.copyOf(depths);
  }

  private static void addEven(double from, double to, int intervals, Set<Double> places) {
    for (int i = 0; i < intervals; i++) {
      places.add(from + i * (to - from) / intervals);
    }
    places.add(to);
  }
}
