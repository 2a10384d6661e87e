package org.roastfield.core.plan;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleSensitivities;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * What a change does to a cook that follows a plan: the pull stays at its reading, the sear and the
 * least rest at their length. Immutable.
 */
public final class WhatIf {

  /** Draws that stand for all where no derivatives exist. */
  private static final int FEW = 50;

  /** Name of the coordinate that is differentiated by. */
  private static final String AMOUNT = "amount of the change";

  private final EnsembleSimulator simulator;

  private WhatIf(EnsembleSimulator simulator) {
    this.simulator = simulator;
  }

  /** By a simulator, and on the executor that it runs on. */
  public static WhatIf with(EnsembleSimulator simulator) {
    return new WhatIf(simulator);
  }

  /** How an effect was found. */
  public enum Method {
    /** Derivative at the middle of the beliefs times the amount. */
    SENSITIVITY,
    /** Medians of 50 draws with and without the change, the same draws for both. */
    FEW_DRAWS,
    /** The same with all draws. */
    ALL_DRAWS
  }

  /**
   * Changes of a plan's numbers. Infinite where the pull is not reached any more.
   *
   * @param near of {@link Milestone.Kind#NEAR} [s]
   * @param pull of the pull [s]
   * @param ready of having rested [s]
   * @param finalCore of the highest core up to carving [K]
   * @param chanceReady chance of having rested by the latest carving, after the change; NaN where
   *     no draws tell
   * @param method how they were found
   */
  public record Effect(
      double near,
      double pull,
      double ready,
      double finalCore,
      double chanceReady,
      Method method) {}

  /**
   * By derivatives, or where the cook's laws have none, by a few draws.
   *
   * @param request of the plan
   * @param plan that is followed
   * @param change the cook after a change of an amount, the request's cook for 0; smooth in it
   * @param amount of the change, not 0
   */
  public Effect estimate(
      PlanRequest request, Plan plan, DoubleFunction<PlannedCook> change, double amount) {
    if (!(Math.abs(amount) > 0)) {
      throw new IllegalArgumentException("amount must not be 0, was " + amount);
    }
    ParameterPoint middle = SearPlanner.middle(request.prior());
    ParameterPoint none = ParameterPoint.empty().with(AMOUNT, 0, Math.abs(amount));
    Course course = new Course(request.cook().roles(), false);
    Function<ParameterPoint, Cook> cook =
        at -> cook(course, request, plan, change.apply(at.value(AMOUNT)), middle);
    EnsembleSensitivities by = simulator.sensitivities(cook.apply(none), 1, member -> none, cook);
    if (by.result().status(0) != MemberStatus.COMPLETED) {
      return draws(request.withDraws(FEW, request.seed()), plan, change.apply(amount), true);
    }
    return new Effect(
        amount * by.stageEnd(0, course.near, 0),
        amount * by.stageEnd(0, course.pull, 0),
        amount * by.stageEnd(0, course.sear, 0),
        amount * by.corePeak(0, hottest(by, course), 0),
        Double.NaN,
        Method.SENSITIVITY);
  }

  /** By all draws of the request, with and without the change. */
  public Effect exact(PlanRequest request, Plan plan, PlannedCook changed) {
    return draws(request, plan, changed, false);
  }

  private Effect draws(PlanRequest request, Plan plan, PlannedCook changed, boolean few) {
    Run before = run(request, plan);
    Run after = run(request.with(changed), plan);
    Check.inRange("draws with the change", after.size(), before.size(), before.size());
    double latest = plan.lead() + request.service().latest();
    double inTime = 0;
    for (double ready : after.ready) {
      inTime += ready <= latest ? 1 : 0;
    }
    return new Effect(
        shift(before.near, after.near),
        shift(before.pull, after.pull),
        shift(before.ready, after.ready),
        shift(before.finalCore, after.finalCore),
        inTime / after.size(),
        few ? Method.FEW_DRAWS : Method.ALL_DRAWS);
  }

  private Run run(PlanRequest request, Plan plan) {
    Draws draws = Draws.of(request, simulator);
    draws.learnIfNeeded(plan.reading());
    return draws.run(draws.size(), plan.reading(), request.service().leastRest(), plan.lead());
  }

  /** Median of the changes of the draws. */
  private static double shift(double[] before, double[] after) {
    double[] shifts = new double[before.length];
    for (int i = 0; i < shifts.length; i++) {
      boolean same = before[i] == after[i];
      shifts[i] = same ? 0 : after[i] - before[i];
    }
    return Spread.of(shifts).median();
  }

  private static Cook cook(
      Course course, PlanRequest request, Plan plan, PlannedCook changed, ParameterPoint point) {
    Cook cook = changed.at(point);
    Member member = Member.of(cook, changed.probeOf(cook));
    double tip = member.atTip(plan.reading(), 0, 0);
    return course.whole(
        member,
        Optional.empty(),
        tip,
        tip - Plan.AHEAD,
        request.service().leastRest(),
        plan.lead());
  }

  private static int hottest(EnsembleSensitivities by, Course course) {
    int hottest = 0;
    for (int stage = 1; stage <= course.hold; stage++) {
      boolean hotter = by.result().corePeak(0, stage) > by.result().corePeak(0, hottest);
      hottest = hotter ? stage : hottest;
    }
    return hottest;
  }
}
