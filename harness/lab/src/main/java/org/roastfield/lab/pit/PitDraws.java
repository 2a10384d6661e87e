package org.roastfield.lab.pit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterSet;

/** Pits that one pit may be. */
public final class PitDraws {

  /** Heat that a roast takes from the air in the mean if nothing is known of it [W]; assumed. */
  public static final double USUAL_LOAD = 200;

  private PitDraws() {}

  /** Pits of a kind, by what is believed of them before any log. */
  public static List<FirePit> of(FirePit pit, int count, long seed) {
    return of(pit, FireParameters.ofPit(), Prior.of(FireParameters.ofPit()), count, seed);
  }

  /**
   * Pits drawn from beliefs.
   *
   * @param pit that they are like
   * @param known parameters that the beliefs are of
   */
  public static List<FirePit> of(
      FirePit pit, ParameterSet known, Prior belief, int count, long seed) {
    RandomGenerator random = new SplittableRandom(seed);
    List<FirePit> pits = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pits.add(FireParameters.pit(pit, known, known.values(belief.draw(random))));
    }
    return pits;
  }
}
