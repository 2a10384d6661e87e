package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;

/** The draws of a plan, and how they are computed. */
final class Draws {

  private Course course;
  private final PlanRequest request;
  private final List<Member> members;

  /** Points of the members. */
  private final List<ParameterPoint> points;

  /** A look at the display on the way, if there is one. */
  private Optional<FireCheck> check = Optional.empty();

  /** The cook of each member from that look on. */
  private final Cook[] after;

  /** Cooks of each station, one a member. */
  private final List<List<Member>> stations;

  private final int notBuilt;
  private final EnsembleSimulator simulator;

  /** How each member's tip warms, for displays that lag or whose stems carry heat. */
  private final double[] rate;

  /** Reading near which these were learned [K]; NaN if they were not. */
  private double learnedAt = Double.NaN;

  /** Share by which a rate grows with the reading [1/K]. */
  private double growth;

  private final double[] difference;

  private Draws(
      PlanRequest request,
      List<Member> members,
      List<ParameterPoint> points,
      List<List<Member>> stations,
      int notBuilt,
      EnsembleSimulator simulator) {
    this.stations = stations;
    this.request = request;
    this.course = new Course(request.cook().roles(), false);
    this.members = members;
    this.points = points;
    this.after = new Cook[members.size()];
    this.notBuilt = notBuilt;
    this.simulator = simulator;
    this.rate = new double[members.size()];
    this.difference = new double[members.size()];
  }

  /**
   * Draws the members of a request.
   *
   * @throws IllegalArgumentException if no member can be built, with the reason of the first
   */
  static Draws of(PlanRequest request, EnsembleSimulator simulator) {
    SplittableRandom random = new SplittableRandom(request.seed());
    ParameterSet parameters = request.prior().parameters();
    List<Member> members = new ArrayList<>();
    List<ParameterPoint> points = new ArrayList<>();
    List<List<Member>> stations = new ArrayList<>();
    request.stations().forEach(station -> stations.add(new ArrayList<>()));
    @Nullable IllegalArgumentException first = null;
    for (int i = 0; i < request.members(); i++) {
      ParameterPoint point = parameters.point(request.prior().draw(random));
      try {
        Cook cook = request.cook().at(point);
        List<Member> others = new ArrayList<>();
        for (Station station : request.stations()) {
          PlannedCook other = new PlannedCook(station.cooks(), request.cook().roles(), "core");
          others.add(Member.of(other.at(point), Probe.CORE));
        }
        members.add(Member.of(cook, request.cook().probeOf(cook)));
        points.add(point);
        for (int s = 0; s < others.size(); s++) {
          stations.get(s).add(others.get(s));
        }
      } catch (IllegalArgumentException cannotBeBuilt) {
        first = first == null ? cannotBeBuilt : first;
      }
    }
    if (first != null && members.size() < request.members() / 2) {
      throw first;
    }
    return new Draws(
        request, members, points, stations, request.members() - members.size(), simulator);
  }

  Course course() {
    return course;
  }

  /** The look at the display that draws have, if any. */
  Optional<FireCheck> check() {
    return check;
  }

  /**
   * When the displays of the first members get to a reading on the fire as stated, since the start
   * of the cook [s]; infinite for never.
   */
  double[] times(int count, double reading) {
    Course plain = new Course(request.cook().roles(), false);
    EnsembleResult result =
        compute(simulator, count, i -> plain.upTo(members.get(i), tip(i, reading)));
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      double end = result.stageEnd(i, plain.near);
      times[i] = Double.isNaN(end) ? Double.POSITIVE_INFINITY : end;
    }
    return times;
  }

  /**
   * Has the first members look at their display on the way, and keep the fire by it.
   *
   * @param fires of the request
   * @param times at which they get to the reading [s]
   */
  void watch(FireCheck look, Fires fires, double[] times) {
    check = Optional.of(look);
    course = new Course(request.cook().roles(), true);
    for (int i = 0; i < times.length; i++) {
      double hotter = look.hotterAt(times[i]);
      after[i] =
          hotter == 0 ? members.get(i).cook() : fires.cooks().apply(hotter).apply(points.get(i));
    }
  }

  /** Has them keep the fire as stated. */
  void watchNot() {
    check = Optional.empty();
    course = new Course(request.cook().roles(), false);
  }

  private Optional<Course.Turned> turned(int member) {
    return check.map(
        look ->
            new Course.Turned(
                new StageEnd.Rises(
                    members.get(member).tip(),
                    tip(member, look.reading()),
                    course.longest(members.get(member))),
                after[member]));
  }

  int size() {
    return members.size();
  }

  int notBuilt() {
    return notBuilt;
  }

  /** Highest start of the first members [K]. */
  double hottestStart(int count) {
    double hottest = 0;
    for (Member member : members.subList(0, count)) {
      hottest = Math.max(hottest, member.cook().cut().startTemperature());
    }
    return hottest;
  }

  /**
   * Learns how the tips warm near a reading, if a display depends on that: one run up to the pull.
   */
  void learnIfNeeded(double reading) {
    if (members.stream().anyMatch(Member::follows)) {
      learn(reading, 0);
    }
  }

  /**
   * Learns how the tips warm near a reading: one run up to the pull.
   *
   * @param growth share by which rates grow with the reading [1/K]
   */
  Run learn(double reading, double growth) {
    this.growth = growth;
    learnedAt = reading;
    Run run =
        new Run(
            compute(
                simulator,
                members.size(),
                i ->
                    course.upToPull(
                        members.get(i), turned(i), tip(i, reading), tipBefore(i, reading))),
            course,
            0,
            List.of());
    for (int i = 0; i < members.size(); i++) {
      if (run.pull[i] < Double.POSITIVE_INFINITY) {
        double taken = run.pull[i] - run.near[i];
        rate[i] = taken > 0 ? Plan.AHEAD / taken : 0;
        difference[i] = run.pullSurface[i] - run.pullCore[i];
      }
    }
    return run;
  }

  /** The first members by one decision. */
  Run run(int count, double reading, double leastRest, double leave) {
    return scan(count, new double[] {reading}, leastRest, new double[] {leave});
  }

  /** All members by one decision, with the core at times since the start of the cook [s]. */
  Run runSampled(Pull pull, double leastRest, double leave, double[] times) {
    return run(
        simulator.withSampleTimes(times),
        size(),
        i -> readingOf(i, pull),
        leastRest,
        new double[] {leave});
  }

  /**
   * The first members by several decisions, those of a decision side by side.
   *
   * @param readings one a decision [K]
   * @param leaves one a decision [s]
   */
  Run scan(int count, double[] readings, double leastRest, double[] leaves) {
    return run(simulator, count, i -> readings[i / count], leastRest, leaves);
  }

  private Run run(
      EnsembleSimulator by,
      int count,
      IntToDoubleFunction reading,
      double leastRest,
      double[] leaves) {
    int draws = count * leaves.length;
    EnsembleResult result =
        compute(
            by,
            draws,
            i -> whole(i % count, reading.applyAsDouble(i), leastRest, leaves[i / count]));
    List<EnsembleResult> others = new ArrayList<>();
    for (List<Member> station : stations) {
      IntFunction<Cook> cook =
          i ->
              course.timed(
                  station.get(i % count),
                  Optional.empty(),
                  pull(result, i),
                  leastRest,
                  leaves[i / count]);
      others.add(simulator.run(cook.apply(0), draws, cook));
    }
    return new Run(result, course, leastRest, others);
  }

  /** When the gentle heat of a draw ended: at the latest where it waited in vain [s]. */
  private double pull(EnsembleResult result, int draw) {
    double pull = result.stageEnd(draw, course.pull);
    if (pull > 0) {
      return pull;
    }
    Cook cook = members.get(draw % members.size()).cook();
    double start = course.firstSear < 0 ? 0 : result.stageEnd(draw, course.firstSear);
    return start + cook.stages().get(course.near).end().longest(start);
  }

  private EnsembleResult compute(EnsembleSimulator by, int count, IntFunction<Cook> cook) {
    double warmer = members.get(0).cook().cut().startTemperature() + 20;
    Cook template =
        course.whole(
            members.get(0),
            check.map(
                look ->
                    new Course.Turned(
                        new StageEnd.Rises(Probe.CORE, warmer, 1), members.get(0).cook())),
            warmer,
            warmer - Plan.AHEAD,
            600,
            0);
    return by.run(template, count, cook);
  }

  /** Reading at which a member's display meets a rule, by the rate that was learned [K]. */
  double readingOf(int member, Pull pull) {
    if (pull.ahead() == 0) {
      return pull.target();
    }
    double drawn = pull.ahead() * rate[member];
    double reading = (pull.target() - drawn * (1 - growth * learnedAt)) / (1 + drawn * growth);
    return Math.max(reading, members.get(member).cook().cut().startTemperature());
  }

  private Cook whole(int member, double reading, double leastRest, double leave) {
    return course.whole(
        members.get(member),
        turned(member),
        tip(member, reading),
        tipBefore(member, reading),
        leastRest,
        leave);
  }

  private double tip(int member, double reading) {
    return members.get(member).atTip(reading, rate[member], difference[member]);
  }

  private double tipBefore(int member, double reading) {
    return tip(member, reading - Plan.AHEAD);
  }
}
