package org.roastfield.lab.plan;

import java.util.Optional;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.salting.Salting;
import org.roastfield.lab.files.PlanWishes;

/**
 * When to put salt on: so that it has come to a depth.
 *
 * @param mass of salt for each kilogram of raw cut [kg]
 * @param depth below the surface [m]
 * @param before how long before the fire [s]
 * @param content at that depth by then, over the mean of the whole cut
 */
public record SaltLead(double mass, double depth, double before, double content) {

  /** Depth if none is stated [m], about what a slice shows as seasoned edge; assumed. */
  public static final double DEPTH = 0.010;

  /** Content at the depth that counts as arrived, over the mean of the cut: half; assumed. */
  public static final double ARRIVED = 0.5;

  /** How long a dose on the face takes to go in [s]: two hours; assumed. */
  private static final double GOES_IN = 7200;

  /** Longest lead that is looked at [s]: four days in the cold; assumed. */
  public static final double LONGEST = 4 * 86_400;

  private static final double STEP = 900;

  /**
   * The lead for a wish; empty if salt does not come that deep in four days.
   *
   * @param cut all of whose faces are salted
   */
  public static Optional<SaltLead> of(PlanWishes.Salt wish, Cut cut) {
    double half = cut.shape().halfThickness();
    double depth = wish.depth().orElse(Math.min(DEPTH, half));
    double dose = wish.share() * cut.material().density() * cut.shape().volumePerArea();
    Salting salting = Salting.of(cut.shape(), dose, Salting.COLD_MEAT, GOES_IN, LONGEST);
    for (double time = STEP; time <= LONGEST; time += STEP) {
      double content = salting.at(half - depth, time) / salting.mean();
      if (content >= ARRIVED) {
        return Optional.of(new SaltLead(wish.share(), depth, time, content));
      }
    }
    return Optional.empty();
  }
}
