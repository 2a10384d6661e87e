package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;

/** The draws of a plan, and how they are computed. */
final class Draws {

  final Course course;
  private final List<Member> members;
  private final int notBuilt;
  private final EnsembleSimulator simulator;

  /** How each member's tip warms, for displays that lag or whose stems carry heat. */
  private final double[] rate;

  private final double[] difference;

  private Draws(Course course, List<Member> members, int notBuilt, EnsembleSimulator simulator) {
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
    List<Member> members = new ArrayList<>();
    @Nullable IllegalArgumentException first = null;
    for (int i = 0; i < request.members(); i++) {
      ParameterPoint point = point(request.prior(), request.prior().draw(random));
      try {
        Cook cook = request.cook().at(point);
        members.add(Member.of(cook, request.cook().probeOf(cook)));
      } catch (IllegalArgumentException cannotBeBuilt) {
        first = first == null ? cannotBeBuilt : first;
      }
    }
    if (first != null && members.size() < request.members() / 2) {
      throw first;
    }
    return new Draws(
        new Course(request.cook().roles()), members, request.members() - members.size(), simulator);
  }

  /** Point of coordinates: values by the parameters' ids. */
  static ParameterPoint point(Prior prior, double[] coordinates) {
    ParameterSet parameters = prior.parameters();
    double[] values = parameters.values(coordinates);
    ParameterPoint point = ParameterPoint.empty();
    for (int p = 0; p < values.length; p++) {
      double scale = prior.spread(p);
      boolean relative = parameters.get(p).scale() == Scale.LOGARITHM;
      point = point.with(parameters.get(p).id(), values[p], relative ? scale * values[p] : scale);
    }
    return point;
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
  void learn(double reading) {
    if (members.stream().noneMatch(Member::follows)) {
      return;
    }
    Run run =
        Run.upToPull(
            compute(
                simulator,
                members.size(),
                i -> course.upToPull(members.get(i), tip(i, reading), tipBefore(i, reading))),
            course);
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
    return new Run(
        compute(simulator, count, i -> whole(i, reading, leastRest, leave)), course, leastRest);
  }

  /** All members by one decision, with the core at times since the start of the cook [s]. */
  Run runSampled(double reading, double leastRest, double leave, double[] times) {
    return new Run(
        compute(
            simulator.withSampleTimes(times),
            members.size(),
            i -> whole(i, reading, leastRest, leave)),
        course,
        leastRest);
  }

  /**
   * The first members by several decisions, those of a decision side by side.
   *
   * @param readings one a decision [K]
   * @param leaves one a decision [s]
   */
  Run scan(int count, double[] readings, double leastRest, double[] leaves) {
    return new Run(
        compute(
            simulator,
            count * readings.length,
            i -> whole(i % count, readings[i / count], leastRest, leaves[i / count])),
        course,
        leastRest);
  }

  private EnsembleResult compute(EnsembleSimulator by, int count, IntFunction<Cook> cook) {
    Cook template = whole(0, members.get(0).cook().cut().startTemperature() + 20, 600, 0);
    return by.run(template, count, cook);
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
