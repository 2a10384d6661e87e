package org.roastfield.lab.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A plan's timetable as a calendar file. */
public final class PlanCalendar {

  private PlanCalendar() {}

  /**
   * Text of plan.ics. What the clock decides is an entry without length, what a reading decides
   * lasts from its 10 to its 90 % time; what never comes is left out.
   *
   * @param made when the plan was made
   */
  public static String text(PlanSheet sheet, Instant made) {
    return CalendarFile.text(List.of(part(sheet, sheet.steps())), made);
  }

  /** The same of all cuts on one fire. */
  public static String text(SharedFire shared, Instant made) {
    return CalendarFile.text(
        shared.sheets().stream().map(sheet -> part(sheet, shared.steps(sheet))).toList(), made);
  }

  private static CalendarFile.Part part(PlanSheet sheet, List<PlanStep> steps) {
    String name = sheet.file().name();
    List<CalendarEntry> entries = new ArrayList<>();
    for (PlanStep step : steps) {
      if (Double.isFinite(step.time().high())) {
        entries.add(
            new CalendarEntry(
                step.id(),
                name + ": " + step.what(),
                description(sheet, step),
                step.time().low(),
                step.time().high(),
                true));
      }
    }
    return new CalendarFile.Part(name, sheet.clock(), entries);
  }

  private static String description(PlanSheet sheet, PlanStep step) {
    LocalDate day = sheet.clock().minute(step.time().median()).toLocalDate();
    String when =
        step.isByClock()
            ? ""
            : "Most likely at "
                + PlanSentences.clock(sheet.clock(), step.time().median(), day)
                + "; in 8 of 10 within this entry.\n";
    String slack =
        Double.isFinite(step.slack())
            ? "Slack: "
                + Words.duration(step.slack())
                + (step.isBehind() ? ", so it would have to come that much earlier" : "")
                + ".\n"
            : "";
    return when + slack + step.advice() + "\n" + PlanSentences.ALWAYS;
  }
}
