package org.roastfield.lab.plan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.TemperatureScale;

/** Sentences that screen, page and calendar have in common. */
public final class PlanSentences {

  /** What stands under every plan. */
  public static final String ALWAYS =
      "Estimates, which permit nothing: check with a thermometer you trust; local food codes decide."
          + " Coals give off carbon monoxide: outdoors only. Hot metal, flaring fat: gloves, tongs, lid"
          + " at hand.";

  private static final String BELOW = " BELOW the published minimum";
  private static final String BELOW_THAT = " BELOW that";

  private PlanSentences() {}

  /**
   * Clock times to the minute of the ends of a spread, which are within half a day of its median.
   */
  public static String range(PlanClock clock, Spread time) {
    return clock(clock, time.low()) + "–" + clock(clock, time.high());
  }

  private static String clock(PlanClock clock, double time) {
    return Double.isFinite(time) ? clock.text(time) : "never";
  }

  /** When it is on the table, in words. */
  public static String service(PlanSheet sheet) {
    PlanClock clock = sheet.clock();
    return clock.text(sheet.carving())
        + " on "
        + Words.day(clock.minute(sheet.carving()))
        + clock.zone().map(zone -> ", " + zone).orElse("");
  }

  /** The day by which the others of a plan are told. */
  public static LocalDate day(PlanSheet sheet) {
    return sheet.clock().minute(sheet.carving()).toLocalDate();
  }

  /** Clock time to the minute, with the days by which it is off a day: 23:40 −1 d. */
  public static String clock(PlanClock clock, double time, LocalDate day) {
    if (!Double.isFinite(time)) {
      return "never";
    }
    long days = ChronoUnit.DAYS.between(day, clock.minute(time).toLocalDate());
    String sign = days < 0 ? "−" : "+";
    return clock.text(time) + (days == 0 ? "" : " " + sign + Math.abs(days) + " d");
  }

  /** What being late costs. */
  public static String late(Lateness late, int draws) {
    PlanClock clock = late.clock();
    String chance =
        late.chance().isPresent()
            ? "served then all the same, it is ready in time in "
                + Words.chance(late.chance().getAsDouble(), draws)
            : "by then not even the fire is ready";
    return "for "
        + clock.text(late.asked())
        + " the fire should have been lit at "
        + clock.text(late.shouldHaveBegun())
        + " on "
        + Words.day(clock.minute(late.shouldHaveBegun()))
        + "; "
        + chance
        + ". This plan begins now and serves "
        + Words.duration(late.later())
        + " after that, the soonest with the chances asked for.";
  }

  /** What cook the pictures show, which is also that of the cautions. */
  public static Optional<String> pictured(PlanSheet sheet) {
    return sheet
        .central()
        .map(
            result ->
                "Drawn is the cook in the middle of the beliefs, which goes by this plan"
                    + CentralCook.wait(result).map(stage -> ": " + waits(stage, sheet)).orElse("")
                    + ".");
  }

  private static String waits(StageResult stage, PlanSheet sheet) {
    double off = stage.start() - sheet.plan().lead();
    return "off the gentle heat at "
        + sheet.clock().text(off)
        + ", it waits for its sear for "
        + Words.duration(stage.end() - stage.start());
  }

  /** How the sears that are weighed against each other were computed. */
  public static String weighed(PlanSheet sheet) {
    double held = sheet.sears().orElseThrow().held();
    return "Each sear comes with the pull, on the fire as stated, that leaves the final core in the"
        + " middle of what is wished; "
        + (sheet.plan().waits() ? "the wait for it is " : "after its rest the cut is kept for ")
        + Words.duration(held)
        + ", as the cook in the picture of the slice.";
  }

  /** That clocks change while a plan lasts, if they do, and how minutes are added then. */
  public static Optional<String> change(PlanSheet sheet) {
    double first = Double.POSITIVE_INFINITY;
    double last = sheet.carving();
    for (PlanStep step : sheet.steps()) {
      first = Math.min(first, step.time().low());
      last = Double.isFinite(step.time().high()) ? Math.max(last, step.time().high()) : last;
    }
    return sheet.clock().change(first, last).map(PlanSentences::change);
  }

  private static String offset(ZoneOffset offset) {
    return offset.getTotalSeconds() == 0 ? "" : offset.getId();
  }

  private static String change(ZoneOffsetTransition change) {
    boolean back = change.isOverlap();
    LocalDateTime before = change.getDateTimeBefore();
    LocalDateTime after = change.getDateTimeAfter();
    return String.format(
        Locale.ROOT,
        "Clocks go %s by %s, from %s to %s: %san hour of cooking stays an hour, and 20 min after %s%s"
            + " it is %s%s.",
        back ? "back" : "forward",
        Words.duration((double) change.getDuration().abs().toSeconds()),
        Words.clock(before),
        Words.clock(after),
        back
            ? "times that come twice have an A before that (UTC"
                + offset(change.getOffsetBefore())
                + ") and a B after it (UTC"
                + offset(change.getOffsetAfter())
                + "); "
            : "",
        Words.clock(before.minusMinutes(10)),
        back ? "A" : "",
        Words.clock(after.plusMinutes(10)),
        back ? "B" : "");
  }

  /** That the pictured cook has no end, and what is known of the final core all the same. */
  static String notHeldAgainst(Plan plan, TemperatureScale scale) {
    return "Published minima are NOT held against the expected cook of this plan, in the middle of its"
        + " beliefs, which does not come to its end: one draw in ten gets no hotter in the middle than "
        + scale.text(plan.finalCore().low())
        + ". It has no slice, no hold times and no weight to buy either.";
  }

  /** What it means that steps have a slack below 0, if some do. */
  public static Optional<String> behind(PlanSheet sheet) {
    return sheet.steps().stream().anyMatch(PlanStep::isBehind)
        ? Optional.of(
            "A slack below 0 means: for the chance of being in time that is asked for, that step"
                + " would have to come so much earlier than its median.")
        : Optional.empty();
  }

  /**
   * What is assumed, in a line.
   *
   * @param most characters that it may have; what does not fit is counted
   */
  public static PlanLine assumed(PlanSheet sheet, int most) {
    List<String> all = subjects(sheet);
    int fit = all.size();
    String text = String.join(", ", all);
    while (fit > 0 && text.length() > most) {
      fit--;
      text =
          String.join(", ", all.subList(0, fit)) + ", " + (all.size() - fit) + " more in plan.html";
    }
    return new PlanLine("assumed", text, "");
  }

  /** What is assumed of all cuts on one fire alike, in a line. */
  public static Optional<PlanLine> assumedOfAll(SharedFire shared) {
    List<String> alike = alike(shared);
    return alike.isEmpty()
        ? Optional.empty()
        : Optional.of(new PlanLine("assumed of all", String.join(", ", alike), ""));
  }

  /** What is assumed of one of them beside that, in a line; empty if nothing is. */
  public static Optional<PlanLine> assumedBeside(PlanSheet sheet, SharedFire shared) {
    List<String> own = new ArrayList<>(subjects(sheet));
    own.removeAll(alike(shared));
    return own.isEmpty()
        ? Optional.empty()
        : Optional.of(new PlanLine("assumed", String.join(", ", own), ""));
  }

  private static List<String> alike(SharedFire shared) {
    List<String> alike = new ArrayList<>(subjects(shared.sheets().get(0)));
    shared.sheets().forEach(sheet -> alike.retainAll(subjects(sheet)));
    return alike;
  }

  private static List<String> subjects(PlanSheet sheet) {
    return sheet.assumed().stream().map(PlanLine::subject).toList();
  }

  /**
   * First sentences of the cautions that say, in capitals, that something is not met; of a subject
   * that has several, all that is below something published.
   */
  public static List<String> pressing(PlanSheet sheet) {
    Map<String, String> sentences = new LinkedHashMap<>();
    for (Caution caution : sheet.cautions()) {
      String sentence = first(caution.text());
      if (sentence.contains(" BELOW ")) {
        sentences.merge(caution.subject(), sentence, PlanSentences::joined);
      } else if (sentence.contains(" NOT ")) {
        sentences.putIfAbsent(caution.subject(), sentence);
      }
    }
    return List.copyOf(sentences.values());
  }

  /** Two sentences about one place, the second without what they have in common. */
  private static String joined(String one, String other) {
    int below = other.indexOf(BELOW);
    int from = other.lastIndexOf(" is ", below);
    return from < 0 ? one : one + " It" + other.substring(from).replace(BELOW, BELOW_THAT);
  }

  private static String first(String text) {
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }
}
