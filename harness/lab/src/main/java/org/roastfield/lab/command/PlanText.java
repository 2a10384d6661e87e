package org.roastfield.lab.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.roastfield.lab.plan.Lateness;
import org.roastfield.lab.plan.PlanClock;
import org.roastfield.lab.plan.PlanLine;
import org.roastfield.lab.plan.PlanSentences;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.PlanStep;
import org.roastfield.lab.plan.SharedFire;
import org.roastfield.lab.plan.Words;

/**
 * A plan as text for one screen: at most 40 lines of at most 100 columns, and more only where
 * wishes that are not met, cautions and what to go by need them.
 */
final class PlanText {

  /** Lines of a screen, less that which names the files. */
  private static final int MOST = 39;

  private static final int WIDEST = 100;
  private static final int WIDEST_STEP = 40;

  /** Characters of what is assumed: two lines, or one where there is no room. */
  private static final int ASSUMED = 182;

  private static final int ASSUMED_IN_ONE = 84;

  /** From so much on a slack is told in whole hours that have passed by then [s]. */
  private static final double HOURS = 36_000;

  /** Statements that each of several cuts has on the screen. */
  private static final Set<String> FOR_EACH =
      Set.of("final core", "on time", "fire", "off the heat", "window");

  /** Subject of what not knowing the cooker costs. */
  private static final String COOKER = "cooker";

  /** A space that a line may end at: none before a unit. */
  private static final Pattern BREAK = Pattern.compile(" (?!(?:%|°C|°F|K|min|h|d|g|kg|mm)\\b|%)");

  private final PlanSheet sheet;
  private final List<String> lines;

  /** Several cuts on one fire: all steps in one timetable, then what to expect of each. */
  static String of(SharedFire shared) {
    PlanText text = new PlanText(shared.sheets().get(0));
    for (PlanSheet sheet : shared.sheets()) {
      new PlanText(sheet, text.lines).title();
    }
    text.lines.add("");
    text.timetable(shared);
    shared.sheets().stream()
        .flatMap(sheet -> PlanSentences.behind(sheet).stream())
        .findFirst()
        .ifPresent(words -> text.wrap("", "  ", words));
    shared.sheets().stream()
        .flatMap(sheet -> PlanSentences.change(sheet).stream())
        .findFirst()
        .ifPresent(words -> text.wrap("", "  ", words));
    text.lines.add("");
    shared.lines().forEach(line -> text.statement("", "  ", line));
    for (PlanSheet sheet : shared.sheets()) {
      text.lines.add("");
      text.lines.add(sheet.file().name());
      sheet.lines().stream()
          .filter(line -> isNeeded(line, sheet) || line.subject().equals(COOKER))
          .forEach(line -> text.statement("  ", "    ", line));
      PlanSentences.assumedBeside(sheet, shared)
          .ifPresent(line -> text.statement("  ", "    ", line));
      PlanSentences.pressing(sheet).forEach(sentence -> text.wrap("  ! ", "    ", sentence));
    }
    text.lines.add("");
    PlanSentences.assumedOfAll(shared).ifPresent(line -> text.statement("", "  ", line));
    text.wrap("! ", "  ", PlanSentences.ALWAYS + " All that was found: plan.html, plan-2.html …");
    return String.join("\n", text.lines) + "\n";
  }

  private void timetable(SharedFire shared) {
    TextTable table = new TextTable(false, false, true, false, false);
    table.add("clock", "10 to 90 %", "slack", "cut", "estimated");
    LocalDate day = PlanSentences.day(sheet);
    for (SharedFire.Step one : shared.steps()) {
      PlanClock clock = one.sheet().clock();
      PlanStep step = one.step();
      table.add(
          PlanSentences.clock(clock, step.time().median(), day),
          step.isByClock() ? "" : PlanSentences.range(clock, step.time()),
          slack(step),
          shortened(one.sheet().file().name()),
          shortened(step.what()));
    }
    table.toString().lines().forEach(lines::add);
  }

  private PlanText(PlanSheet sheet) {
    this(sheet, new ArrayList<>());
  }

  private PlanText(PlanSheet sheet, List<String> lines) {
    this.sheet = sheet;
    this.lines = lines;
  }

  static String of(PlanSheet sheet) {
    PlanText text = new PlanText(sheet);
    text.title();
    text.timetable();
    text.cautions();
    return String.join("\n", text.lines) + "\n";
  }

  private void title() {
    wrap(
        "",
        "",
        sheet.file().name()
            + ", on the table at "
            + PlanSentences.service(sheet)
            + (sheet.file().madeUp() ? " (numbers made up)" : ""));
    sheet.late().ifPresent(this::late);
    sheet.problems().forEach(unmet -> statement("NOT MET: ", "  ", unmet.line()));
  }

  private void late(Lateness late) {
    wrap("TOO LATE: ", "  ", PlanSentences.late(late, sheet.plan().members()));
  }

  private void timetable() {
    TextTable table = new TextTable(false, false, true, false, false);
    table.add("clock", "10 to 90 %", "slack", "estimated", "when it slips");
    LocalDate day = PlanSentences.day(sheet);
    for (PlanStep step : sheet.steps()) {
      if (!isWithCarving(step)) {
        table.add(
            PlanSentences.clock(sheet.clock(), step.time().median(), day),
            step.isByClock() ? "" : PlanSentences.range(sheet.clock(), step.time()),
            slack(step),
            shortened(what(step)),
            step.slips());
      }
    }
    table.toString().lines().forEach(lines::add);
    PlanSentences.behind(sheet).ifPresent(words -> wrap("", "  ", words));
    PlanSentences.change(sheet).ifPresent(words -> wrap("", "  ", words));
    lines.add("");
  }

  /** Whether it has rested enough just when it is carved, which is one row then. */
  private boolean isWithCarving(PlanStep step) {
    return step.id().equals("ready")
        && sheet.step("carve").filter(carve -> carve.time().equals(step.time())).isPresent();
  }

  private String what(PlanStep step) {
    boolean one =
        step.id().equals("carve") && sheet.step("ready").filter(this::isWithCarving).isPresent();
    return one ? "carve: rested enough" : step.what();
  }

  private static String slack(PlanStep step) {
    if (step.slack() >= HOURS && Double.isFinite(step.slack())) {
      return (int) Math.floor(step.slack() / 3600) + " h";
    }
    return Double.isFinite(step.slack()) ? Words.duration(step.slack()) : "";
  }

  private static String shortened(String text) {
    int length = text.codePointCount(0, text.length());
    return length <= WIDEST_STEP
        ? text
        : text.substring(0, text.offsetByCodePoints(0, WIDEST_STEP - 1)) + "…";
  }

  private void statement(String lead, String indent, PlanLine line) {
    String status = line.status().isEmpty() ? "" : " [" + line.status() + "]";
    wrap(lead, indent, line.subject() + ": " + line.text() + status);
  }

  /**
   * Cautions, and what to expect and to go by, in any case; then as many other statements as the
   * screen holds, the cost of no profile and what is assumed before the rest. What is assumed takes
   * one line instead of two where that leaves room for what may happen.
   */
  private void cautions() {
    PlanText end = new PlanText(sheet);
    end.lines.add("");
    PlanSentences.pressing(sheet).forEach(sentence -> end.wrap("! ", "  ", sentence));
    end.wrap("! ", "  ", PlanSentences.ALWAYS);
    int room = MOST - lines.size() - end.lines.size();
    List<PlanLine> shown = shown(PlanSentences.assumed(sheet, ASSUMED), room);
    if (!tellsChanges(shown)) {
      List<PlanLine> other = shown(PlanSentences.assumed(sheet, ASSUMED_IN_ONE), room);
      shown = tellsChanges(other) ? other : shown;
    }
    shown.forEach(line -> statement("", "  ", line));
    lines.addAll(end.lines);
  }

  private static boolean tellsChanges(List<PlanLine> shown) {
    return shown.stream().anyMatch(line -> line.subject().startsWith("what if"));
  }

  /** The statements that so many lines hold, in their order. */
  private List<PlanLine> shown(PlanLine assumed, int lines) {
    List<PlanLine> statements = new ArrayList<>(sheet.lines());
    statements.add(assumed);
    List<PlanLine> inOrder = new ArrayList<>(statements);
    inOrder.sort(Comparator.comparingInt(line -> rank(line, assumed)));
    Set<PlanLine> shown = new HashSet<>();
    int room = lines;
    for (PlanLine line : inOrder) {
      int height = height(line);
      if (height <= room || isNeeded(line, sheet)) {
        shown.add(line);
        room -= height;
      }
    }
    return statements.stream().filter(shown::contains).toList();
  }

  /** What to expect and to go by, at each station. */
  private static boolean isNeeded(PlanLine line, PlanSheet sheet) {
    return FOR_EACH.contains(line.subject())
        || sheet.plan().stations().stream().anyMatch(one -> one.name().equals(line.subject()));
  }

  private int rank(PlanLine line, PlanLine assumed) {
    if (isNeeded(line, sheet)) {
      return 0;
    }
    return line.subject().equals(COOKER) ? 1 : line.equals(assumed) ? 2 : 3;
  }

  private int height(PlanLine line) {
    PlanText alone = new PlanText(sheet);
    alone.statement("", "  ", line);
    return alone.lines.size();
  }

  /** A sentence over as many lines as it takes, broken at spaces. */
  private void wrap(String lead, String indent, String sentence) {
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : BREAK.split(sentence, -1)) {
      int length = line.codePointCount(0, line.length()) + word.codePointCount(0, word.length());
      if (!empty && length + 1 > WIDEST) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
  }
}
