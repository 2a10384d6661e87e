package org.roastfield.lab.plan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.roastfield.core.plan.Spread;
import org.roastfield.lab.timeline.Caution;

/** Sentences that screen, page and calendar have in common. */
public final class PlanSentences {

  /** What stands under every plan. */
  public static final String ALWAYS =
      "Estimates, which permit nothing: check with a thermometer you trust; local food codes decide."
          + " Coals give off carbon monoxide: outdoors only. Hot metal and flaring fat: gloves, tongs,"
          + " the lid at hand.";

  private PlanSentences() {}

  /**
   * Clock times to the minute of the ends of a spread, which are within half a day of its median.
   */
  public static String range(PlanClock clock, Spread time) {
    return clock(clock, time.low()) + "–" + clock(clock, time.high());
  }

  private static String clock(PlanClock clock, double time) {
    return Double.isFinite(time) ? Words.clock(clock.at(time)) : "never";
  }

  /** Clock time to the minute, with the days by which it is off a day: 23:40 −1 d. */
  public static String clock(PlanClock clock, double time, LocalDate day) {
    if (!Double.isFinite(time)) {
      return "never";
    }
    LocalDateTime at = Words.minute(clock.at(time));
    long days = ChronoUnit.DAYS.between(day, at.toLocalDate());
    String sign = days < 0 ? "−" : "+";
    return Words.clock(at) + (days == 0 ? "" : " " + sign + Math.abs(days) + " d");
  }

  /** What being late costs. */
  public static String late(Lateness late, int draws) {
    String asked = Words.clock(late.asked());
    String chance =
        late.chance().isPresent()
            ? "served then all the same, it is ready in time in "
                + Words.chance(late.chance().getAsDouble(), draws)
            : "by then not even the fire is ready";
    return "for "
        + asked
        + " the fire should have been lit at "
        + Words.clock(late.shouldHaveBegun())
        + " on "
        + Words.day(late.shouldHaveBegun())
        + "; "
        + chance
        + ". This plan begins now and serves "
        + Words.duration(late.later())
        + " after that, the soonest with the chances asked for.";
  }

  /** That clocks change between a time [s] and the zero, if they do. */
  public static Optional<String> change(PlanClock clock, double from) {
    double forward = clock.forward(from, 0);
    if (forward == 0) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Clocks go %s by %s in this plan (UTC%s before, UTC%s after): times are the clock's, and"
                + " an hour of cooking stays an hour.",
            forward > 0 ? "forward" : "back",
            Words.duration(Math.abs(forward)),
            clock.offset(from).orElseThrow(),
            clock.offset(0).orElseThrow()));
  }

  /** First sentences of the cautions that say, in capitals, that something is not met. */
  public static List<String> pressing(PlanSheet sheet) {
    Map<String, String> sentences = new LinkedHashMap<>();
    for (Caution caution : sheet.cautions()) {
      String sentence = first(caution.text());
      if (sentence.contains(" BELOW ") || sentence.contains(" NOT ")) {
        sentences.putIfAbsent(caution.subject(), sentence);
      }
    }
    return List.copyOf(sentences.values());
  }

  private static String first(String text) {
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }
}
