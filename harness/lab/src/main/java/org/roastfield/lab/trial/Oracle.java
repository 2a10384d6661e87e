package org.roastfield.lab.trial;

import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.Fires;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.Service;
import org.roastfield.lab.cooker.StrayingAir;

/**
 * Someone who knows the model and all numbers of a truth, but not the weather to come: plans with
 * the truth itself, of which only the air is drawn, and with the loss of plans.
 */
final class Oracle {

  /** How near a final core has to be [K]. */
  static final double CLOSE = 2;

  private static final int DRAWS = 60;
  private static final Prior WEATHER = Prior.of(StrayingAir.parameters());

  private Oracle() {}

  static Plan plan(
      TrialKind kind,
      TrialTruth truth,
      ParameterPoint point,
      long seed,
      Service service,
      EnsembleSimulator simulator) {
    PlannedCook known =
        new PlannedCook(
                weather -> truth.smooth(kind, with(point, weather), seed),
                kind.roles(),
                kind.probe())
            .with(
                Fires.of(
                    kelvin ->
                        weather ->
                            truth.smooth(
                                kind, kind.planned().hotter(with(point, weather), kelvin), seed)));
    return Planner.with(simulator)
        .plan(
            PlanRequest.of(known, WEATHER, CoreWish.of(kind.wish()))
                .with(PlanTrial.LOSS)
                .with(service)
                .withDraws(DRAWS, seed));
  }

  /** A point with the weather of another. */
  private static ParameterPoint with(ParameterPoint point, ParameterPoint weather) {
    ParameterPoint both = point;
    for (int p = 0; p < weather.size(); p++) {
      both = both.moved(both.index(weather.coordinate(p).name()), weather.coordinate(p).value());
    }
    return both;
  }
}
