package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.FireCheck;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Minimum;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.SearCheck;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.plan.WhatIf;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.salting.SaltPlan;
import org.roastfield.lab.timeline.TemperatureScale;

/** What a plan says beside its timetable. */
final class PlanLines {

  /** Widths that grow by less than this factor are alike, for so few draws. */
  private static final double WIDER = 1.05;

  private static final double MINUTE = 60;

  private static final double TEN_MINUTES = 600;

  private final CookFile file;
  private final Plan plan;
  private final PlanRequest request;
  private final CoreWishes wish;
  private final TemperatureScale scale;

  PlanLines(
      CookFile file, Plan plan, PlanRequest request, CoreWishes wish, TemperatureScale scale) {
    this.file = file;
    this.plan = plan;
    this.request = request;
    this.wish = wish;
    this.scale = scale;
  }

  List<PlanLine> all(
      Optional<Plan> known,
      CookerBelief belief,
      Optional<SearTable> sears,
      List<PlanChange> changes,
      Optional<Purchase> purchase,
      Optional<SaltPlan> salt) {
    List<PlanLine> lines = new ArrayList<>();
    lines.add(finalCore());
    lines.add(onTime());
    lines.add(
        known
            .filter(one -> Double.isFinite(pullWidth(one)) && Double.isFinite(pullWidth(plan)))
            .map(one -> cooker(one, belief))
            .orElseGet(() -> new PlanLine("cooker", belief.words(), "")));
    if (!changes.isEmpty()) {
      lines.add(whatIf(changes));
    }
    sears.ifPresent(table -> lines.add(table.line(scale)));
    SearCheck check = plan.searCheck();
    boolean told = Double.isFinite(check.byReading()) && Double.isFinite(check.byTime());
    if (told && plan.milestones().stream().anyMatch(one -> one.kind() == Milestone.Kind.SEAR)) {
      lines.add(searCheck());
    }
    purchase.ifPresent(one -> lines.add(buy(one)));
    salt.map(PlanLines::salt).ifPresent(lines::add);
    if (plan.notBuilt() > 0) {
      lines.add(
          new PlanLine(
              "left out",
              plan.notBuilt() + " of " + request.members() + " draws, which cannot be computed",
              ""));
    }
    return lines;
  }

  private PlanLine finalCore() {
    String minima = "";
    for (Minimum minimum : request.minima()) {
      minima +=
          String.format(
              Locale.ROOT,
              "; %s or more was asked for with %.0f %%, and comes with %s",
              scale.text(minimum.temperature()),
              100 * minimum.chance(),
              chance(plan.chanceOf(minimum.temperature())));
    }
    return new PlanLine(
        "final core",
        scale.text(plan.finalCore().median())
            + between(plan.finalCore())
            + ", wished "
            + wished()
            + ": short of it in "
            + chance(plan.chanceUnder())
            + ", beyond in "
            + chance(plan.chanceOver())
            + minima,
        "");
  }

  /**
   * How the readings on the way decide: the look at the display, and the pull.
   *
   * @param clock that times are told by
   */
  List<PlanLine> rules(PlanClock clock) {
    List<PlanLine> lines = new ArrayList<>();
    plan.check().ifPresent(check -> lines.add(new PlanLine("fire", fire(check, clock), "")));
    lines.add(new PlanLine("off the heat", PullWords.of(plan, clock, scale).text(), ""));
    if (plan.pull().isBound()) {
      lines.add(new PlanLine("window", window(clock), ""));
    } else if (file.notes().plan().kept()) {
      lines.add(new PlanLine("window", "not kept: too few would be done by then", ""));
    }
    return lines;
  }

  private String window(PlanClock clock) {
    return "kept: whatever the display shows it comes off not before "
        + clock.text(plan.pull().from() - plan.lead())
        + " and by "
        + clock.text(plan.pull().until() - plan.lead())
        + "; what is undercooked by its core then goes back to the heat, and is late";
  }

  /** How the look's sum is done, by numbers of the plan; empty if there is none to do. */
  Optional<String> example(PlanClock clock) {
    return plan.check()
        .filter(check -> check.ahead() > 0 && !check.until().isEmpty())
        .map(check -> example(check, clock));
  }

  private String example(FireCheck check, PlanClock clock) {
    double there = plan.lead() + plan.milestone(Milestone.Kind.CHECK).time().median();
    double first = check.until().get(0);
    double last = check.until().get(check.until().size() - 1);
    double times = check.ahead() / Plan.AHEAD;
    double took = MINUTE * Math.max(1, Math.rint((0.5 * (first + last) - there) / times / MINUTE));
    double at = there + times * took;
    double more = check.raisedAt(at);
    String raised =
        check.lean() == 0
            ? ""
            : ", and it comes off "
                + scale.differenceText(Math.abs(more))
                + (more < 0 ? " lower" : " higher")
                + " than is told below";
    return String.format(
        Locale.ROOT,
        "Say it showed %s at %s and shows %s at %s: that took %s, %.0f times that later is %s, and the"
            + " fire is kept %s%s.",
        scale.text(check.reading() - Plan.AHEAD),
        clock.text(there - took - plan.lead()),
        scale.text(check.reading()),
        clock.text(there - plan.lead()),
        Words.duration(took),
        times,
        clock.text(at - plan.lead()),
        kept(check.hotterAt(at)),
        raised);
  }

  private String fire(FireCheck check, PlanClock clock) {
    StringBuilder text = new StringBuilder("display at ");
    text.append(scale.text(check.reading()));
    if (check.ahead() > 0) {
      text.append(
          String.format(
              Locale.ROOT,
              ", add %.0f times what its last %s took to the time,",
              check.ahead() / Plan.AHEAD,
              scale.differenceText(Plan.AHEAD)));
    }
    for (int band = 0; band < check.hotter().size(); band++) {
      boolean last = band == check.until().size();
      String until = last ? "" : clock.text(check.until().get(band) - plan.lead());
      text.append(band == 0 ? " " : ", ")
          .append(last ? (band == 0 ? "in any case" : "later") : "by " + until)
          .append(": ")
          .append(kept(check.hotter().get(band)));
    }
    return text.append(raised(check, clock)).toString();
  }

  /** How the look moves the reading of the pull; nothing if it does not. */
  private String raised(FireCheck check, PlanClock clock) {
    return check.lean() == 0
        ? ""
        : String.format(
            Locale.ROOT,
            "; off %.2f %s %s per 10 min past %s, ±%s at most",
            scale.difference(Math.abs(check.lean()) * TEN_MINUTES),
            scale.differenceUnit(),
            check.lean() > 0 ? "higher" : "lower",
            clock.text(check.middle() - plan.lead()),
            scale.wholeDifferenceText(FireCheck.MOST_RAISED));
  }

  private String kept(double hotter) {
    return hotter == 0
        ? "as it is"
        : scale.wholeDifferenceText(Math.abs(hotter)) + (hotter > 0 ? " hotter" : " cooler");
  }

  private String wished() {
    CoreWish wished = request.wish();
    String how =
        wish.words().isEmpty()
            ? scale.text(wished.middle())
                + ", "
                + scale.wholeDifferenceText(CoreWish.NEAR)
                + " either way"
            : wish.words();
    return String.format(
        Locale.ROOT, "%.1f to %s (%s)", scale.value(wished.low()), scale.text(wished.high()), how);
  }

  private String between(Spread spread) {
    return String.format(
        Locale.ROOT, " (%.1f to %s)", scale.value(spread.low()), scale.text(spread.high()));
  }

  private PlanLine onTime() {
    String latest =
        request.service().latest() > 0
            ? "by the latest service, " + Words.duration(request.service().latest()) + " later,"
            : "on time";
    return new PlanLine(
        "on time",
        "rested "
            + latest
            + " in "
            + chance(plan.chanceReady())
            + (request.service().latest() > 0
                ? ", by the wanted one in " + chance(plan.chanceReadyAsWished())
                : "")
            + (plan.waits() ? "; before its sear it waits for " : "; kept warm for ")
            + Words.duration(plan.held().median())
            + " ("
            + Words.duration(plan.held().low())
            + " to "
            + Words.duration(plan.held().high())
            + "), for more than "
            + Words.duration(request.service().longestHold())
            + " in "
            + chance(plan.chanceHeldTooLong()),
        "");
  }

  private PlanLine searCheck() {
    SearCheck check = plan.searCheck();
    String numbers =
        String.format(
            Locale.ROOT,
            "%s of spread left against %s",
            scale.differenceText(check.byReading()),
            scale.differenceText(check.byTime()));
    return new PlanLine(
        "core after the sear",
        check.readingTellsMore()
            ? "tells the final core better than the clock does: " + numbers
            : "only a check, it tells the final core no better than the clock: " + numbers,
        "");
  }

  private PlanLine cooker(Plan known, CookerBelief belief) {
    return new PlanLine(
        "cooker",
        belief.words()
            + ". "
            + (belief.fromLogs() ? "What it leaves open" : "Not knowing it")
            + " widens 10 to 90 % of the pull "
            + widened(pullWidth(known), pullWidth(plan), Words::duration)
            + ", of the core "
            + widened(coreWidth(known), coreWidth(plan), scale::differenceText),
        "");
  }

  private static PlanLine whatIf(List<PlanChange> changes) {
    List<String> words = new ArrayList<>();
    for (PlanChange change : changes) {
      String outcome = outcome(change.effect());
      words.add(
          change.what() + ", " + (words.isEmpty() ? outcome : outcome.replaceFirst("^off ", "")));
    }
    boolean exact =
        changes.stream().allMatch(one -> one.effect().method() == WhatIf.Method.ALL_DRAWS);
    return new PlanLine(exact ? "what if" : "what if, roughly", String.join("; ", words), "");
  }

  private static String outcome(WhatIf.Effect effect) {
    double pull = effect.pull();
    if (Double.isInfinite(pull) || Double.isNaN(pull)) {
      return "most never get to the pull";
    }
    return pull == 0 && effect.draws() > 0
        ? "rested in time in " + Words.chance(effect.chanceReady(), effect.draws())
        : "off "
            + Words.duration(Math.abs(pull))
            + (pull < 0 ? " earlier" : " later")
            + why(effect);
  }

  /** A late display asks for a hotter fire, which may do more than make up for it. */
  private static String why(WhatIf.Effect effect) {
    boolean late = effect.later().getOrDefault(Milestone.Kind.CHECK, 0.0) > 0;
    return late && effect.pull() < 0 ? " by a hotter fire" : "";
  }

  private static String widened(double from, double to, DoubleFunction<String> words) {
    return to > WIDER * from
        ? "from " + words.apply(from) + " to " + words.apply(to)
        : "hardly, " + words.apply(to);
  }

  private static double pullWidth(Plan plan) {
    Spread time = plan.milestone(Milestone.Kind.PULL).time();
    return time.high() - time.low();
  }

  private static double coreWidth(Plan plan) {
    return plan.finalCore().high() - plan.finalCore().low();
  }

  private PlanLine buy(Purchase one) {
    String text =
        String.format(
            Locale.ROOT,
            "%.1f kg for %d people: %.0f g each cooked, %.0f %% trim, %.0f %% bone, %.0f %% left after"
                + " cooking",
            one.boughtInFull(),
            one.people(),
            1000 * one.portion(),
            100 * one.trim(),
            100 * one.bone(),
            100 * one.yield());
    String here =
        file.mass().isEmpty()
            ? ""
            : String.format(
                Locale.ROOT,
                "; this cut, %.2f kg trimmed, feeds %d",
                file.mass().getAsDouble(),
                one.fedBy(file.mass().getAsDouble()));
    return new PlanLine("to buy", text + here, "assumed");
  }

  private static PlanLine salt(SaltPlan salt) {
    double share = 100 * salt.wish().share();
    double depth = 1000 * salt.depth();
    if (salt.hours().isEmpty()) {
      return new PlanLine(
          "salt",
          String.format(
              Locale.ROOT,
              "does not come %.0f mm deep within %s: salt the slices instead",
              depth,
              Words.duration(SaltPlan.COMPUTED)),
          "assumed");
    }
    return new PlanLine(
        "salt",
        String.format(
            Locale.ROOT,
            "%.1f %% of the raw weight, %.0f h ahead (%s to %s h): by then the meat %.0f mm deep has"
                + " %.0f %% of what the face has",
            share,
            salt.hours().getAsDouble(),
            hours(salt.fastHours()),
            hours(salt.slowHours()),
            depth,
            100 * salt.wish().evenness()),
        "assumed");
  }

  private static String hours(OptionalDouble hours) {
    return hours.isPresent() ? String.format(Locale.ROOT, "%.0f", hours.getAsDouble()) : "over 240";
  }

  /** Wishes that are not met, each with its reason. */
  private String chance(double chance) {
    return Words.chance(chance, plan.members());
  }
}
