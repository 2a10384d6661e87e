package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;

/** Which wishes a plan does not meet, and why. */
final class Shortfalls {

  /**
   * How far a median may be from a wish that counts as met [K]; assumed. Farther off it is met as
   * well as doubt allows, if more than the demanded chance leaves does not lie on the same side.
   */
  private static final double TOLERANCE = 1;

  /** How far a share may be over what was asked for: leads are found to the minute; assumed. */
  private static final double WITHIN = 0.01;

  /** Chances are told to the percent. */
  private static final double ROUNDED = 0.005;

  private final PlanRequest request;
  private final Decision decision;
  private final Spread finalCore;
  private final Tally tally;
  private final List<Shortfall> list = new ArrayList<>();

  Shortfalls(PlanRequest request, Decision decision, Spread finalCore, Tally tally) {
    this.request = request;
    this.decision = decision;
    this.finalCore = finalCore;
    this.tally = tally;
  }

  /**
   * @param arrived share whose display ever meets the rule
   * @param needed lead for the demanded chance [s]
   * @param lead of the plan [s]
   * @param ready share that has rested by the latest carving
   * @param tooLong share that is held for too long
   */
  List<Shortfall> list(double arrived, double needed, double lead, double ready, double tooLong) {
    core(arrived);
    if (!tally.meetsMinima()) {
      minimum();
    }
    double chance = request.service().chance();
    if (lead < needed - Decision.NEAR_ENOUGH) {
      if (lead < -request.service().earliestOn() - Decision.NEAR_ENOUGH) {
        add(Shortfall.Reason.LATE_TOO_OFTEN, chance, ready);
      } else {
        add(Shortfall.Reason.TOO_LATE, needed, lead);
      }
    }
    if (tooLong > 1 - chance + WITHIN) {
      add(Shortfall.Reason.HELD_TOO_LONG, chance, 1 - tooLong);
    }
    return list;
  }

  private void core(double arrived) {
    CoreWish wish = request.wish();
    double often = request.service().chance();
    boolean cold = finalCore.median() < wish.low() - TOLERANCE && tally.under() > often;
    if (cold) {
      add(Shortfall.Reason.HEAT_TOO_LOW, wish.middle(), finalCore.median());
    } else if (arrived < often) {
      add(Shortfall.Reason.HEAT_TOO_SELDOM, often, arrived);
    } else if (finalCore.median() > wish.high() + TOLERANCE && tally.over() > often) {
      boolean sear = decision.lowest() || request.minima().isEmpty();
      add(
          sear ? Shortfall.Reason.SEAR_TOO_MUCH : Shortfall.Reason.MINIMUM_ABOVE_WISH,
          wish.high(),
          finalCore.median());
    }
  }

  private void minimum() {
    for (Minimum one : request.minima()) {
      double chance = tally.chanceOf(one);
      if (chance < one.chance() - ROUNDED) {
        add(Shortfall.Reason.MINIMUM_NOT_MET, one.chance(), chance);
      }
    }
  }

  private void add(Shortfall.Reason reason, double wished, double reached) {
    list.add(new Shortfall(reason, wished, reached));
  }
}
