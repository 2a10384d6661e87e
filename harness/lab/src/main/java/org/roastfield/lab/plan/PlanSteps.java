package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.Spread;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;
import org.roastfield.lab.salting.SaltPlan;
import org.roastfield.lab.timeline.TemperatureScale;

/** The milestones of a plan as lines of a timetable. */
final class PlanSteps {

  /** Id of the step at which the cut has to be there. */
  static final String BUY_ID = "buy";

  /** Id of the step at which the heat of a sear is got ready. */
  static final String SEAR_HEAT_ID = "sear-heat";

  private static final String MOVE =
      "Decided by the clock. Later than its slack, everything after it moves along, service too.";
  private static final String CHECK =
      "When the display gets there, and how long its last rise took, tells how fast this cut is,"
          + " and decides the fire.";
  private static final String READING =
      "Go by the display, not by the clock. Late: a hotter fire, or serve later. Early: go on, and"
          + " keep it warm after the rest.";
  private static final String WAITING =
      "Go by the display, and by the clock as far as its readings say. Late: a hotter fire, or serve"
          + " later. Early: it waits, loosely covered, until its sear.";
  private static final String SEAR_BY_CLOCK =
      "Not before this, however long it waits; at once if it came off late.";
  private static final String CRUST =
      "Go by clock and crust: the core hardly moves in these minutes.";
  private static final String CLOCK = "Go by the clock.";
  private static final String BROWNER = " Longer for a browner crust costs a wider grey ring.";
  private static final String SEAR_HEAT =
      "The plan counts on full heat when the sear begins: raise it beside a cut that is still on the"
          + " gentle heat, never under it; with one fire for both, once it is off. A stage of pause"
          + " in the cook file has the plan wait for the fire.";

  /** What a sear that is a quarter longer may do to a core that hardly moves [K]; assumed. */
  private static final double HARDLY = 0.5;

  private static final String BUY_TO_SALT =
      "At the latest when it is salted. Late: salt it as soon as it is there, and the salt reaches"
          + " less deep; later than its slack, everything moves along, service too.";
  private static final String BUY =
      "At the latest then. Later than its slack, everything after it moves along, service too.";
  private static final String SERVE = "Late: carve as soon as it has rested, and serve later.";
  private static final String HOLD =
      "Early: keep it warm and loosely covered. Late: carve as soon as it has rested.";

  private final CookFile file;
  private final List<Role> roles;
  private final Plan plan;
  private final TemperatureScale scale;
  private final double heating;
  private final Optional<String> towards;
  private final Optional<String> pale;
  private final double bySearing;

  /**
   * @param heating how long before a sear its heat is got ready [s]
   * @param towards which end of a taper lies towards the heat, if one side is hotter
   * @param pale that the sear leaves the crust paler than wished, if it does
   * @param bySearing how much hotter the middle gets if it sears a quarter longer [K]
   */
  PlanSteps(
      CookFile file,
      List<Role> roles,
      Plan plan,
      TemperatureScale scale,
      double heating,
      Optional<String> towards,
      Optional<String> pale,
      double bySearing) {
    this.file = file;
    this.roles = roles;
    this.plan = plan;
    this.scale = scale;
    this.heating = heating;
    this.towards = towards;
    this.pale = pale;
    this.bySearing = bySearing;
  }

  /**
   * All steps in order.
   *
   * @param salt to be put on, if any
   * @param purchase for those who are to be fed, if any are
   * @param carving from carving to the table [s]
   * @param now after the clock's zero [s]; what should have been before is now
   * @param rules how readings decide, to stand with their steps
   * @param example of the look at the display, if there is one
   */
  List<PlanStep> list(
      Optional<SaltPlan> salt,
      Optional<Purchase> purchase,
      double carving,
      OptionalDouble now,
      List<PlanLine> rules,
      Optional<String> example) {
    List<PlanStep> steps = new ArrayList<>();
    for (PlanStep plain : inOrder(salt, purchase, rules)) {
      boolean look = plain.id().equals(PlanStep.id(Milestone.Kind.CHECK));
      PlanStep step = look ? plain.withAdvice(example.map(text -> " " + text).orElse("")) : plain;
      boolean past = now.isPresent() && step.time().high() < now.getAsDouble();
      steps.add(past ? past(step, now.getAsDouble()) : step);
    }
    Milestone carve = plan.milestone(Milestone.Kind.CARVE);
    Spread table =
        new Spread(
            carve.time().low() + carving,
            carve.time().median() + carving,
            carve.time().high() + carving);
    steps.add(
        new PlanStep("table", "on the table", table, carve.slack(), "", advice(carve.rule())));
    return List.copyOf(steps);
  }

  /** What should have been before is done now, but what the fire is lit for must be there. */
  private PlanStep past(PlanStep step, double now) {
    boolean lit =
        first(Milestone.Kind.LIGHT).filter(one -> one.time().median() > now + 60).isEmpty();
    String what = step.what();
    return step.id().equals(BUY_ID) && lit
        ? step.at(now, "bought by now: " + what.substring("buy ".length()))
        : step.at(now, "now: " + what);
  }

  private List<PlanStep> inOrder(
      Optional<SaltPlan> salt, Optional<Purchase> purchase, List<PlanLine> rules) {
    List<PlanStep> steps = new ArrayList<>();
    purchase.ifPresent(one -> steps.add(buy(one)));
    plan.milestones().forEach(one -> steps.add(step(one, salt, rules)));
    searHeat().ifPresent(steps::add);
    steps.sort(Comparator.comparingDouble(step -> step.time().median()));
    return steps;
  }

  /**
   * The cut has to be there when it is salted, or else when it leaves the fridge, or goes on. Salt
   * may come later and reach less deep: until the next of these everything holds.
   */
  private PlanStep buy(Purchase purchase) {
    Optional<Milestone> salting = first(Milestone.Kind.SALT);
    Milestone needed =
        first(Milestone.Kind.OUT_OF_COLD).or(() -> first(Milestone.Kind.ON)).orElseThrow();
    Spread time = salting.orElse(needed).time();
    return new PlanStep(
        BUY_ID,
        "buy " + purchase.words(),
        time,
        needed.time().median() + needed.slack() - time.median(),
        salting.isPresent() ? "late: it is salted later" : "late: what follows moves",
        salting.isPresent() ? BUY_TO_SALT : BUY);
  }

  private Optional<Milestone> first(Milestone.Kind kind) {
    return plan.milestones().stream().filter(one -> one.kind() == kind).findFirst();
  }

  /** Somebody has to get the sear's heat ready, where no pause is there for it. */
  private Optional<PlanStep> searHeat() {
    return plan.milestones().stream().anyMatch(one -> one.kind() == Milestone.Kind.RAISE)
        ? Optional.empty()
        : plan.milestones().stream()
            .filter(one -> one.kind() == Milestone.Kind.SEAR)
            .filter(one -> Double.isFinite(one.time().median()))
            .map(this::searHeat)
            .findFirst();
  }

  private PlanStep searHeat(Milestone sear) {
    double first = sear.time().low() - heating;
    Spread time =
        plan.waits()
            ? new Spread(first, first, first)
            : new Spread(first, sear.time().median() - heating, sear.time().high() - heating);
    return new PlanStep(
        SEAR_HEAT_ID,
        "get the sear's heat ready",
        time,
        sear.slack(),
        "late: the sear waits for it",
        SEAR_HEAT);
  }

  private PlanStep step(Milestone milestone, Optional<SaltPlan> salt, List<PlanLine> rules) {
    String id = PlanStep.id(milestone.kind());
    boolean salting = milestone.kind() == Milestone.Kind.SALT;
    return new PlanStep(
        id,
        what(milestone.kind(), salt),
        milestone.time(),
        salting ? Double.POSITIVE_INFINITY : milestone.slack(),
        salting
            ? "late: it reaches less deep"
            : milestone.kind() == Milestone.Kind.CHECK ? "late: a hotter fire" : slips(milestone),
        salting
            ? "Late: put it on all the same, and it reaches less deep."
            : switch (milestone.kind()) {
              case CHECK -> CHECK + rule("fire", rules);
              case PULL ->
                  advice(milestone.rule()) + rule("off the heat", rules) + rule("window", rules);
              case ON ->
                  milestone.rule() == Milestone.Rule.BY_CLOCK_AND_CRUST
                      ? CRUST + BROWNER
                      : advice(milestone.rule());
              case SEAR, RAISE -> searing(plan.waits() ? SEAR_BY_CLOCK : CRUST);
              default -> advice(milestone.rule());
            });
  }

  /** A thin cut goes on under its crust, a thick one hardly does. */
  private String searing(String rule) {
    if (bySearing < HARDLY) {
      return rule + BROWNER;
    }
    return (rule.equals(CRUST) ? CLOCK : rule)
        + " A sear a quarter longer makes the middle of this cut "
        + scale.differenceText(bySearing)
        + " hotter, by the computation: a browner crust needs an earlier pull, or more heat for a"
        + " shorter time.";
  }

  private static String rule(String subject, List<PlanLine> rules) {
    return rules.stream()
        .filter(one -> one.subject().equals(subject))
        .map(one -> " By the " + one.subject() + " rule: " + one.text() + ".")
        .findFirst()
        .orElse("");
  }

  private String what(Milestone.Kind kind, Optional<SaltPlan> salt) {
    return switch (kind) {
      case SALT -> "salt all round, " + salt.map(PlanSteps::amount).orElseThrow();
      case OUT_OF_COLD -> "out of the fridge";
      case PAT_DRY -> "pat dry";
      case LIGHT -> "light the fire";
      case FIRST_SEAR -> "sear first, " + sear(true);
      case ON -> "on the gentle heat" + towards.map(end -> ", " + end + " to the heat").orElse("");
      case CHECK -> check();
      case NEAR -> "display at " + scale.text(plan.reading() - Plan.AHEAD) + ": get ready";
      case PULL -> "off the gentle heat at about " + scale.text(plan.reading());
      case RAISE -> "raise the fire";
      case SEAR -> "sear: " + sear(false);
      case REST -> "off the fire, to rest";
      case PEAK -> "core at its hottest";
      case READY -> "rested enough";
      case CARVE -> "carve";
    };
  }

  private String check() {
    return "display at " + scale.text(plan.check().orElseThrow().reading()) + ": see fire";
  }

  private static String amount(SaltPlan salted) {
    return salted.mass().isPresent()
        ? String.format(Locale.ROOT, "%.0f g", 1000 * salted.mass().getAsDouble())
        : String.format(Locale.ROOT, "%.1f %% of its weight", 100 * salted.wish().share());
  }

  /** Length of the sear before or after the gentle heat, as the file has it. */
  private String sear(boolean first) {
    int gentle = roles.indexOf(Role.GENTLE);
    return file.stages().stream()
        .filter(stage -> roles.get(stage.firstStage()) == Role.SEAR)
        .filter(stage -> stage.firstStage() < gentle == first)
        .map(StageSetup::end)
        .collect(Collectors.joining(", then "));
  }

  private String slips(Milestone milestone) {
    if (plan.waits() && milestone.kind() == Milestone.Kind.PULL) {
      return "early: waits for its sear";
    }
    if (milestone.kind() == Milestone.Kind.PEAK) {
      return "";
    }
    return switch (milestone.rule()) {
      case MOVE_THE_REST -> "late: what follows moves";
      case BY_READING ->
          plan.pull().isBound() ? "late: a hotter fire" : "late: hotter or serve later";
      case BY_CLOCK_AND_CRUST ->
          milestone.kind() == Milestone.Kind.SEAR
              ? pale.map(crust -> "by clock; " + crust).orElse("by clock and crust")
              : "by clock and crust";
      case HOLD_OR_CARVE_LATER -> plan.waits() ? "late: serve later" : "early: keep warm";
    };
  }

  private String advice(Milestone.Rule rule) {
    return switch (rule) {
      case MOVE_THE_REST -> MOVE;
      case BY_READING -> plan.waits() ? WAITING : READING;
      case BY_CLOCK_AND_CRUST -> searing(CRUST);
      case HOLD_OR_CARVE_LATER -> plan.waits() ? SERVE : HOLD;
    };
  }
}
