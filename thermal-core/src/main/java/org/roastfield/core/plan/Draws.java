package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.BegunEnsemble;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;

/** The draws of a plan, and how they are computed. */
final class Draws {

  /** How much longer than asked cores are kept, lest a later lead asks for more. */
  private static final double LONGER = 1.5;

  /** Ends of a course whose length alone counts. */
  private static final Ends ANY = Ends.of(Timing.atOnce(600));

  /** Least distance of two readings between which warming is learned [K]. */
  private static final double LEAST_APART = 1;

  private Course course;
  private final PlanRequest request;
  private final List<Member> members;

  /** Points of the members. */
  private final List<ParameterPoint> points;

  /** A look at the display on the way, if there is one. */
  private Optional<FireCheck> check = Optional.empty();

  /** The way up to it, if there is one. */
  private Optional<Approach> approach = Optional.empty();

  /** The cook of each member from that look on. */
  private final Cook[] after;

  /** Cooks of each station, one a member. */
  private final List<List<Member>> stations;

  private final int notBuilt;
  private EnsembleSimulator simulator;

  /** Times at which cores are kept [s]; perhaps none. */
  private double[] times = {};

  /** How each member's display warms, for rules, for those that lag, and stems that carry heat. */
  private Optional<Warming> warming = Optional.empty();

  /** Surface less core near the pull [K]. */
  private final double[] difference;

  private Draws(PlanRequest request, Drawn drawn, EnsembleSimulator simulator) {
    this.request = request;
    this.members = drawn.members();
    this.points = drawn.points();
    this.stations = drawn.stations();
    this.notBuilt = request.members() - members.size();
    this.course = new Course(request.cook().roles(), false);
    this.after = new Cook[members.size()];
    this.simulator = simulator;
    this.difference = new double[members.size()];
  }

  /**
   * Draws the members of a request.
   *
   * @throws IllegalArgumentException if most members cannot be built, with the reason of the first
   */
  static Draws of(PlanRequest request, EnsembleSimulator simulator) {
    return new Draws(request, Drawn.of(request), simulator);
  }

  Course course() {
    return course;
  }

  /**
   * Has cores kept evenly over time, at least until then.
   *
   * @param apart [s]
   * @param until since the start of the cook [s]
   */
  void keepCores(double apart, double until) {
    if (times.length > 0 && times[times.length - 1] >= until) {
      return;
    }
    int count = 1 + (int) Math.ceil(LONGER * until / apart);
    times = IntStream.range(0, count).mapToDouble(k -> k * apart).toArray();
    simulator = simulator.withSampleTimes(times);
    approach = approach.map(way -> approach(way.size(), way.reading()));
  }

  double[] times() {
    return times.clone();
  }

  /** The look at the display that draws have, if any. */
  Optional<FireCheck> check() {
    return check;
  }

  /** Cooks the first members on the fire as stated up to a reading of their displays [K]. */
  Approach approach(int count, double reading) {
    Course plain = new Course(request.cook().roles(), false);
    List<List<StageEnd>> legs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      legs.add(plain.rises(members.get(i), tipBefore(i, reading), tip(i, reading)));
    }
    IntFunction<Cook> cook = i -> plain.through(members.get(i), legs.get(i));
    BegunEnsemble begun = simulator.begin(cook.apply(0), count, cook);
    EnsembleResult there = begun.result();
    Arrivals arrivals = new Arrivals(Run.ends(there, plain.near), Run.ends(there, plain.pull));
    return new Approach(reading, legs, begun, arrivals);
  }

  /**
   * Has the first members look at their display on the way, and keep the fire by it.
   *
   * @param fires of the request
   * @param way up to the look's reading
   */
  void watch(FireCheck look, Fires fires, Approach way) {
    check = Optional.of(look);
    approach = Optional.of(way);
    course = new Course(request.cook().roles(), true);
    for (int i = 0; i < way.size(); i++) {
      double hotter = look.hotterAt(drawnOn(i, look));
      after[i] =
          hotter == 0 ? members.get(i).cook() : fires.cooks().apply(hotter).apply(points.get(i));
    }
  }

  /** Has them keep the fire as stated. */
  void watchNot() {
    check = Optional.empty();
    approach = Optional.empty();
    course = new Course(request.cook().roles(), false);
  }

  /** When the first members would get to what their look draws their displays on to [s]. */
  double[] drawnOn(int count) {
    return IntStream.range(0, count).mapToDouble(i -> drawnOn(i, check.orElseThrow())).toArray();
  }

  private double drawnOn(int member, FireCheck look) {
    return approach.orElseThrow().arrivals().drawnOn(member, look);
  }

  /** Has what their displays must show at the pull go by the look too. */
  void lean(double middle, double lean) {
    check = check.map(look -> look.leaning(middle, lean));
  }

  private Optional<Course.Turned> turned(int member) {
    return approach.map(way -> new Course.Turned(way.legs().get(member), after[member]));
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

  /** What computes them. */
  EnsembleSimulator simulator() {
    return simulator;
  }

  int notBuilt() {
    return notBuilt;
  }

  /** Highest start of the first members [K]. */
  double hottestStart(int count) {
    return members.subList(0, count).stream()
        .mapToDouble(member -> member.cook().cut().startTemperature())
        .max()
        .orElse(0);
  }

  /** Learns how the tips warm near a reading, if a display depends on that: a run up to there. */
  void learnIfNeeded(double reading) {
    if (members.stream().anyMatch(Member::follows)) {
      warming = Optional.of(Warming.of(reading, upToPull(size(), i -> reading)));
    }
  }

  /**
   * The same that go by a plan's look at the display, and of which is known how they warm.
   *
   * @throws IllegalArgumentException if the plan looks at the display and the cook has no fires
   */
  Draws learned(Plan plan) {
    learnIfNeeded(plan.reading());
    if (plan.check().isPresent()) {
      FireCheck look = plan.check().get();
      watch(look, request.cook().fire(), approach(size(), look.reading()));
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
    double high = Math.max(low + LEAST_APART, Math.min(readings.high(), low + Warming.REACH));
    double[] levels = Warming.levels(low, high);
    EnsembleResult result =
        compute(
            count,
            count,
            i -> {
              double[] tips = Arrays.stream(levels).map(level -> tip(i, level)).toArray();
              return course.through(members.get(i), turned(i), tips);
            },
            false);
    warming = Optional.of(Warming.of(low, high, result, course.near));
    for (int i = 0; i < count; i++) {
      if (warming.get().arrives(i)) {
        int leg = result.lastStage(i) - 1;
        difference[i] = result.surfaceAtEnd(i, leg) - result.coreAtEnd(i, leg);
      }
    }
  }

  private Run upToPull(int count, IntToDoubleFunction reading) {
    IntFunction<Cook> cook = i -> upToPull(i, reading.applyAsDouble(i));
    Run run = new Run(compute(count, count, cook, false), course, 0, List.of());
    for (int i = 0; i < count; i++) {
      if (run.pull[i] < Double.POSITIVE_INFINITY) {
        difference[i] = run.pullSurface[i] - run.pullCore[i];
      }
    }
    return run;
  }

  /** The first members, all pulled at one reading [K]. */
  Run run(int count, double reading, Timing timing) {
    Ends ends = Ends.of(timing);
    return run(count, 1, i -> whole(i, reading, ends), ends, timing.leastRest(), false);
  }

  /**
   * All members as a rule has them; how they warm must be learned. They go by it once to learn how
   * they warm where it pulls them, and then again.
   */
  Run follow(Pull pull, Timing timing) {
    if (!warming.orElseThrow().hasSeen()) {
      learnBy(size(), pull);
    }
    List<Pulled> pulled = allPulled(size(), pull);
    Run run = run(pulled, timing, true);
    if (!pull.isBound()) {
      return run;
    }
    List<Pulled> within =
        IntStream.range(0, size())
            .mapToObj(i -> pulled.get(i).within(pull, run.near[i], run.pull[i]))
            .toList();
    return within.equals(pulled) ? run : run(within, timing, true);
  }

  /** Learns how the displays warm where a rule pulls them, by going by it up to there. */
  private void learnBy(int count, Pull pull) {
    double[] readings = IntStream.range(0, count).mapToDouble(i -> readingOf(i, pull)).toArray();
    Run run = upToPull(count, i -> readings[i]);
    warming = Optional.of(warming.orElseThrow().seen(readings, run));
  }

  /** The first members as a decision has them; nothing that they teach is kept. */
  Run first(int most, Decision decision, Timing timing) {
    int count = Math.min(most, size());
    Optional<Warming> before = warming;
    learn(count, decision.readings());
    learnBy(count, decision.pull());
    List<Pulled> pulled = allPulled(count, decision.pull());
    warming = before;
    return run(pulled, timing, false);
  }

  /**
   * The first members pulled at each of several readings, those of a reading side by side.
   *
   * @param readings [K]
   * @param held how long they wait for their sear or are kept after their rest [s]
   */
  Run scan(int count, double[] readings, double leastRest, double held) {
    Ends ends = Ends.of(course, leastRest, held);
    IntFunction<Cook> cook = i -> whole(i % count, readings[i / count], ends);
    return run(count, readings.length, cook, ends, leastRest, false);
  }

  private Run run(List<Pulled> pulled, Timing timing, boolean cores) {
    Ends ends = Ends.of(timing);
    IntFunction<Cook> whole = i -> whole(i, pulled.get(i), ends);
    return run(pulled.size(), 1, whole, ends, timing.leastRest(), cores);
  }

  private Run run(
      int count, int times, IntFunction<Cook> whole, Ends ends, double rest, boolean cores) {
    int draws = count * times;
    EnsembleResult result = compute(draws, count, whole, cores);
    List<EnsembleResult> others = new ArrayList<>();
    for (List<Member> station : stations) {
      IntFunction<Cook> cook =
          i ->
              course.timed(
                  station.get(i % count),
                  Optional.empty(),
                  course.pulled(result, i, members.get(i % count)),
                  ends);
      others.add(simulator.run(cook.apply(0), draws, cook));
    }
    return new Run(result, course, rest, others);
  }

  /**
   * Cooks of the first {@code count} members, over and over, from where they look if they do.
   *
   * @param cores whether they are kept over time, as far as they are at all
   */
  private EnsembleResult compute(int draws, int count, IntFunction<Cook> cook, boolean cores) {
    Cook longest = whole(0, members.get(0).cook().cut().startTemperature() + 20, ANY);
    if (approach.isEmpty()) {
      return (cores ? simulator : simulator.withSampleTimes()).run(longest, draws, cook);
    }
    BegunEnsemble begun = approach.get().begun();
    return (cores ? begun : begun.withoutSamples()).goOn(longest, draws, i -> i % count, cook);
  }

  /** What a member's display shows where a rule pulls it, as it was found to warm [K]. */
  double readingOf(int member, Pull pull) {
    return pulled(member, pull).reading();
  }

  private List<Pulled> allPulled(int count, Pull pull) {
    return IntStream.range(0, count).mapToObj(i -> pulled(i, pull)).toList();
  }

  private Pulled pulled(int member, Pull pull) {
    double start = members.get(member).cook().cut().startTemperature();
    return Pulled.of(warming.orElseThrow(), member, start, pull.raised(raised(member)));
  }

  /** By how much more a member's display must show at the pull, by its look [K]. */
  private double raised(int member) {
    return check.map(look -> look.raisedAt(drawnOn(member, look))).orElse(0.0);
  }

  private Cook whole(int member, Pulled pulled, Ends ends) {
    if (!pulled.byClock()) {
      return whole(member, pulled.reading(), ends);
    }
    return course.whole(members.get(member), turned(member), pulled.legs(), ends);
  }

  private Cook whole(int member, double reading, Ends ends) {
    return course.whole(
        members.get(member),
        turned(member),
        tip(member, reading),
        tipBefore(member, reading),
        ends);
  }

  private Cook upToPull(int member, double reading) {
    Member own = members.get(member);
    return course.through(own, turned(member), tipBefore(member, reading), tip(member, reading));
  }

  private double tip(int member, double reading) {
    double rate = warming.map(found -> found.rate(member, reading)).orElse(0.0);
    return members.get(member).atTip(reading, rate, difference[member]);
  }

  private double tipBefore(int member, double reading) {
    return tip(member, reading - Plan.AHEAD);
  }
}
