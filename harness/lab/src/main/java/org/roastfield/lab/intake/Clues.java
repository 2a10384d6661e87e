package org.roastfield.lab.intake;

import java.util.List;

/**
 * What a guess goes by: the beginning of a log, and what is concluded from it.
 *
 * @param names of the columns
 * @param units below the names, if a line of them is; else nothing for each
 * @param rows below the header that are wanted
 * @param decimalComma whether numbers have one
 * @param reasons for what was guessed; guesses add theirs
 * @param questions that the content cannot decide; guesses add theirs
 */
record Clues(
    List<String> names,
    List<String> units,
    List<List<String>> rows,
    boolean decimalComma,
    List<String> reasons,
    List<String> questions) {

  /** Name of a column. */
  String name(int column) {
    return names.get(column);
  }

  /** Name of a column with the unit below it. */
  String heading(int column) {
    String unit = column < units.size() ? units.get(column).strip() : "";
    return unit.isEmpty() ? name(column) : name(column) + " (" + unit + ")";
  }

  /** Cell of a row without space around it; nothing where the row ends before. */
  static String cell(List<String> row, int column) {
    return column < row.size() ? row.get(column).strip() : "";
  }

  void because(String reason) {
    reasons.add(reason);
  }

  void ask(String question) {
    questions.add(question);
  }
}
