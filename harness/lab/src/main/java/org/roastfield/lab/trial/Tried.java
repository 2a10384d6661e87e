package org.roastfield.lab.trial;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.plan.Plan;

/**
 * One cook by all rules.
 *
 * @param cooker number of its cooker
 * @param truth the model it comes from
 * @param wish [K]
 * @param plan that was followed
 * @param kept one that keeps the promised window
 * @param results of the rules
 */
record Tried(
    int cooker, TrialTruth truth, double wish, Plan plan, Plan kept, Map<Rule, Result> results) {

  /** Copies the map. */
  Tried {
    results = new EnumMap<>(results);
  }

  /** Whether its truth is another model than that of the plan. */
  boolean other() {
    return truth != TrialTruth.AS_PLANNED;
  }

  /** Rules that it was cooked by, in order. */
  Set<Rule> rules() {
    return results.keySet();
  }

  /** What someone goes by. */
  enum Rule {
    /** The plan. */
    PLAN("plan"),
    /** A plan that keeps the window whatever the core is. */
    KEPT("plan, window kept"),
    /** A plan that knows nothing of the logs, where there are some. */
    UNLEARNED("plan without the logs"),
    /** The best rule for someone who knows the numbers of the truth, not its weather. */
    ORACLE("oracle"),
    /** The same that keeps the window. */
    ORACLE_KEPT("oracle, window kept"),
    /** Minutes for a weight: off the heat by the clock. */
    WEIGHT("minutes for a weight"),
    /** A pull 5 K before the wish. */
    CARRYOVER("carryover of 5 K"),
    /** A straight line through the readings, drawn on. */
    LINE("straight line");

    private final String words;

    Rule(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    /** Whether it knows something of the cut and the cooker. */
    boolean knows() {
      return this != WEIGHT && this != CARRYOVER && this != LINE;
    }
  }

  /**
   * What came of a rule.
   *
   * @param cook that followed it
   * @param lead how long before the wanted carving it went on [s]
   */
  record Result(FollowedCook cook, double lead) {

    /** How late it was rested [s]; negative where it had to be kept. */
    double late() {
      return cook.ready() - lead;
    }
  }

  /** Distance of the final core from the wish [K]. */
  double miss(Rule rule) {
    return Math.abs(result(rule).cook().finalCore() - wish);
  }

  /** Final core less the wish [K]. */
  double high(Rule rule) {
    return result(rule).cook().finalCore() - wish;
  }

  boolean near(Rule rule) {
    return miss(rule) <= Oracle.CLOSE;
  }

  /** Whether it was rested in the promised window. */
  boolean inWindow(Rule rule) {
    double late = result(rule).late();
    return late <= PlanTrial.SERVICE.latest() && late >= -PlanTrial.SERVICE.longestHold();
  }

  /** Whether it was rested by the latest carving. */
  boolean inTime(Rule rule) {
    return result(rule).late() <= PlanTrial.SERVICE.latest();
  }

  /** The plan whose chances are stated of a rule that is followed. */
  Plan plan(Rule rule) {
    return rule == Rule.KEPT ? kept : plan;
  }

  Result result(Rule rule) {
    Result result = results.get(rule);
    if (result == null) {
      throw new IllegalArgumentException("rule must be one of " + results.keySet());
    }
    return result;
  }
}
