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

  /** Sears whose lengths differ by less than this share are as long. */
  private static final double SAME_LENGTH = 0.03;

  /** Least pull above the start [K]. */
  private static final double LEAST_RISE = 1;

  /** Half width of what counts as even [K]: half the trade's band of medium. */
  public static final double EVEN = 2.5;

  private final Settings settings;
  private final Optional<PlannedCook> touching;

  private SearPlanner(Settings settings, Optional<PlannedCook> touching) {
    this.settings = settings;
    this.touching = touching;
  }

  /** With {@link Settings#withDefaults()}. */
  public static SearPlanner withDefaults() {
    return with(Settings.withDefaults());
  }

  /** With the given settings. */
  public static SearPlanner with(Settings settings) {
    return new SearPlanner(settings, Optional.empty());
  }

  /**
   * The same that tells crusts of the part of a face that touches metal.
   *
   * @param cook the request's, all of whose face is on the metal in its sears
   */
  public SearPlanner withTouching(PlannedCook cook) {
    return new SearPlanner(settings, Optional.of(cook));
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

  /**
   * The shortest sear that leaves a crust, between the longest too short and the next of some that
   * differ in length alone; empty if all or none of them leave it.
   *
   * @param crust least index of {@link Browning}, the middle estimate
   * @param lengths outcomes in order of length
   * @param held as of {@link #trade}
   */
  public Optional<SearOutcome> reaching(
      PlanRequest request, double crust, List<SearOutcome> lengths, double held) {
    int first = 0;
    while (first < lengths.size() && lengths.get(first).crust().middle() < crust) {
      first++;
    }
    if (first == 0 || first == lengths.size()) {
      return Optional.empty();
    }
    SearSchedule like = lengths.get(first).schedule();
    double low = lengths.get(first - 1).schedule().duration();
    SearOutcome found = lengths.get(first);
    while (found.schedule().duration() - low > SAME_LENGTH * low) {
      double middle = 0.5 * (low + found.schedule().duration());
      SearOutcome tried =
          outcome(request, new SearSchedule(middle, like.rounds(), like.order()), held);
      if (tried.crust().middle() >= crust) {
        found = tried;
      } else {
        low = middle;
      }
    }
    return Optional.of(found);
  }

  /**
   * How evenly the cook of a request comes out, whatever its sear.
   *
   * @param held how long the cut waits for a sear, or is kept after its least rest [s], at least 0
   */
  public Evenness evenness(PlanRequest request, double held) {
    Check.notNegative("held", held);
    Cooked cooked = new Cooked(request, request.cook(), held);
    return new Evenness(cooked.grey(), cooked.within(), cooked.off(), cooked.early());
  }

  private SearOutcome outcome(PlanRequest request, SearSchedule schedule, double held) {
    ParameterPoint middle = middle(request.prior());
    Cooked cooked = new Cooked(request, request.cook().searedBy(schedule, middle), held);
    Browning average = paler(cooked.result);
    Browning crust =
        touching
            .map(all -> all.searedBy(schedule, middle).at(middle))
            .map(cook -> paler(cooked.pulledAlike(cook)))
            .orElse(average);
    return new SearOutcome(
        schedule,
        cooked.tip,
        coreOf(cooked.result),
        cooked.grey(),
        cooked.within(),
        crust,
        average,
        cooked.early());
  }

  /** The middle cook, pulled where its final core is as wished. */
  private final class Cooked {

    private final CoreWish wish;
    private final Course course;
    private final Ends rest;
    private final double tip;
    private final boolean completed;
    private final SimulationResult result;
    private final CookedCut cut;

    Cooked(PlanRequest request, PlannedCook cook, double held) {
      wish = request.wish();
      course = new Course(cook.roles(), false);
      Member member = Member.of(cook.at(middle(request.prior())), Probe.CORE);
      rest = Ends.of(course, request.service().leastRest(), held);
      double start = member.cook().cut().startTemperature() + LEAST_RISE;
      tip = pull(course, member, wish.middle(), rest, start);
      Outcome outcome = run(member);
      completed = outcome instanceof Outcome.Completed;
      result = resultOf(outcome);
      cut = CookedCut.of(result);
    }

    private Outcome run(Member member) {
      return Simulator.with(settings).run(cookTo(course, member, tip, rest));
    }

    /** What comes of a cook of the same stages that is pulled at the same reading. */
    SimulationResult pulledAlike(Cook other) {
      return resultOf(run(Member.of(other, Probe.CORE)));
    }

    double off() {
      return completed ? result.stages().get(course.pull).end() : Double.POSITIVE_INFINITY;
    }

    double grey() {
      CrossSection highest = cut.highest();
      return Math.max(highest.upperDepthAbove(wish.high()), highest.lowerDepthAbove(wish.high()));
    }

    double within() {
      return cut.highest().share(wish.middle() - EVEN, wish.middle() + EVEN);
    }

    boolean early() {
      return completed && coreOf(result) <= Math.max(wish.high(), wish.middle() + NEAR_ENOUGH);
    }
  }

  private static SimulationResult resultOf(Outcome outcome) {
    return outcome instanceof Outcome.Failed failed
        ? failed.partial()
        : ((Outcome.Completed) outcome).result();
  }

  private static double coreOf(SimulationResult result) {
    return result.stages().stream()
        .mapToDouble(stage -> result.corePeak(stage).temperature())
        .max()
        .orElse(result.cook().cut().startTemperature());
  }

  private static Browning paler(SimulationResult result) {
    CookedCut cut = CookedCut.of(result);
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
