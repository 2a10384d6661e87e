package org.roastfield.lab.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.plan.Role;
import org.roastfield.lab.files.CookFile;

/**
 * Several cuts on one cooker, each with a plan of its own. Each is computed as if it were alone:
 * what one takes from the fire, and what it gives off, does not reach the others. The fire is not
 * changed for one of them.
 *
 * @param sheets the plans, at least two; the first is the one that was asked for
 */
public record SharedFire(List<PlanSheet> sheets) {

  /** Gentle airs that differ by more than this cannot be had at once [K]; assumed. */
  private static final double ONE_AIR = 3;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there are fewer than two, or two of one name
   */
  public SharedFire {
    sheets = List.copyOf(sheets);
    if (sheets.size() < 2) {
      throw new IllegalArgumentException("plans on one fire must be two or more");
    }
    long names = sheets.stream().map(sheet -> sheet.file().name()).distinct().count();
    if (names < sheets.size()) {
      throw new IllegalArgumentException("cuts on one fire must have different names");
    }
  }

  /**
   * A step of one of them.
   *
   * @param sheet its plan
   * @param step of that
   */
  public record Step(PlanSheet sheet, PlanStep step) {

    /** Clock time of its median. */
    LocalDateTime at() {
      return sheet.clock().at(step.time().median());
    }

    /** What is done to which cut. */
    public String what() {
      return sheet.file().name() + ": " + step.what();
    }
  }

  /** All steps in order of time; the fire is lit once, for the first that needs it. */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (PlanSheet sheet : sheets) {
      for (PlanStep step : steps(sheet)) {
        if (Double.isFinite(step.time().median())) {
          steps.add(new Step(sheet, step));
        }
      }
    }
    steps.sort(Comparator.comparing(Step::at));
    return List.copyOf(steps);
  }

  /** The steps of one of the plans, without a fire that is lit already. */
  List<PlanStep> steps(PlanSheet sheet) {
    return sheet.steps().stream()
        .filter(step -> !step.id().equals("light") || sheet.file().equals(lit().file()))
        .toList();
  }

  private PlanSheet lit() {
    return sheets.stream()
        .min(Comparator.comparing(sheet -> new Step(sheet, sheet.step("light").orElseThrow()).at()))
        .orElseThrow();
  }

  /** What does not go together, or may not. */
  public List<PlanLine> lines() {
    List<PlanLine> lines = new ArrayList<>();
    for (int a = 0; a < sheets.size(); a++) {
      for (int b = a + 1; b < sheets.size(); b++) {
        air(sheets.get(a), sheets.get(b)).ifPresent(lines::add);
        sears(sheets.get(a), sheets.get(b)).ifPresent(lines::add);
      }
    }
    lines.add(onTime());
    return lines;
  }

  private static Optional<PlanLine> air(PlanSheet a, PlanSheet b) {
    double first = gentle(a.file());
    double second = gentle(b.file());
    return Math.abs(first - second) <= ONE_AIR
        ? Optional.empty()
        : Optional.of(
            new PlanLine(
                "one fire",
                a.file().name()
                    + " is planned at "
                    + a.scale().text(first)
                    + ", "
                    + b.file().name()
                    + " at "
                    + b.scale().text(second)
                    + ": one cooker has one air. Write the same into both files and plan again",
                ""));
  }

  private static double gentle(CookFile file) {
    List<Role> roles = StageRoles.of(file);
    return file.stages().stream()
        .filter(stage -> roles.get(stage.firstStage()) == Role.GENTLE)
        .findFirst()
        .orElseThrow()
        .upper()
        .air();
  }

  /** Sears that meet at their medians, or within the 10 to 90 % of when they begin. */
  private static Optional<PlanLine> sears(PlanSheet a, PlanSheet b) {
    Optional<PlanStep> first = a.step("sear");
    Optional<PlanStep> second = b.step("sear");
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    double shift = a.clock().timeOf(b.clock().zero());
    double from = first.get().time().median();
    double to = shift + second.get().time().median();
    double busy = from <= to ? searing(a, first.get()) : searing(b, second.get());
    double apart = Math.abs(to - from);
    boolean mayMeet =
        shift + second.get().time().low() < first.get().time().high()
            && first.get().time().low() < shift + second.get().time().high();
    if (!mayMeet && apart >= busy) {
      return Optional.empty();
    }
    String names = a.file().name() + " and " + b.file().name();
    String when =
        apart < busy
            ? String.format(
                Locale.ROOT,
                "%s come to the sear %s apart, and the first takes %s",
                names,
                Words.duration(apart),
                Words.duration(busy))
            : names
                + " come to the sear "
                + Words.duration(apart)
                + " apart at their medians, but may well meet";
    return Optional.of(
        new PlanLine(
            "two sears",
            when
                + ". Without room for both, the second waits beside the heat, where its core goes on"
                + " rising: serve it later, or pull it sooner",
            ""));
  }

  private static double searing(PlanSheet sheet, PlanStep sear) {
    return sheet.step("rest").orElseThrow().time().median() - sear.time().median();
  }

  /** What is sure whether the cuts are early and late together or not. */
  private PlanLine onTime() {
    double most = 1;
    double least = 1;
    int draws = Integer.MAX_VALUE;
    for (PlanSheet sheet : sheets) {
      double chance = sheet.plan().chanceReady();
      most = Math.min(most, chance);
      least -= 1 - chance;
      draws = Math.min(draws, sheet.plan().members());
    }
    return new PlanLine(
        "all of them on time",
        "in "
            + Words.chance(Math.max(0, least), draws)
            + " to "
            + Words.chance(most, draws)
            + ", by how much they are late together; each is computed as if it were alone, on a fire that is"
            + " kept as stated",
        "");
  }
}
