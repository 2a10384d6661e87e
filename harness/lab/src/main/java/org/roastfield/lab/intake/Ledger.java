package org.roastfield.lab.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps the book of what was changed and what was set aside. */
final class Ledger {

  /** How many of the things set aside are kept word for word; all of them are counted. */
  static final int MOST_KEPT = 200;

  private final Map<String, long[]> changes = new LinkedHashMap<>();
  private final Map<String, long[]> aside = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<SetAside> kept = new ArrayList<>();

  /** Notes a change of a row or cell. */
  void change(String what, long line) {
    note(changes, what, line);
  }

  /** Notes something set aside. */
  void setAside(long line, String text, String reason) {
    note(aside, reason, line);
    if (kept.size() < MOST_KEPT) {
      kept.add(new SetAside(line, text, reason));
    }
  }

  /** Notes what looks wrong; at most {@link #MOST_KEPT}, since changes count all of them. */
  void finding(Finding finding) {
    if (findings.size() < MOST_KEPT) {
      findings.add(finding);
    }
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  private static void note(Map<String, long[]> book, String what, long line) {
    long[] entry = book.computeIfAbsent(what, key -> new long[] {0, line});
    entry[0]++;
  }

  List<Change> changes() {
    return list(changes);
  }

  List<Change> asideCounts() {
    return list(aside);
  }

  List<SetAside> kept() {
    return List.copyOf(kept);
  }

  private static List<Change> list(Map<String, long[]> book) {
    return book.entrySet().stream()
        .map(entry -> new Change(entry.getKey(), entry.getValue()[0], entry.getValue()[1]))
        .toList();
  }
}
