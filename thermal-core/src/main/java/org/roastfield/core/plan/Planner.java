package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.simulation.Settings;

/**
 * Works a cook backwards from its carving. Immutable; one planner serves any number of threads.
 *
 * <p>Pulls are weighed by a part of the draws: each is cooked to a few readings and on to carving,
 * and its final core taken straight between them. Least expected loss among the pulls that meet the
 * minima decides, among fixed readings and those that go by the pace of the display, eq. (93); a
 * cook that misses the promised window counts as one whose core is some degrees short. Where the
 * fire may be kept otherwise than stated ({@link PlannedCook#fires}) and no other station has a
 * wish, a look at the display on the way decides how. Then all draws follow the decision, and every
 * chance is theirs. The same request gives the same plan, bit for bit, on any number of workers.
 */
public final class Planner {

  /** Fast and within 0.05 K in the core (docs/numerics.md). */
  public static final Settings PLANNING = new Settings(0.03, 18, 0.32e-3, 200_000);

  /** Draws that weigh the readings. */
  private static final int WEIGHING = 200;

  /** First guess of carryover [K]. */
  private static final double GUESSED_RISE = 4;

  /** Readings that are cooked in each round, and how far they are apart [K]. */
  private static final int NODES = 7;

  private static final double SPACING = 2;
  private static final int MOST_ROUNDS = 25;

  /** Times for which a rise may be drawn on [s]; 0 for a fixed reading. */
  private static final double[] AHEADS = {0, 600, 1200, 1800, 2400};

  /**
   * Leads that differ by less count as alike [s]. A core goes on rising until it is carved, so that
   * a reading is weighed for the lead that it leads to; and how often that is done again.
   */
  private static final double NEAR_LEAD = 180;

  private static final int MOST_LEADS = 5;

  /** Corrections of a decision by a part of the draws that does not hold in all of them. */
  private static final int MOST_CORRECTIONS = 3;

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
   * Shortfall}s.
   *
   * @throws IllegalArgumentException if the cook does not fit its roles, its probe is unknown, or
   *     most draws cannot be built
   */
  public Plan plan(PlanRequest request) {
    Draws draws = Draws.of(request, simulator);
    double guess = request.wish().middle() - GUESSED_RISE;
    draws.learnIfNeeded(guess);
    Decision decision = decide(request, draws, guess);
    if (decision.pull().ahead() > 0) {
      Run learned = draws.learn(decision.reading(), decision.growth());
      decision = decision.withLead(lead(request, draws, decision, learned));
    }
    Run run = follow(request, draws, decision);
    for (int i = 0; i < MOST_CORRECTIONS && !decision.holds(request, run); i++) {
      decision = decision.corrected(request, run);
      run = follow(request, draws, decision);
    }
    return new Assembly(request, draws, decision, run).plan();
  }

  /** Lead of all draws by the paces that they were found to have at the pull. */
  private static double lead(PlanRequest request, Draws draws, Decision decision, Run learned) {
    double after = decision.afterPull();
    double[] ready = new double[learned.size()];
    for (int i = 0; i < ready.length; i++) {
      double slowness = (learned.pull[i] - learned.near[i]) / Plan.AHEAD;
      double further = draws.readingOf(i, decision.pull()) - decision.reading();
      boolean there = learned.pull[i] < Double.POSITIVE_INFINITY;
      ready[i] = there ? learned.pull[i] + slowness * further + after : Double.POSITIVE_INFINITY;
    }
    return Pace.possibleLead(ready, request.service());
  }

  private static Run follow(PlanRequest request, Draws draws, Decision decision) {
    double[] times = new double[Assembly.SAMPLES];
    double until = decision.lead() + request.service().latest();
    for (int i = 0; i < times.length; i++) {
      times[i] = until * i / (times.length - 1);
    }
    return draws.runSampled(decision.pull(), request.service().leastRest(), decision.lead(), times);
  }

  private static Decision decide(PlanRequest request, Draws draws, double guess) {
    int count = Math.min(WEIGHING, draws.size());
    double floor = draws.hottestStart(count) + LEAST_RISE;
    double first = Math.max(guess, floor);
    Service service = request.service();
    Run pilot = draws.run(count, first, service.leastRest(), 0);
    double lead = new Pace(pilot, first, service).lead(first);
    look(request, draws, count, first, lead);
    pilot = draws.run(count, first, service.leastRest(), lead);
    Pace pace = new Pace(pilot, first, service);
    double rise = Spread.of(pilot.finalCore).median() - first;
    double low = Math.max(floor, request.wish().middle() - rise - SPACING * (NODES - 1) / 2);
    DoubleUnaryOperator leave = pace::lead;
    int leads = 0;
    for (int round = 0; ; round++) {
      Scan scan = scan(request, draws, count, low, leave);
      double shift = round < MOST_ROUNDS ? shift(scan, service, low <= floor) : 0;
      Scan best = scan.bestOf(AHEADS);
      double reading = best.chosen().reading();
      double then = best.lead(reading);
      boolean settled = Math.abs(leave.applyAsDouble(reading) - then) <= NEAR_LEAD;
      if (shift == 0 && (settled || leads == MOST_LEADS)) {
        return decision(best, afterPull(pilot), low <= floor);
      }
      if (shift == 0) {
        DoubleUnaryOperator before = leave;
        double further = then - before.applyAsDouble(reading);
        leave = other -> Math.max(0, before.applyAsDouble(other) + further);
        leads++;
      }
      low = Math.max(floor, low + shift);
    }
  }

  private static Scan scan(
      PlanRequest request, Draws draws, int count, double low, DoubleUnaryOperator leave) {
    double[] readings = new double[NODES];
    for (int k = 0; k < NODES; k++) {
      readings[k] = low + SPACING * k;
    }
    double[] leaves = Arrays.stream(readings).map(leave).toArray();
    double rest = request.service().leastRest();
    return new Scan(request, new ScanNodes(readings, draws.scan(count, readings, rest, leaves)), 0);
  }

  /** Chooses a look at the display on the way, and has all draws go by it. */
  private static void look(PlanRequest request, Draws draws, int count, double pull, double leave) {
    Optional<Fires> fires = request.cook().fires();
    if (fires.isEmpty() || !request.stations().isEmpty()) {
      return;
    }
    Optional<FireCheck> check =
        new FireChoice(request, fires.get(), draws, count, pull, leave).best();
    if (check.isPresent()) {
      double[] times = draws.times(draws.size(), check.get().reading());
      draws.watch(check.get(), fires.get(), times);
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

  /** How far the readings must be moved to hold the best one [K]; 0 if they do. */
  private static double shift(Scan scan, Service service, boolean atFloor) {
    double step = SPACING * (NODES - 2) / 2;
    Optional<Candidate> best = scan.best();
    if (best.isPresent()) {
      if (best.get().equals(scan.highest())) {
        return step;
      }
      return best.get().equals(scan.lowest()) && !atFloor ? -step : 0;
    }
    if (scan.highest().reached() >= service.chance()) {
      return step;
    }
    return scan.lowest().reached() < service.chance() && !atFloor ? -step : 0;
  }

  private static Decision decision(Scan scan, double afterPull, boolean atFloor) {
    Candidate chosen = scan.chosen();
    return new Decision(
        scan.pullAt(chosen.reading()),
        chosen.reading(),
        scan.lead(chosen.reading()),
        scan.candidates(),
        scan.slopeAt(chosen),
        scan.growthAt(chosen.reading()),
        afterPull,
        atFloor && chosen.equals(scan.lowest()));
  }
}
