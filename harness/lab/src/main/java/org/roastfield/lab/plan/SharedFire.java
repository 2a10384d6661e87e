package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

  private static final double MINUTE = 60;

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

    /** Its median after the zero of a clock [s]. */
    double after(PlanClock clock) {
      return clock.timeOf(sheet.clock()) + step.time().median();
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
    steps.sort(byTime());
    return List.copyOf(steps);
  }

  /** The steps of one of the plans, without a fire that is lit already. */
  List<PlanStep> steps(PlanSheet sheet) {
    return sheet.steps().stream()
        .filter(step -> !step.id().equals("light") || sheet.file().equals(lit().file()))
        .toList();
  }

  private Comparator<Step> byTime() {
    PlanClock first = sheets.get(0).clock();
    return Comparator.comparingDouble(step -> step.after(first));
  }

  private PlanSheet lit() {
    return sheets.stream()
        .map(sheet -> new Step(sheet, sheet.step("light").orElseThrow()))
        .min(byTime())
        .orElseThrow()
        .sheet();
  }

  /** What does not go together, or may not. */
  public List<PlanLine> lines() {
    List<PlanLine> lines = new ArrayList<>();
    for (int a = 0; a < sheets.size(); a++) {
      for (int b = a + 1; b < sheets.size(); b++) {
        air(sheets.get(a), sheets.get(b)).ifPresent(lines::add);
        TwoSears.of(sheets.get(a), sheets.get(b)).map(TwoSears::line).ifPresent(lines::add);
      }
    }
    lines.addAll(searsBesideGentle());
    apart().ifPresent(lines::add);
    lines.add(onTime());
    return lines;
  }

  /** That being late has parted what was to be on the table at one time. */
  private Optional<PlanLine> apart() {
    if (sheets.stream().noneMatch(sheet -> sheet.late().isPresent())) {
      return Optional.empty();
    }
    PlanClock first = sheets.get(0).clock();
    double[] asked =
        sheets.stream()
            .mapToDouble(one -> table(one, first) - one.late().map(Lateness::later).orElse(0.0))
            .sorted()
            .toArray();
    if (asked[asked.length - 1] - asked[0] >= MINUTE) {
      return Optional.empty();
    }
    PlanSheet last =
        sheets.stream().max(Comparator.comparingDouble(sheet -> table(sheet, first))).orElseThrow();
    boolean together =
        sheets.stream().allMatch(sheet -> table(last, first) - table(sheet, first) < MINUTE);
    return together
        ? Optional.empty()
        : Optional.of(
            new PlanLine(
                "NOT together",
                "what is late is served when it can be, "
                    + last.file().name()
                    + " last, at "
                    + last.clock().text(last.carving())
                    + ": plan all of them for then with --serve-at to have them at once",
                ""));
  }

  /** When one is on the table, after the zero of a clock [s]. */
  private static double table(PlanSheet sheet, PlanClock clock) {
    return clock.timeOf(sheet.clock()) + sheet.carving();
  }

  private List<PlanLine> searsBesideGentle() {
    List<PlanLine> lines = new ArrayList<>();
    for (int sear = 0; sear < sheets.size(); sear++) {
      for (int gentle = 0; gentle < sheets.size(); gentle++) {
        if (sear != gentle) {
          SearBesideGentle.of(sheets.get(sear), sheets.get(gentle))
              .forEach(one -> lines.add(one.line()));
        }
      }
    }
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
