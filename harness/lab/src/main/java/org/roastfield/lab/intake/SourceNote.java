package org.roastfield.lab.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text of SOURCE.md for a log that was taken in: where from, how read, what changed. */
public final class SourceNote {

  private static final int MOST_ROWS = 60;
  private static final int MOST_FINDINGS = 1000;

  private final StringBuilder text = new StringBuilder();

  private SourceNote() {}

  /**
   * Writes the note.
   *
   * @param title of the log
   * @param fileName of the original
   * @param statements of the user: licence, source and such, one line each
   * @param proposal by which it was read
   * @param taken what came of it
   */
  public static String of(
      String title, String fileName, List<String> statements, Proposal proposal, Taken taken) {
    SourceNote note = new SourceNote();
    note.line("# " + escaped(title)).line("");
    statements.forEach(statement -> note.line("- " + escaped(statement)));
    note.line(
        "- taken in from "
            + code(fileName)
            + ", "
            + taken.bytes()
            + " bytes, sha256 "
            + taken.sha256());
    note.line("- read with " + code(proposal.options())).line("");
    note.table("How it was read", List.of("reason"), reasons(proposal));
    note.table(
        "What was changed", List.of("change", "count", "first line"), counts(taken.changes()));
    note.table(
        "What was set aside",
        List.of("reason", "count", "first line"),
        counts(taken.asideCounts()));
    note.table("Set aside, word for word", List.of("line", "text", "reason"), aside(taken));
    note.table(
        "What looks wrong or should be known",
        List.of("what", "channel", "from [s]", "until [s]", "size"),
        findings(taken),
        MOST_FINDINGS);
    note.line(
        "Rows of the file: "
            + taken.rows()
            + ", left out as not wanted: "
            + taken.unwanted()
            + ".");
    return note.text.toString();
  }

  private static List<List<String>> reasons(Proposal proposal) {
    return proposal.reasons().stream().map(List::of).toList();
  }

  private static List<List<String>> counts(List<Change> changes) {
    return changes.stream()
        .map(
            change ->
                List.of(
                    change.what(),
                    Long.toString(change.count()),
                    Long.toString(change.firstLine())))
        .toList();
  }

  private static List<List<String>> aside(Taken taken) {
    return taken.aside().stream()
        .map(one -> List.of(Long.toString(one.line()), one.text(), one.reason()))
        .toList();
  }

  private static List<List<String>> findings(Taken taken) {
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : taken.findings()) {
      rows.add(
          List.of(
              finding.kind().words(),
              finding.channel(),
              number(finding.from()),
              number(finding.until()),
              number(finding.size()) + " " + finding.kind().unit()));
    }
    return rows;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }

  private void table(String title, List<String> header, List<List<String>> rows) {
    table(title, header, rows, MOST_ROWS);
  }

  private void table(String title, List<String> header, List<List<String>> rows, int most) {
    line("## " + title).line("");
    if (rows.isEmpty()) {
      line("Nothing.").line("");
      return;
    }
    line("| " + String.join(" | ", header) + " |");
    line("|" + "---|".repeat(header.size()));
    rows.stream()
        .limit(most)
        .forEach(
            row ->
                line(
                    "| "
                        + String.join(" | ", row.stream().map(SourceNote::escaped).toList())
                        + " |"));
    if (rows.size() > most) {
      line("").line("And " + (rows.size() - most) + " more.");
    }
    line("");
  }

  private SourceNote line(String line) {
    text.append(line).append('\n');
    return this;
  }

  /** Untrusted text: nothing in it is markup. */
  private static String escaped(String words) {
    StringBuilder escaped = new StringBuilder();
    words
        .codePoints()
        .forEach(
            point -> {
              if (Character.isISOControl(point)) {
                escaped.append(' ');
              } else if ("\\`*_{}[]<>|#!&".indexOf(point) >= 0) {
                escaped.append('\\').appendCodePoint(point);
              } else {
                escaped.appendCodePoint(point);
              }
            });
    return escaped.toString();
  }

  private static String code(String words) {
    String fence = words.contains("`") ? "``" : "`";
    String plain = words.replaceAll("\\p{Cntrl}", " ").replace("``", "` `");
    return fence + (fence.length() > 1 ? " " + plain + " " : plain) + fence;
  }
}
