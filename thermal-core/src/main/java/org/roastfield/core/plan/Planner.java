package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.simulation.Settings;

/**
 * Works a cook backwards from its carving. Immutable; one planner serves any number of threads.
 *
 * <p>Pulls are weighed by a part of the draws: each is cooked to a few readings and on to carving,
 * and its final core taken straight between them. Least expected loss among the rules that meet the
 * minima decides, eq. (93); a cook that misses the promised window counts as one whose core is some
 * degrees short, and where the window is kept the clock binds the draws that weigh. A cut that is
 * off its gentle heat early waits for its sear, which the clock decides; one that is not seared, or
 * has a stage to be kept in, is kept after its rest. Where the fire may be kept otherwise than
 * stated ({@link PlannedCook#fires}) and no other station has a wish, a look at the display on the
 * way decides how. Then all draws follow the decision, and every chance is theirs. The same request
 * gives the same plan, bit for bit, on any number of workers.
 */
public final class Planner {

  /**
   * Fast: over the draws of a plan within 0.07 K in the final core and 35 s in the pull, root mean
   * square (docs/numerics.md).
   */
  public static final Settings PLANNING = new Settings(0.3, 12, 0.5e-3, 200_000);

  /** Draws that weigh the readings, at most. */
  public static final int WEIGHING = 400;

  /** First guess of carryover [K]. */
  private static final double GUESSED_RISE = 4;

  /** By how much a first reading is lowered that most draws do not get to [K]. */
  private static final double LOWER = 5;

  /** Readings that are cooked in each round, and how far they are apart [K]. */
  private static final int NODES = 5;

  private static final double SPACING = 3;
  private static final int MOST_ROUNDS = 25;

  /** Share of the draws on either side whose pulls may be beyond the readings that were cooked. */
  private static final double BEYOND = 0.05;

  /** Corrections of a decision by a part of the draws that does not hold in all of them. */
  private static final int MOST_CORRECTIONS = 6;

  /** Least reading above the hottest start, so that the gentle heat is one [K]. */
  private static final double LEAST_RISE = 1;

  private final EnsembleSimulator simulator;

  private Planner(EnsembleSimulator simulator) {
    this.simulator = simulator;
  }

  /** Plans in the calling thread with {@link #PLANNING}. */
  public static Planner withDefaults() {
    return with(EnsembleSimulator.with(PLANNING));
  }

  /** Plans with a simulator, and on the executor that it runs on. */
  public static Planner with(EnsembleSimulator simulator) {
    return new Planner(simulator);
  }

  /**
   * The plan of a request; where a wish cannot be met, the nearest possible one with its {@link
   * Shortfall}s. A window is kept only where the display alone has it met with the demanded chance.
   *
   * @throws IllegalArgumentException if the cook does not fit its roles, its probe is unknown, or
   *     most draws cannot be built
   */
  public Plan plan(PlanRequest request) {
    Service service = request.service();
    Settled settled = settled(request);
    if (service.kept() && !settled.canBeKept(service)) {
      settled = settled(request.with(service.withKept(false)));
    }
    if (settled.canBeKept(service)) {
      settled = settled.bound(service);
    }
    return new Assembly(request, settled.draws, settled.decision, settled.run).plan();
  }

  /** A decision, and what comes of all draws that follow it. */
  private record Settled(PlanRequest request, Draws draws, Decision decision, Run run) {

    static Settled of(PlanRequest request, Draws draws, Decision decision) {
      return new Settled(request, draws, decision, follow(request, draws, decision));
    }

    Settled corrected() {
      return of(request, draws, decision.corrected(request, run));
    }

    boolean canBeKept(Service service) {
      return decision.canBeKept(service, run);
    }

    Settled bound(Service service) {
      return of(request, draws, decision.bound(service));
    }
  }

  private Settled settled(PlanRequest request) {
    Draws draws = Draws.of(request, simulator);
    double guess = request.wish().middle() - GUESSED_RISE;
    draws.learnIfNeeded(guess);
    Decision decision = decide(request, draws, guess);
    Timing timing = decision.timing(request.service());
    decision = decision.centred(draws.first(WEIGHING, decision, timing));
    draws.learn(decision.readings());
    if (looksTooLate(draws, decision)) {
      return settled(request.with(request.cook().with(request.cook().cooks())));
    }
    Settled settled = Settled.of(request, draws, decision);
    for (int i = 0; i < MOST_CORRECTIONS && !settled.decision.holds(request, settled.run); i++) {
      settled = settled.corrected();
    }
    return settled;
  }

  /** Whether it is off before the display gets to where it is looked at: where a sear does most. */
  private static boolean looksTooLate(Draws draws, Decision decision) {
    return draws.check().filter(look -> decision.readings().median() <= look.reading()).isPresent();
  }

  /**
   * What the same plan comes to for others: a request that differs in its beliefs, its draws or its
   * cook, but not in the roles of its stages. Fire, pull and lead are those of the plan.
   *
   * @throws IllegalArgumentException as of {@link #plan}
   */
  public Plan followed(PlanRequest request, Plan plan) {
    Service service = request.service();
    boolean possible = plan.pull().isBound() || plan.chanceReady() >= service.chance();
    boolean keeps = service.kept() && possible;
    Decision decision = keeps ? Decision.of(plan).bound(service) : Decision.of(plan);
    Draws draws = Draws.of(request, simulator);
    keepCores(request, draws, decision.lead());
    draws.learned(plan);
    return new Assembly(request, draws, decision, follow(request, draws, decision)).plan();
  }

  private static Run follow(PlanRequest request, Draws draws, Decision decision) {
    keepCores(request, draws, decision.lead());
    return draws.follow(decision.pull(), decision.timing(request.service()));
  }

  private static void keepCores(PlanRequest request, Draws draws, double lead) {
    double until = lead + request.service().latest();
    draws.keepCores(until / (Assembly.SAMPLES - 1), until);
  }

  private static Decision decide(PlanRequest request, Draws draws, double guess) {
    int count = Math.min(WEIGHING, draws.size());
    double floor = draws.hottestStart(count) + LEAST_RISE;
    double first = Math.max(guess, floor);
    Service service = request.service();
    Run pilot = draws.run(count, first, Timing.atOnce(service.leastRest()));
    double after = afterPull(pilot);
    boolean lowered = after == Double.POSITIVE_INFINITY;
    while (after == Double.POSITIVE_INFINITY && first > floor) {
      first = Math.max(floor, first - LOWER);
      pilot = draws.run(count, first, Timing.atOnce(service.leastRest()));
      after = afterPull(pilot);
    }
    double lead = new Pace(pilot, first, service).lead(first);
    look(request, draws, count, first, Timing.of(service, lead, after));
    double rise = Spread.of(pilot.finalCore).median() - first;
    double wished = request.wish().middle() - rise;
    double start = Math.max(floor, lowered ? Math.min(wished, first) : wished);
    double low = Math.max(floor, start - SPACING * (NODES - 1) / 2);
    Slowness slow = Slowness.of(draws, count);
    for (int round = 0; ; round++) {
      double[] readings = readings(low);
      Paths paths = paths(draws, count, readings, slow, service, floor);
      PullChoice choice =
          new PullChoice(request, paths, after, start, slow.looks, draws.simulator());
      PullChoice.Choice best = choice.best(lead);
      Paths.Followed followed = choice.byDisplay(best);
      double shift = round < MOST_ROUNDS ? shift(followed, readings, low <= floor) : 0;
      if (shift == 0) {
        Spread pulled = followed.spread(readings[NODES - 1]);
        draws.lean(slow.middle, best.lean());
        return new Decision(
            best.pull(),
            pulled,
            best.lead(),
            choice.around(best),
            choice.slope(best),
            choice.expected(best),
            after,
            low <= floor && pulled.median() <= floor + 1);
      }
      low = Math.max(floor, low + shift);
    }
  }

  private static Paths paths(
      Draws draws, int count, double[] readings, Slowness slow, Service service, double floor) {
    Helds helds = new Helds(service.longestHold());
    List<Run> runs = new ArrayList<>();
    double[] few =
        IntStream.range(0, (NODES - 1) / Paths.COARSE + 1)
            .mapToDouble(k -> readings[k * Paths.COARSE])
            .toArray();
    for (double held : helds.times()) {
      double[] at = held == 0 ? readings : few;
      runs.add(draws.scan(count, at, service.leastRest(), held));
    }
    return new Paths(readings, helds, runs, slow.later, floor);
  }

  private static double[] readings(double low) {
    double[] readings = new double[NODES];
    for (int k = 0; k < NODES; k++) {
      readings[k] = low + SPACING * k;
    }
    return readings;
  }

  /** Chooses a look at the display on the way, and has all draws go by it. */
  private static void look(
      PlanRequest request, Draws draws, int count, double pull, Timing timing) {
    Optional<Fires> fires = request.cook().fires();
    if (fires.isEmpty() || !request.stations().isEmpty()) {
      return;
    }
    Optional<FireCheck> check =
        new FireChoice(request, fires.get(), draws, count, pull, timing).best();
    if (check.isPresent()) {
      keepCores(request, draws, timing.leave());
      draws.watch(check.get(), fires.get(), draws.approach(draws.size(), check.get().reading()));
    }
  }

  private static double afterPull(Run run) {
    double[] after = new double[run.size()];
    for (int i = 0; i < after.length; i++) {
      boolean there = run.ready[i] < Double.POSITIVE_INFINITY;
      after[i] = there ? run.ready[i] - run.pull[i] : Double.POSITIVE_INFINITY;
    }
    return Spread.of(after).median();
  }

  /** How far the readings must be moved to hold those of most draws [K]; 0 if they do. */
  private static double shift(Paths.Followed followed, double[] readings, boolean atFloor) {
    double step = SPACING * (NODES - 2) / 2;
    if (followed.beyond() > BEYOND) {
      return step;
    }
    return followed.below(readings[0]) > BEYOND && !atFloor ? -step : 0;
  }
}
