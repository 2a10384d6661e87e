package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleSensitivities;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * What a change does to a cook that follows a plan: its rules for the fire and the pull and what
 * its clock decides stay; sear and least rest keep their length. Serves one thread.
 */
public final class WhatIf {

  /** Draws that stand for all where no derivatives exist. */
  private static final int FEW = 100;

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
  private final PlanRequest request;
  private final PlanRequest fewer;
  private final Plan plan;

  /** What comes of all draws and of few without a change; computed when it is first asked for. */
  private final Map<PlanRequest, Run> unchanged = new HashMap<>();

  private WhatIf(EnsembleSimulator simulator, PlanRequest request, Plan plan) {
    this.simulator = simulator;
    this.request = request;
    this.fewer = request.withDraws(Math.min(FEW, request.members()), request.seed());
    this.plan = plan;
  }

  /**
   * Of a plan that is followed, by a simulator, and on the executor that it runs on.
   *
   * @param request of the plan
   */
  public static WhatIf of(EnsembleSimulator simulator, PlanRequest request, Plan plan) {
    return new WhatIf(simulator, request, plan);
  }

  /** How an effect was found. */
  public enum Method {
    /** Medians of 20 draws, moved by derivatives at the middle of the change. */
    SENSITIVITY,
    /** Medians of 100 draws with and without the change, the same draws for both. */
    FEW_DRAWS,
    /** The same with all draws. */
    ALL_DRAWS
  }

  /**
   * By how much the median of each of a plan's numbers moves. Infinite where most draws do not get
   * to the pull any more.
   *
   * @param later of when each milestone takes place after the cut goes on [s]; without the look at
   *     the display and the hottest core where derivatives tell
   * @param ready of when it could have rested, had it not waited for its sear [s]
   * @param finalCore of the highest core up to carving [K]
   * @param chanceReady chance of having rested by the latest carving, after the change; NaN where
   *     no draws tell
   * @param draws that told it; 0 where none did
   * @param method how they were found
   */
  public record Effect(
      Map<Milestone.Kind, Double> later,
      double ready,
      double finalCore,
      double chanceReady,
      int draws,
      Method method) {

    /** Copies the map. */
    public Effect {
      Map<Milestone.Kind, Double> copy = new EnumMap<>(Milestone.Kind.class);
      copy.putAll(later);
      later = Collections.unmodifiableMap(copy);
    }

    /** Of the pull [s]. */
    public double pull() {
      return later.getOrDefault(Milestone.Kind.PULL, Double.NaN);
    }
  }

  /**
   * By derivatives at half the change where the fire is kept, or else by a few draws: a look at the
   * display jumps from one fire to another, a rule within a window from display to clock, and so do
   * cooks whose laws have no derivatives. Times go with one over what drives them: a derivative
   * without the change is off by the change's share of the drive, one at half of it by a twelfth of
   * that share's square. The pull moves as its rule has it, eq. (99); displays do not lag.
   *
   * @param change the cook after a change of an amount, the request's cook for 0; smooth in it
   * @param amount of the change, not 0
   */
  public Effect estimate(DoubleFunction<PlannedCook> change, double amount) {
    if (!(Math.abs(amount) > 0)) {
      throw new IllegalArgumentException("amount must not be 0, was " + amount);
    }
    if (plan.check().isPresent() || plan.pull().isBound()) {
      return few(change.apply(amount), 0);
    }
    PlanRequest differentiated = request.withDraws(DIFFERENTIATED, request.seed());
    Draws draws = Draws.of(differentiated, simulator).learned(plan);
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
    List<Shift> shifts = new ArrayList<>();
    for (int pass = 0; pass < PASSES; pass++) {
      EnsembleSensitivities by =
          differentiated(size, half, cooks(course, plan, change, halfway.clone(), draws));
      shifts.clear();
      for (int i = 0; i < size; i++) {
        if (by.result().status(i) == MemberStatus.NOT_BUILT) {
          return few(change.apply(amount), 0);
        }
        if (by.result().status(i) == MemberStatus.COMPLETED) {
          Shift shift = new Shift(by, i, course, plan, before[i], amount);
          double higher = shift.higher();
          halfway[i] = Double.isNaN(higher) ? readings[i] : readings[i] + 0.5 * higher;
          if (!Double.isNaN(higher)) {
            shifts.add(shift);
          }
        }
      }
    }
    return shifts.size() < ENOUGH * size ? few(change.apply(amount), 0) : middle(shifts, course);
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

  private Effect middle(List<Shift> shifts, Course course) {
    double[][] before = new double[shifts.size()][];
    double[][] after = new double[shifts.size()][];
    for (int i = 0; i < before.length; i++) {
      double[] moves = shifts.get(i).moves();
      before[i] = shifts.get(i).halfway();
      after[i] = before[i].clone();
      for (int number = 0; number < moves.length; number++) {
        before[i][number] -= 0.5 * moves[number];
        after[i][number] += 0.5 * moves[number];
      }
    }
    int ready = before[0].length - 2;
    return new Effect(
        later(Times.of(before, course, plan.timing()), Times.of(after, course, plan.timing())),
        shift(column(before, ready), column(after, ready)),
        shift(column(before, ready + 1), column(after, ready + 1)),
        Double.NaN,
        0,
        Method.SENSITIVITY);
  }

  private static double[] column(double[][] rows, int number) {
    return Arrays.stream(rows).mapToDouble(row -> row[number]).toArray();
  }

  private static Map<Milestone.Kind, Double> later(
      Map<Milestone.Kind, double[]> before, Map<Milestone.Kind, double[]> after) {
    Map<Milestone.Kind, Double> later = new EnumMap<>(Milestone.Kind.class);
    for (Map.Entry<Milestone.Kind, double[]> one : before.entrySet()) {
      double[] times = Objects.requireNonNull(after.get(one.getKey()));
      later.put(one.getKey(), shift(one.getValue(), times));
    }
    return later;
  }

  /**
   * By all draws of the request, with and without the change.
   *
   * @param changed the cook after the change; the request's own if only the service changes
   * @param later how much later it is carved than planned when it went on [s], at least 0
   */
  public Effect exact(PlannedCook changed, double later) {
    return draws(request, changed, later, Method.ALL_DRAWS);
  }

  /** The same by as few draws as stand for all. */
  public Effect few(PlannedCook changed, double later) {
    return draws(fewer, changed, later, Method.FEW_DRAWS);
  }

  private Effect draws(PlanRequest of, PlannedCook changed, double later, Method method) {
    Check.inRange("later", later, 0, Double.MAX_VALUE);
    Run before = unchanged.computeIfAbsent(of, same -> run(same, 0));
    Run after = run(of.with(changed), later);
    Check.inRange("draws with the change", after.size(), before.size(), before.size());
    double latest = plan.lead() + later + request.service().latest();
    double inTime = 0;
    for (double ready : after.ready) {
      inTime += ready <= latest ? 1 : 0;
    }
    return new Effect(
        later(before.times(plan.lead()), after.times(plan.lead() + later)),
        shift(before.ready, after.ready),
        shift(before.finalCore, after.finalCore),
        inTime / after.size(),
        after.size(),
        method);
  }

  private Run run(PlanRequest of, double later) {
    Draws draws = Draws.of(of, simulator).learned(plan);
    return draws.follow(plan.pull().later(later), plan.timing().later(later));
  }

  /**
   * Change of the median. The median of the draws' changes is another number where a look at the
   * display puts some of them on another fire, and jumps with few draws.
   */
  private static double shift(double[] before, double[] after) {
    double was = Spread.of(before).median();
    double is = Spread.of(after).median();
    return was == is ? 0 : is - was;
  }

  private static Cook cook(
      Course course, Plan plan, double reading, PlannedCook changed, ParameterPoint point) {
    Cook cook = changed.at(point);
    Member member = Member.of(cook, changed.probeOf(cook));
    double tip = member.atTip(reading, 0, 0);
    return course.whole(member, Optional.empty(), tip, tip - Plan.AHEAD, Ends.of(plan.timing()));
  }
}
