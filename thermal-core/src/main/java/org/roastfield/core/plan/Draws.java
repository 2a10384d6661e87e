package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
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

  /** How far from where warming was learned a rule is looked for, and in what strides [K]. */
  private static final double REACH = 20;

  private static final double STRIDE = 0.25;

  /** Least distance of two readings between which warming is learned [K]. */
  private static final double LEAST_APART = 1;

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

  /** How each member's display warms, for rules, for those that lag, and stems that carry heat. */
  private Optional<Warming> warming = Optional.empty();

  /** Surface less core near the pull [K]. */
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

  /** When the displays of the first members get to a reading on the fire as stated [K]. */
  Arrivals arrivals(int count, double reading) {
    Course plain = new Course(request.cook().roles(), false);
    IntFunction<Cook> cook =
        i ->
            plain.through(members.get(i), Optional.empty(), tipBefore(i, reading), tip(i, reading));
    EnsembleResult result = compute(simulator, count, cook);
    return new Arrivals(Run.ends(result, plain.near), Run.ends(result, plain.pull));
  }

  /**
   * Has the first members look at their display on the way, and keep the fire by it.
   *
   * @param fires of the request
   * @param arrivals when they get to the reading
   */
  void watch(FireCheck look, Fires fires, Arrivals arrivals) {
    check = Optional.of(look);
    course = new Course(request.cook().roles(), true);
    for (int i = 0; i < arrivals.size(); i++) {
      double hotter = look.hotterAt(arrivals.drawnOn(i, look));
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

  /** What a member was drawn at. */
  ParameterPoint point(int member) {
    return points.get(member);
  }

  /** When a member's display gets to a reading, as it was found to warm [s]. */
  double timeAt(int member, double reading) {
    return warming.orElseThrow().time(member, reading);
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
      warming = Optional.of(Warming.of(reading, upToPull(size(), i -> reading)));
    }
  }

  /** The same that go by a plan's look at the display, and of which is known how they warm. */
  Draws learned(Plan plan) {
    learnIfNeeded(plan.reading());
    Optional<Fires> fires = request.cook().fires();
    if (plan.check().isPresent() && fires.isPresent()) {
      FireCheck look = plan.check().get();
      watch(look, fires.get(), arrivals(size(), look.reading()));
    }
    learn(plan.readings());
    return this;
  }

  /** Learns how the displays warm between two readings [K], by a run through both. */
  void learn(Spread readings) {
    learn(size(), readings);
  }

  private void learn(int count, Spread readings) {
    double low = readings.low();
    double high = Math.max(low + LEAST_APART, Math.min(readings.high(), low + REACH));
    double[] levels = Warming.levels(low, high);
    EnsembleResult result =
        compute(
            simulator,
            count,
            i -> {
              double[] tips = Arrays.stream(levels).map(level -> tip(i, level)).toArray();
              return course.through(members.get(i), turned(i), tips);
            });
    warming = Optional.of(Warming.of(low, high, result, course.near));
    for (int i = 0; i < count; i++) {
      if (warming.get().arrives(i)) {
        int leg = result.lastStage(i) - 1;
        difference[i] = result.surfaceAtEnd(i, leg) - result.coreAtEnd(i, leg);
      }
    }
  }

  private Run upToPull(int count, IntToDoubleFunction reading) {
    IntFunction<Cook> cook =
        i -> {
          double own = reading.applyAsDouble(i);
          return course.through(members.get(i), turned(i), tipBefore(i, own), tip(i, own));
        };
    Run run = new Run(compute(simulator, count, cook), course, 0, List.of());
    for (int i = 0; i < count; i++) {
      if (run.pull[i] < Double.POSITIVE_INFINITY) {
        difference[i] = run.pullSurface[i] - run.pullCore[i];
      }
    }
    return run;
  }

  /** The first members, all pulled at one reading [K]. */
  Run run(int count, double reading, Timing timing) {
    return run(simulator, count, 1, i -> reading, Ends.of(timing), timing.leastRest());
  }

  /**
   * All members as a rule has them; how they warm must be learned. They go by it once to learn how
   * they warm where it pulls them, and then again.
   *
   * @param times at which the core is kept, since the start of the cook [s]; perhaps none
   */
  Run follow(Pull pull, Timing timing, double... times) {
    if (!warming.orElseThrow().hasSeen()) {
      learnBy(size(), pull);
    }
    EnsembleSimulator by = times.length == 0 ? simulator : simulator.withSampleTimes(times);
    double[] readings = readingsOf(size(), pull);
    return run(by, size(), 1, i -> readings[i], Ends.of(timing), timing.leastRest());
  }

  /** Learns how the displays warm where a rule pulls them, by going by it up to there. */
  private void learnBy(int count, Pull pull) {
    double[] readings = readingsOf(count, pull);
    Run run = upToPull(count, i -> readings[i]);
    warming = Optional.of(warming.orElseThrow().seen(readings, run));
  }

  /** The first members as a decision has them; nothing that they teach is kept. */
  Run first(int most, Decision decision, Timing timing) {
    int count = Math.min(most, size());
    Optional<Warming> before = warming;
    learn(count, decision.readings());
    learnBy(count, decision.pull());
    double[] readings = readingsOf(count, decision.pull());
    warming = before;
    return run(simulator, count, 1, i -> readings[i], Ends.of(timing), timing.leastRest());
  }

  private double[] readingsOf(int count, Pull pull) {
    return IntStream.range(0, count).mapToDouble(i -> readingOf(i, pull)).toArray();
  }

  /**
   * The first members pulled at each of several readings, those of a reading side by side.
   *
   * @param readings [K]
   * @param held how long they wait for their sear or are kept after their rest [s]
   */
  Run scan(int count, double[] readings, double leastRest, double held) {
    Ends ends = Ends.of(course, leastRest, held);
    return run(simulator, count, readings.length, i -> readings[i / count], ends, leastRest);
  }

  private Run run(
      EnsembleSimulator by,
      int count,
      int times,
      IntToDoubleFunction reading,
      Ends ends,
      double leastRest) {
    int draws = count * times;
    EnsembleResult result =
        compute(by, draws, i -> whole(i % count, reading.applyAsDouble(i), ends));
    List<EnsembleResult> others = new ArrayList<>();
    for (List<Member> station : stations) {
      IntFunction<Cook> cook =
          i ->
              course.timed(
                  station.get(i % count), Optional.empty(), pull(result, i, i % count), ends);
      others.add(simulator.run(cook.apply(0), draws, cook));
    }
    return new Run(result, course, leastRest, others);
  }

  /** When the gentle heat of a draw ended: at the latest where it waited in vain [s]. */
  private double pull(EnsembleResult result, int draw, int member) {
    double pull = result.stageEnd(draw, course.pull);
    if (pull > 0) {
      return pull;
    }
    Cook cook = members.get(member).cook();
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
            Ends.of(Timing.atOnce(600)));
    return by.run(template, count, cook);
  }

  /** Reading at which a member's display first meets a rule, as it was found to warm [K]. */
  double readingOf(int member, Pull pull) {
    double start = members.get(member).cook().cut().startTemperature();
    Warming found = warming.orElseThrow();
    if (!found.arrives(member)) {
      return Math.max(start, Collections.max(pull.targets()));
    }
    double low = Math.max(start, found.low() - REACH);
    double most = found.high() + REACH;
    double before = missing(found, member, low, pull);
    for (double reading = low; before > 0 && reading < most; reading += STRIDE) {
      double then = missing(found, member, reading + STRIDE, pull);
      if (then <= 0) {
        return reading + STRIDE * before / (before - then);
      }
      before = then;
    }
    return before > 0 ? most : low;
  }

  /** What a display that is drawn on lacks of the target at a reading [K]. */
  private static double missing(Warming found, int member, double reading, Pull pull) {
    double drawn = pull.ahead() * found.rate(member, reading);
    return pull.target(found.time(member, reading)) - reading - drawn;
  }

  private Cook whole(int member, double reading, Ends ends) {
    return course.whole(
        members.get(member),
        turned(member),
        tip(member, reading),
        tipBefore(member, reading),
        ends);
  }

  private double tip(int member, double reading) {
    double rate = warming.map(found -> found.rate(member, reading)).orElse(0.0);
    return members.get(member).atTip(reading, rate, difference[member]);
  }

  private double tipBefore(int member, double reading) {
    return tip(member, reading - Plan.AHEAD);
  }
}
