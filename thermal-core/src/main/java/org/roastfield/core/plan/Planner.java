package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.Optional;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.simulation.Settings;

/**
 * Works a cook backwards from its carving. Immutable; one planner serves any number of threads.
 *
 * <p>Pulls are weighed by a part of the draws: each is cooked to a few readings and on to carving,
 * and its final core taken straight between them. Least expected loss among the pulls that meet the
 * minima decides, among fixed readings and, {@link #byPace} if asked, those that go by the pace of
 * the display. Then all draws follow the decision, and every chance is theirs. The same request
 * gives the same plan, bit for bit, on any number of workers.
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

  /** Corrections of a decision by a part of the draws that does not hold in all of them. */
  private static final int MOST_CORRECTIONS = 3;

  /** Least reading above the hottest start, so that the gentle heat is one [K]. */
  private static final double LEAST_RISE = 1;

  private final EnsembleSimulator simulator;

  private final double[] aheads;

  private Planner(EnsembleSimulator simulator, double[] aheads) {
    this.simulator = simulator;
    this.aheads = aheads;
  }

  /** Plans in the calling thread with {@link #PLANNING}. */
  public static Planner withDefaults() {
    return with(EnsembleSimulator.with(PLANNING));
  }

  /** Plans with a simulator, and on the executor that it runs on. */
  public static Planner with(EnsembleSimulator simulator) {
    return new Planner(simulator, new double[] {0});
  }

  /**
   * The same that may also pull by the pace of the display, eq. (93). Slow cuts then wait for
   * higher readings: cores hold their wish better, and times of the pull differ more.
   */
  public Planner byPace() {
    return new Planner(simulator, AHEADS);
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
      draws.learn(decision.reading(), decision.growth());
    }
    Run run = follow(request, draws, decision);
    for (int i = 0; i < MOST_CORRECTIONS && !decision.holds(request, run); i++) {
      decision = decision.corrected(request, run);
      run = follow(request, draws, decision);
    }
    return new Assembly(request, draws, decision, run).plan();
  }

  private static Run follow(PlanRequest request, Draws draws, Decision decision) {
    double[] times = new double[Assembly.SAMPLES];
    double until = decision.lead() + request.service().latest();
    for (int i = 0; i < times.length; i++) {
      times[i] = until * i / (times.length - 1);
    }
    return draws.runSampled(decision.pull(), request.service().leastRest(), decision.lead(), times);
  }

  private Decision decide(PlanRequest request, Draws draws, double guess) {
    int count = Math.min(WEIGHING, draws.size());
    double floor = draws.hottestStart(count) + LEAST_RISE;
    double first = Math.max(guess, floor);
    Service service = request.service();
    Run pilot = draws.run(count, first, service.leastRest(), 0);
    Pace pace = new Pace(pilot, first, service);
    double rise = Spread.of(pilot.finalCore).median() - first;
    double low = Math.max(floor, request.wish().middle() - rise - SPACING * (NODES - 1) / 2);
    for (int round = 0; ; round++) {
      double[] readings = new double[NODES];
      for (int k = 0; k < NODES; k++) {
        readings[k] = low + SPACING * k;
      }
      double[] leaves = Arrays.stream(readings).map(pace::lead).toArray();
      Scan scan =
          new Scan(
              request,
              new ScanNodes(readings, draws.scan(count, readings, service.leastRest(), leaves)),
              0);
      double shift = round < MOST_ROUNDS ? shift(scan, service, low <= floor) : 0;
      if (shift == 0) {
        return decision(scan, pace, low <= floor);
      }
      low = Math.max(floor, low + shift);
    }
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

  /** The rule of least loss, of those that draw the rise on for a time. */
  private Decision decision(Scan fixed, Pace pace, boolean atFloor) {
    Scan scan = fixed.bestOf(aheads);
    Candidate chosen = scan.best().orElseGet(scan::nearest);
    return new Decision(
        scan.pullAt(chosen.reading()),
        chosen.reading(),
        pace.lead(chosen.reading()),
        scan.candidates(),
        scan.slopeAt(chosen),
        scan.growthAt(chosen.reading()),
        atFloor && chosen.equals(scan.lowest()));
  }
}
