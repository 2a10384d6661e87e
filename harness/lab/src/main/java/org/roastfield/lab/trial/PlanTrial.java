package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntConsumer;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.PullRule;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.plan.Service;
import org.roastfield.core.units.Temperatures;

/** Runs cooks that follow plans, rules of thumb, and an oracle. */
public final class PlanTrial {

  /** Promise: carved up to a quarter of an hour late, kept for an hour at most. */
  static final Service SERVICE = Service.usual().withLatest(900);

  /** Different cooks; each is planned once. */
  private static final int KINDS = 20;

  /** Baseline: fixed carryover [K]. */
  private static final double CARRYOVER = 5;

  /** Baseline: a line through half an hour of readings, drawn on for twenty minutes. */
  private static final double WINDOW = 1800;

  private static final double AHEAD = 1200;

  private static final Prior PRIOR = Prior.of(TrialCook.PARAMETERS);

  private final EnsembleSimulator simulator;
  private final long seed;

  /**
   * @param simulator of the plans
   */
  public PlanTrial(EnsembleSimulator simulator, long seed) {
    this.simulator = simulator;
    this.seed = seed;
  }

  /**
   * One cook by all rules.
   *
   * @param other whether its truth is another model than that of the plan
   * @param wish [K]
   * @param plan that was followed
   * @param byPlan what came of it
   * @param byOracle of someone who knows the numbers of the cook, but not its weather
   * @param byWeight of minutes for a weight
   * @param byCarryover of a pull 5 K before the wish
   * @param byLine of a straight line through the readings
   */
  public record Tried(
      boolean other,
      double wish,
      Plan plan,
      Result byPlan,
      Result byOracle,
      Result byWeight,
      Result byCarryover,
      Result byLine) {}

  /**
   * What came of a rule.
   *
   * @param cook that followed it
   * @param lead how long before the wanted carving it went on [s]
   */
  public record Result(FollowedCook cook, double lead) {

    /** Distance of the final core from the wish [K]. */
    double miss(double wish) {
      return Math.abs(cook.finalCore() - wish);
    }

    /** How far outside the promised window it was ready [s]; a day if never. */
    double outside() {
      double late = cook.ready() - lead - SERVICE.latest();
      double early = lead - SERVICE.longestHold() - cook.ready();
      return Math.min(86_400, Math.max(0, Math.max(late, early)));
    }
  }

  /**
   * Tries cooks.
   *
   * @param count how many; every second truth is of another model
   * @param done is told how many are done
   */
  public List<Tried> run(int count, IntConsumer done) {
    List<Tried> tried = new ArrayList<>();
    double pace = minutesPerWeight();
    for (int kind = 0; kind < Math.min(KINDS, count); kind++) {
      TrialCook cook = kind(kind);
      Plan plan = plan(cook);
      for (int i = kind; i < count; i += KINDS) {
        tried.add(tried(cook, plan, i, pace));
        done.accept(tried.size());
      }
    }
    return tried;
  }

  /** Kinds of cooks: 70 to 106 mm, 105 to 125 °C, 57 to 65 °C. */
  private static TrialCook kind(int number) {
    return new TrialCook(
        0.07 + 0.004 * (number % 10),
        Temperatures.celsius(105 + 5 * (number % 5)),
        Temperatures.celsius(57 + 2 * (number * 7 % 5)));
  }

  private Plan plan(TrialCook cook) {
    return Planner.with(simulator)
        .byPace()
        .plan(
            PlanRequest.of(cook.planned(), PRIOR, CoreWish.of(cook.wish()))
                .with(SERVICE)
                .withDraws(1000, seed));
  }

  private Tried tried(TrialCook cook, Plan plan, int number, double pace) {
    SplittableRandom random = new SplittableRandom(seed * 7_919 + number + 1);
    PlanRequest drawn = PlanRequest.of(cook.planned(), PRIOR, CoreWish.of(cook.wish()));
    ParameterPoint point = SearPlanner.at(drawn.prior(), PRIOR.draw(random));
    boolean other = number / KINDS % 2 == 1;
    TrialTruth model =
        other
            ? TrialTruth.OTHERS.get(number / KINDS / 2 % TrialTruth.OTHERS.size())
            : TrialTruth.AS_PLANNED;
    FollowedCook.Truth truth = model.truth(cook, point, new ReadingNoise(number));
    double lead = pace * cook.weight();
    double wish = cook.wish();
    return new Tried(
        other,
        wish,
        plan,
        result(PullRule.of(plan.pull()), truth, plan.lead()),
        oracle(cook, model, point, truth),
        result(PullRule.atTime(lead - 200 - TrialCook.REST), truth, lead),
        result(PullRule.atReading(wish - CARRYOVER), truth, lead),
        result(PullRule.byStraightLine(wish, AHEAD, WINDOW), truth, lead));
  }

  private static Result result(PullRule rule, FollowedCook.Truth truth, double lead) {
    return new Result(FollowedCook.by(rule, truth, TrialCook.REST, lead), lead);
  }

  /** Knows the numbers, in calm weather: its pull and lead are exact there. */
  private static Result oracle(
      TrialCook cook, TrialTruth model, ParameterPoint point, FollowedCook.Truth truth) {
    ParameterPoint calm = point;
    for (int p = 0; p < calm.size(); p++) {
      String name = calm.coordinate(p).name();
      boolean weather = name.startsWith("drift-") || name.startsWith("opening");
      calm = weather ? calm.moved(p, name.equals("openings") ? -1 : 0) : calm;
    }
    FollowedCook.Truth known = model.truth(cook, calm, new ReadingNoise(0)).withoutNoise();
    double low = Temperatures.celsius(25);
    double high = cook.wish() + 3;
    double margin = 0.5 * (SERVICE.longestHold() - SERVICE.latest());
    double lead = 0;
    for (int i = 0; i < 14; i++) {
      double reading = 0.5 * (low + high);
      FollowedCook tried =
          FollowedCook.by(PullRule.atReading(reading), known, TrialCook.REST, lead);
      lead = tried.ready() + margin;
      if (!(tried.ready() < 1e6)) {
        lead = 36_000;
        high = reading;
      } else if (tried.finalCore() > cook.wish()) {
        high = reading;
      } else {
        low = reading;
      }
    }
    return result(PullRule.atReading(0.5 * (low + high)), truth, lead);
  }

  /**
   * Time for a weight [s/kg] that the middle of the beliefs needs over all kinds: the best that a
   * table of minutes could say here.
   */
  private double minutesPerWeight() {
    double sum = 0;
    for (int kind = 0; kind < KINDS; kind++) {
      TrialCook cook = kind(kind);
      Plan plan =
          Planner.with(simulator)
              .byPace()
              .plan(
                  PlanRequest.of(cook.planned(), PRIOR, CoreWish.of(cook.wish()))
                      .with(SERVICE.withChance(0.5).withLatest(0))
                      .withDraws(100, seed));
      sum += plan.lead() / cook.weight();
    }
    return sum / KINDS;
  }
}
