package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreLoss;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.FireCheck;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.PullRule;
import org.roastfield.core.plan.Service;
import org.roastfield.core.plan.Timing;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.plan.CookerBelief;

/** Runs cooks that follow plans, rules of thumb, and an oracle. The same seed gives the same. */
public final class PlanTrial {

  /** Promise: carved up to a quarter of an hour late, kept for an hour at most. */
  static final Service SERVICE = Service.usual().withLatest(900);

  /** Too cold counts as too hot, as the trial counts them. */
  static final CoreLoss LOSS = CoreLoss.squares(1, 1);

  /** Cooks that are logged on a cooker before it is planned for. */
  static final int LOGS = 4;

  /** Cooks that follow plans on a cooker whose logs are known. */
  static final int COOKS_AFTER_LOGS = 10;

  /** Draws of a plan. */
  private static final int DRAWS = 600;

  private static final int DRAWS_AFTER_LOGS = 400;

  /** Baseline: fixed carryover [K]. */
  private static final double CARRYOVER = 5;

  /** Baseline: a line through half an hour of readings, drawn on for twenty minutes. */
  private static final double WINDOW = 1800;

  private static final double AHEAD = 1200;

  /** Cooks that never get to the end of their gentle heat are no logs; so many are tried. */
  private static final int MOST_LOGGED = 20;

  private static final EnsembleSimulator SIMULATOR = EnsembleSimulator.with(Planner.PLANNING);

  private final ExecutorService executor;
  private final long seed;
  private final List<TrialKind> kinds = new ArrayList<>();
  private final List<Plan> plans;
  private final List<Plan> kept;
  private final double pace;

  /**
   * Plans every kind of cook on a cooker without logs.
   *
   * @param executor that cooks are computed on
   */
  public PlanTrial(ExecutorService executor, long seed) {
    this.executor = executor;
    this.seed = seed;
    List<Callable<Plan>> planning = new ArrayList<>();
    for (int number = 0; number < TrialKind.COUNT; number++) {
      TrialKind kind = TrialKind.of(number);
      kinds.add(kind);
      planning.add(() -> plan(kind, CookerBelief.population(kind.planned()).prior(), DRAWS));
    }
    List<Callable<Plan>> keeping = new ArrayList<>();
    for (TrialKind kind : kinds) {
      Prior belief = CookerBelief.population(kind.planned()).prior();
      keeping.add(() -> kept(kind, belief, DRAWS));
    }
    this.plans = all(planning);
    this.kept = all(keeping);
    double sum = 0;
    for (int number = 0; number < kinds.size(); number++) {
      Plan plan = plans.get(number);
      double ready = plan.lead() + plan.milestone(Milestone.Kind.READY).time().median();
      sum += ready / kinds.get(number).weight() / kinds.size();
    }
    this.pace = sum;
  }

  /**
   * Cooks without logs, each on a cooker of its own.
   *
   * @param count how many; every second truth is of another model
   */
  public TrialTable withoutLogs(int count) {
    List<Callable<List<Tried>>> cooks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int number = i;
      cooks.add(
          () -> {
            SplittableRandom random = random(number);
            int kind = number % kinds.size();
            TrialTruth truth = truth(number / kinds.size());
            ParameterPoint point = draw(kinds.get(kind), random);
            long noise = random.nextLong();
            return List.of(
                tried(
                    number,
                    kind,
                    plans.get(kind),
                    kept.get(kind),
                    truth,
                    point,
                    noise,
                    Optional.empty()));
          });
    }
    return new TrialTable("without logs", flat(all(cooks)));
  }

  /**
   * Cooks after four logs of their cooker.
   *
   * @param count cookers; the logs and cooks of every second one are of another model
   */
  public TrialTable afterLogs(int count) {
    List<Callable<List<Tried>>> cookers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int number = i;
      cookers.add(() -> onCooker(number, random(-1L - number)));
    }
    return new TrialTable("after four logs", flat(all(cookers)));
  }

  private List<Tried> onCooker(int cooker, SplittableRandom random) {
    TrialTruth truth = truth(cooker);
    ParameterPoint own = draw(kinds.get(0), random);
    TrialLogs logs = new TrialLogs();
    for (int i = 0; i < MOST_LOGGED && logs.size() < LOGS; i++) {
      TrialKind kind = kinds.get(random.nextInt(kinds.size()));
      logs.add(kind, truth, onSameCooker(own, draw(kind, random)), random.nextLong());
    }
    CookerProfile profile = logs.profile(seed);
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < COOKS_AFTER_LOGS; i++) {
      int number = random.nextInt(kinds.size());
      TrialKind kind = kinds.get(number);
      Prior belief = CookerBelief.of(profile, kind.planned()).prior();
      Plan plan = plan(kind, belief, DRAWS_AFTER_LOGS);
      ParameterPoint point = onSameCooker(own, draw(kind, random));
      Optional<Plan> unlearned = Optional.of(plans.get(number));
      Plan kept = kept(kind, belief, DRAWS_AFTER_LOGS);
      tried.add(tried(cooker, number, plan, kept, truth, point, random.nextLong(), unlearned));
    }
    return tried;
  }

  private SplittableRandom random(long number) {
    return new SplittableRandom(seed * 1_000_003 + number);
  }

  /** Truths in turn, each other one of the plan's model. */
  private static TrialTruth truth(int number) {
    return number % 2 == 0
        ? TrialTruth.AS_PLANNED
        : TrialTruth.OTHERS.get(number / 2 % TrialTruth.OTHERS.size());
  }

  /** A cook on a new cooker. */
  private static ParameterPoint draw(TrialKind kind, SplittableRandom random) {
    Prior prior = CookerBelief.population(kind.planned()).prior();
    return prior.parameters().point(prior.draw(random));
  }

  /** A cook with the cooker of another. */
  private ParameterPoint onSameCooker(ParameterPoint cooker, ParameterPoint cook) {
    ParameterPoint point = cook;
    for (var parameter : kinds.get(0).planned().parameters().of(Owner.COOKER).list()) {
      String id = parameter.id();
      point = point.moved(point.index(id), cooker.value(id));
    }
    return point;
  }

  private Plan plan(TrialKind kind, Prior belief, int draws) {
    return Planner.with(SIMULATOR).plan(request(kind, belief, draws));
  }

  /** One whose window is kept. */
  private Plan kept(TrialKind kind, Prior belief, int draws) {
    PlanRequest request = request(kind, belief, draws).with(SERVICE.withKept(true));
    return Planner.with(SIMULATOR).plan(request);
  }

  private PlanRequest request(TrialKind kind, Prior belief, int draws) {
    return PlanRequest.of(kind.forPlanner(), belief, CoreWish.of(kind.wish()))
        .with(LOSS)
        .with(SERVICE)
        .withDraws(draws, seed);
  }

  /**
   * @param kept the one whose window is kept
   * @param unlearned the plan that knows nothing of the logs, where there are some
   */
  private Tried tried(
      int cooker,
      int number,
      Plan plan,
      Plan kept,
      TrialTruth model,
      ParameterPoint point,
      long noise,
      Optional<Plan> unlearned) {
    TrialKind kind = kinds.get(number);
    Cook cook = model.cook(kind, point, noise);
    FollowedCook.Truth truth =
        new FollowedCook.Truth(
            cook,
            kelvin -> model.cook(kind, kind.planned().hotter(point, kelvin), noise),
            kind.roles(),
            cook.probes().get(0),
            Signal.constant(290),
            new ReadingNoise(noise)::at,
            Settings.withDefaults());
    double lead = pace * kind.weight();
    double wish = kind.wish();
    Plan known = Oracle.plan(kind, model, point, noise, SERVICE, SIMULATOR);
    Plan keeps = Oracle.plan(kind, model, point, noise, SERVICE.withKept(true), SIMULATOR);
    Map<Tried.Rule, Tried.Result> results = new EnumMap<>(Tried.Rule.class);
    results.put(Tried.Rule.PLAN, result(plan, truth));
    results.put(Tried.Rule.KEPT, result(kept, truth));
    unlearned.ifPresent(other -> results.put(Tried.Rule.UNLEARNED, result(other, truth)));
    results.put(Tried.Rule.ORACLE, result(known, truth));
    results.put(Tried.Rule.ORACLE_KEPT, result(keeps, truth));
    results.put(
        Tried.Rule.WEIGHT,
        result(PullRule.atTime(lead - TrialKind.SEAR - TrialKind.REST), truth, lead));
    results.put(Tried.Rule.CARRYOVER, result(PullRule.atReading(wish - CARRYOVER), truth, lead));
    results.put(Tried.Rule.LINE, result(PullRule.byStraightLine(wish, AHEAD, WINDOW), truth, lead));
    return new Tried(cooker, model, wish, plan, kept, results);
  }

  private static Tried.Result result(Plan plan, FollowedCook.Truth truth) {
    return result(PullRule.of(plan.pull()), plan.check(), truth, plan.timing());
  }

  /** Of a rule of thumb, which leaves the fire alone; it waits for its sear as plans do. */
  private static Tried.Result result(PullRule rule, FollowedCook.Truth truth, double lead) {
    double sears = Math.max(0, lead - TrialKind.SEAR - TrialKind.REST);
    return result(rule, Optional.empty(), truth, new Timing(TrialKind.REST, lead, sears));
  }

  private static Tried.Result result(
      PullRule rule, Optional<FireCheck> check, FollowedCook.Truth truth, Timing timing) {
    return new Tried.Result(FollowedCook.by(rule, check, truth, timing), timing.leave());
  }

  private <T> List<T> all(List<Callable<T>> tasks) {
    List<T> results = new ArrayList<>();
    try {
      for (Future<T> one : executor.invokeAll(tasks)) {
        results.add(one.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the trial was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a cook of the trial could not be computed", e.getCause());
    }
    return results;
  }

  private static List<Tried> flat(List<List<Tried>> lists) {
    return lists.stream().flatMap(List::stream).toList();
  }
}
