package org.roastfield.core.ensemble;

import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.Standing;
import org.roastfield.core.internal.Check;

/**
 * Members that were computed to the end of their first stages, for cooks that begin like them: the
 * beginning is computed once, however many go on from it. Immutable; any number of threads.
 *
 * <p>Memory: about a kilobyte and a half a member at 18 cells, besides what its {@link #result}
 * takes.
 */
public final class BegunEnsemble {

  private final EnsembleSimulator simulator;
  private final Cook template;
  private final EnsembleResult result;
  private final @Nullable Standing[] ends;

  BegunEnsemble(
      EnsembleSimulator simulator,
      Cook template,
      EnsembleResult result,
      @Nullable Standing[] ends) {
    this.simulator = simulator;
    this.template = template;
    this.result = result;
    this.ends = ends;
  }

  /** What came of the beginning. */
  public EnsembleResult result() {
    return result;
  }

  /**
   * Computes cooks that begin like members of this, with its simulator's settings, sample times and
   * workers; each has the bits of one computed whole. One that begins otherwise, whose beginning
   * was not completed, or that runs in lanes, is computed whole.
   *
   * @param longest of these cooks by the number of its stages; the grid stays that of the beginning
   * @param members how many, at least 1
   * @param from which member of this a cook begins like
   * @param cook builds the cook of a member, see {@link EnsembleSimulator#run}; its first stages
   *     have laws equal to those of the beginning, or the same
   */
  public EnsembleResult goOn(
      Cook longest, int members, IntUnaryOperator from, IntFunction<Cook> cook) {
    return simulator.goOn(grid(longest), members, cook, end(longest, from));
  }

  /** The same, whose cooks keep no samples when they go on. */
  public BegunEnsemble withoutSamples() {
    return new BegunEnsemble(simulator.withSampleTimes(), template, result, ends);
  }

  /** Ends that cooks on the same kind of grid may go on from. */
  private IntFunction<@Nullable Standing> end(Cook longest, IntUnaryOperator from) {
    boolean sameGrid = longest.isSymmetric() == template.isSymmetric();
    return i -> sameGrid ? ends[from.applyAsInt(i)] : null;
  }

  /** The stages of one cook on the grid of the beginning. */
  private Cook grid(Cook longest) {
    Check.inRange("number of stages", longest.stages().size(), 1, Integer.MAX_VALUE);
    return new Cook(template.cut(), longest.stages(), longest.probes());
  }
}
