package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;

/** The draws of a plan, and how they are computed. */
final class Draws {

  final Course course;
  private final List<Member> members;

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
      Course course,
      List<Member> members,
      List<List<Member>> stations,
      int notBuilt,
      EnsembleSimulator simulator) {
    this.stations = stations;
    this.course = course;
    this.members = members;
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
        new Course(request.cook().roles()),
        members,
        stations,
        request.members() - members.size(),
        simulator);
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
  void learn(double reading, double growth) {
    this.growth = growth;
    learnedAt = reading;
    Run run =
        new Run(
            compute(
                simulator,
                members.size(),
                i -> course.upToPull(members.get(i), tip(i, reading), tipBefore(i, reading))),
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
          i -> course.timed(station.get(i % count), pull(result, i), leastRest, leaves[i / count]);
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
    Cook template = whole(0, members.get(0).cook().cut().startTemperature() + 20, 600, 0);
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
        members.get(member), tip(member, reading), tipBefore(member, reading), leastRest, leave);
  }

  private double tip(int member, double reading) {
    return members.get(member).atTip(reading, rate[member], difference[member]);
  }

  private double tipBefore(int member, double reading) {
    return tip(member, reading - Plan.AHEAD);
  }
}
