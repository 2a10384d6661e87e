package org.roastfield.core.cook;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.roastfield.core.internal.Check;
import org.roastfield.core.shape.Slab;

/**
 * A whole cook: a cut and the stages it goes through, starting at time 0.
 *
 * @param cut what is cooked
 * @param stages in order, at least one; where a face holds water in one of them, a stage whose law
 *     says nothing of water has that face too, and what it holds boils there
 * @param probes places to be reported besides core and surface; names are unique and neither "core"
 *     nor "surface"
 */
public record Cook(Cut cut, List<Stage> stages, List<Probe> probes) {

  /**
   * @throws IllegalArgumentException if there is no stage, a probe name is taken, a probe lies
   *     outside the cut or too shallow for its stem, or the faces of a cut that is no slab are
   *     treated differently
   */
  public Cook {
    stages = HeldWater.carried(List.copyOf(stages));
    probes = List.copyOf(probes);
    Check.inRange("number of stages", stages.size(), 1, 10_000);
    Set<String> names = new HashSet<>(Set.of(Probe.CORE.name(), Probe.SURFACE.name()));
    for (Probe probe : probes) {
      if (!names.add(probe.name())) {
        throw new IllegalArgumentException(
            "probe name must be unique, was \"" + probe.name() + "\"");
      }
      probe.insertion(cut.shape());
    }
    for (Stage stage : stages) {
      checkStage(cut, stage);
    }
  }

  /** Cook without probes besides core and surface. */
  public static Cook of(Cut cut, Stage... stages) {
    return new Cook(cut, List.of(stages), List.of());
  }

  /** Whether every stage treats the cut alike all round, so that half of it says everything. */
  public boolean isSymmetric() {
    for (int i = 0; i < stages.size(); i++) {
      if (!stages.get(i).isAllRound()) {
        return false;
      }
    }
    return true;
  }

  /** Whether a law of some stage depends on when its stage began, or on what a face carries. */
  public boolean remembers() {
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).upper().remembers() || stages.get(i).lower().remembers()) {
        return true;
      }
    }
    return false;
  }

  private static void checkStage(Cut cut, Stage stage) {
    if (!stage.isAllRound() && !(cut.shape() instanceof Slab)) {
      throw new IllegalArgumentException(
          "faces may differ only in a slab, but stage \""
              + stage.name()
              + "\" treats those of "
              + cut.shape()
              + " differently");
    }
    if (stage.end() instanceof StageEnd.Rises rises) {
      rises.probe().distanceFromMiddle(cut.shape());
    } else if (stage.end() instanceof StageEnd.Falls falls) {
      falls.probe().distanceFromMiddle(cut.shape());
    }
  }
}
