package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.ensemble.RepeatedCook;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.internal.Check;
import org.roastfield.core.outcome.Browning;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CrossSection;
import org.roastfield.core.outcome.TemperatureHistory;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;

/**
 * Compares sears at the middle of the beliefs: for each the pull is moved until the final core is
 * as wished, so that grey rings and crusts are those of equal cores. Immutable.
 *
 * <p>A face of constant wetness does not know what a sear before it did; a drying one does.
 */
public final class SearPlanner {

  /** How near the final core is brought to the wish [K]. */
  private static final double NEAR_ENOUGH = 0.02;

  private static final int MOST_TRIES = 12;

  /** Least pull above the start [K]. */
  private static final double LEAST_RISE = 1;

  /** Half width of what counts as even [K]: half the trade's band of medium. */
  private static final double EVEN = 2.5;

  private final Settings settings;

  private SearPlanner(Settings settings) {
    this.settings = settings;
  }

  /** With {@link Settings#withDefaults()}. */
  public static SearPlanner withDefaults() {
    return with(Settings.withDefaults());
  }

  /** With the given settings. */
  public static SearPlanner with(Settings settings) {
    return new SearPlanner(settings);
  }

  /** Point at the middle of beliefs, values by the parameters' ids. */
  public static ParameterPoint middle(Prior prior) {
    return prior.parameters().point(prior.mean());
  }

  /**
   * Schedules around a cook's own: a half, three quarters, as long, one and a half and twice as
   * long, with half and twice as many rounds, last, first and both.
   *
   * @throws IllegalArgumentException if the cook has no sear
   */
  public static List<SearSchedule> around(PlanRequest request) {
    SearSchedule own =
        request
            .cook()
            .sear(middle(request.prior()))
            .orElseThrow(() -> new IllegalArgumentException("cook must have a sear, had none"));
    List<SearSchedule> schedules = new ArrayList<>();
    for (double length : new double[] {0.5, 0.75, 1, 1.5, 2}) {
      for (int rounds : rounds(own.rounds())) {
        for (SearSchedule.Order order : SearSchedule.Order.values()) {
          schedules.add(new SearSchedule(own.duration() * length, rounds, order));
        }
      }
    }
    return schedules;
  }

  private static int[] rounds(int own) {
    return own == 1 ? new int[] {1, 2} : new int[] {own / 2, own, 2 * own};
  }

  /**
   * Outcomes of schedules.
   *
   * @param request whose cook, beliefs, wish and least rest count
   * @param schedules at least one
   * @param held how long the cut waits for a sear, or is kept after its least rest [s], at least 0
   * @throws IllegalArgumentException if the cook has no sear, or there is no schedule
   */
  public SearTrade trade(PlanRequest request, List<SearSchedule> schedules, double held) {
    Check.inRange("number of schedules", schedules.size(), 1, 100_000);
    Check.notNegative("held", held);
    return new SearTrade(
        schedules.stream().map(schedule -> outcome(request, schedule, held)).toList());
  }

  private SearOutcome outcome(PlanRequest request, SearSchedule schedule, double held) {
    ParameterPoint point = middle(request.prior());
    PlannedCook cook = request.cook().searedBy(schedule, point);
    Course course = new Course(cook.roles(), false);
    Member member = Member.of(cook.at(point), Probe.CORE);
    Ends rest = Ends.of(course, request.service().leastRest(), held);
    double start = member.cook().cut().startTemperature() + LEAST_RISE;
    double tip = pull(course, member, request.wish().middle(), rest, start);
    Outcome outcome = Simulator.with(settings).run(cookTo(course, member, tip, rest));
    SimulationResult result =
        outcome instanceof Outcome.Failed failed
            ? failed.partial()
            : ((Outcome.Completed) outcome).result();
    CookedCut cut = CookedCut.of(result);
    CrossSection highest = cut.highest();
    double above = request.wish().high();
    double core = coreOf(result);
    double middle = request.wish().middle();
    return new SearOutcome(
        schedule,
        tip,
        core,
        Math.max(highest.upperDepthAbove(above), highest.lowerDepthAbove(above)),
        highest.share(middle - EVEN, middle + EVEN),
        paler(cut, result),
        outcome instanceof Outcome.Completed && core <= Math.max(above, middle + NEAR_ENOUGH));
  }

  private static double coreOf(SimulationResult result) {
    return result.stages().stream()
        .mapToDouble(stage -> result.corePeak(stage).temperature())
        .max()
        .orElse(result.cook().cut().startTemperature());
  }

  private static Browning paler(CookedCut cut, SimulationResult result) {
    Browning upper = Browning.of(cut, result);
    if (!cut.isTwoFaced()) {
      return upper;
    }
    TemperatureHistory face = cut.places().get(0);
    OptionalDouble crust =
        result.lowerFaceWater().isPresent()
            ? OptionalDouble.of(result.lowerFaceWater().get().crust())
            : OptionalDouble.empty();
    Browning lower = Browning.of(face, crust);
    return lower.middle() < upper.middle() ? lower : upper;
  }

  private static Cook cookTo(Course course, Member member, double tip, Ends rest) {
    return course.whole(member, Optional.empty(), tip, tip - Plan.AHEAD, rest);
  }

  /** Pull at which the final core is as wished, or the least possible one [K]. */
  private double pull(Course course, Member member, double wish, Ends rest, double least) {
    RepeatedCook repeated = RepeatedCook.of(settings, cookTo(course, member, wish, rest));
    double low = least;
    double high = wish;
    double tip = Math.max(least, wish - 4);
    for (int i = 0; i < MOST_TRIES && high - low > NEAR_ENOUGH / 4; i++) {
      double over = finalCore(repeated, course, cookTo(course, member, tip, rest)) - wish;
      if (Math.abs(over) <= NEAR_ENOUGH) {
        return tip;
      }
      if (over > 0) {
        high = tip;
      } else {
        low = tip;
      }
      double next = tip - over;
      tip = next > low && next < high ? next : 0.5 * (low + high);
    }
    return tip;
  }

  private static double finalCore(RepeatedCook repeated, Course course, Cook cook) {
    MemberStatus status = repeated.run(cook);
    if (status != MemberStatus.COMPLETED) {
      return Double.NEGATIVE_INFINITY;
    }
    double highest = 0;
    for (int stage = 0; stage <= course.hold; stage++) {
      double peak = repeated.corePeak(stage);
      highest = peak > highest ? peak : highest;
    }
    return highest;
  }
}
