package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleSensitivities;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * What a change does to a cook that follows a plan: its rules for the fire and the pull and what
 * its clock decides stay; sear and least rest keep their length. Immutable.
 */
public final class WhatIf {

  /** Draws that stand for all where no derivatives exist. */
  private static final int FEW = 40;

  /** Draws that are differentiated. */
  private static final int DIFFERENTIATED = 20;

  /** How often, each time at half of the change that the last found. */
  private static final int PASSES = 2;

  /**
   * Share of draws that must have derivatives: those that have none, since they hardly get to the
   * pull, are moved more than others, and a median without them is off.
   */
  private static final double ENOUGH = 0.95;

  /** Name of the coordinate that is differentiated by. */
  private static final String AMOUNT = "amount of the change";

  /** Name of that of the reading at the pull. */
  private static final String READING = "reading";

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
    /** Median of 20 draws' derivatives at the middle of the change, times the amount. */
    SENSITIVITY,
    /** Medians of 40 draws with and without the change, the same draws for both. */
    FEW_DRAWS,
    /** The same with all draws. */
    ALL_DRAWS
  }

  /**
   * Changes of a plan's numbers. Infinite where the pull is not reached any more.
   *
   * @param near of {@link Milestone.Kind#NEAR} [s]
   * @param pull of the pull [s]
   * @param ready of when it could have rested [s]
   * @param finalCore of the highest core up to carving [K]
   * @param chanceReady chance of having rested by the latest carving, after the change; NaN where
   *     no draws tell
   * @param draws that told it; 0 where none did
   * @param method how they were found
   */
  public record Effect(
      double near,
      double pull,
      double ready,
      double finalCore,
      double chanceReady,
      int draws,
      Method method) {}

  /**
   * By derivatives at half the change, or where the cook's laws have none, by a few draws. Times go
   * with one over what drives them: a derivative without the change is off by the change's share of
   * the drive, one at half of it by a twelfth of that share's square. The pull moves as its rule
   * has it, eq. (99); the fire is as stated, and displays do not lag.
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
    PlanRequest fewer = request.withDraws(DIFFERENTIATED, request.seed());
    Draws draws = Draws.of(fewer.with(asStated(request.cook())), simulator).learned(plan);
    ParameterPoint half =
        ParameterPoint.empty().with(AMOUNT, amount / 2, Math.abs(amount)).with(READING, 0, 1);
    Course course = new Course(request.cook().roles(), false);
    int size = draws.size();
    double[] readings = new double[size];
    double[] before = new double[size];
    double[] halfway = new double[size];
    for (int i = 0; i < size; i++) {
      readings[i] = draws.readingOf(i, plan.pull());
      before[i] = draws.timeAt(i, readings[i]);
      halfway[i] = readings[i];
    }
    List<Effect> effects = new ArrayList<>();
    for (int pass = 0; pass < PASSES; pass++) {
      EnsembleSensitivities by =
          differentiated(size, half, cooks(course, plan, change, halfway.clone(), draws));
      effects.clear();
      for (int i = 0; i < size; i++) {
        if (by.result().status(i) == MemberStatus.NOT_BUILT) {
          return few(request, plan, change.apply(amount), 0);
        }
        if (by.result().status(i) == MemberStatus.COMPLETED) {
          Shift shift = new Shift(by, i, course, plan, before[i], amount);
          double higher = shift.higher();
          halfway[i] = Double.isNaN(higher) ? readings[i] : readings[i] + 0.5 * higher;
          if (!Double.isNaN(higher)) {
            effects.add(shift.effect());
          }
        }
      }
    }
    return effects.size() < ENOUGH * size
        ? few(request, plan, change.apply(amount), 0)
        : middle(effects);
  }

  /** Each draw's cook at an amount of the change and a reading over its own. */
  private static IntFunction<Function<ParameterPoint, Cook>> cooks(
      Course course,
      Plan plan,
      DoubleFunction<PlannedCook> change,
      double[] readings,
      Draws draws) {
    return i ->
        at -> {
          PlannedCook changed = change.apply(at.value(AMOUNT));
          return cook(course, plan, readings[i] + at.value(READING), changed, draws.point(i));
        };
  }

  private EnsembleSensitivities differentiated(
      int size, ParameterPoint at, IntFunction<Function<ParameterPoint, Cook>> cooks) {
    return simulator.sensitivitiesOfEach(cooks.apply(0).apply(at), size, i -> at, cooks);
  }

  private static PlannedCook asStated(PlannedCook cook) {
    return cook.with(cook.cooks());
  }

  private static Effect middle(List<Effect> effects) {
    return new Effect(
        median(effects, Effect::near),
        median(effects, Effect::pull),
        median(effects, Effect::ready),
        median(effects, Effect::finalCore),
        Double.NaN,
        0,
        Method.SENSITIVITY);
  }

  private static double median(List<Effect> effects, ToDoubleFunction<Effect> value) {
    return Spread.of(effects.stream().mapToDouble(value).toArray()).median();
  }

  /**
   * By all draws of the request, with and without the change.
   *
   * @param changed the cook after the change; the request's own if only the service changes
   * @param later how much later it is carved than planned when it went on [s], at least 0
   */
  public Effect exact(PlanRequest request, Plan plan, PlannedCook changed, double later) {
    return draws(request, plan, changed, later, Method.ALL_DRAWS);
  }

  /** The same by as few draws as stand for all. */
  public Effect few(PlanRequest request, Plan plan, PlannedCook changed, double later) {
    PlanRequest fewer = request.withDraws(FEW, request.seed());
    return draws(fewer, plan, changed, later, Method.FEW_DRAWS);
  }

  private Effect draws(
      PlanRequest request, Plan plan, PlannedCook changed, double later, Method method) {
    Check.inRange("later", later, 0, Double.MAX_VALUE);
    Run before = run(request, plan, 0);
    Run after = run(request.with(changed), plan, later);
    Check.inRange("draws with the change", after.size(), before.size(), before.size());
    double latest = plan.lead() + later + request.service().latest();
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
        after.size(),
        method);
  }

  private Run run(PlanRequest request, Plan plan, double later) {
    Draws draws = Draws.of(request, simulator).learned(plan);
    return draws.follow(plan.pull().later(later), plan.timing().later(later));
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
      Course course, Plan plan, double reading, PlannedCook changed, ParameterPoint point) {
    Cook cook = changed.at(point);
    Member member = Member.of(cook, changed.probeOf(cook));
    double tip = member.atTip(reading, 0, 0);
    return course.whole(member, Optional.empty(), tip, tip - Plan.AHEAD, Ends.of(plan.timing()));
  }
}
