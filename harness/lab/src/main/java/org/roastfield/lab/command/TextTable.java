package org.roastfield.lab.command;

import java.util.ArrayList;
import java.util.List;

/** Columns of plain text, as wide as their widest cell; the last is left as it is. */
final class TextTable {

  private final List<List<String>> rows = new ArrayList<>();
  private final List<Boolean> right;

  /** Table whose columns are aligned right where {@code right} says so. */
  TextTable(Boolean... right) {
    this.right = List.of(right);
  }

  void add(String... cells) {
    rows.add(List.of(cells));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.size(); column++) {
        line.append(column > 0 ? "  " : "").append(padded(row.get(column), column));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  private String padded(String cell, int column) {
    String gap = " ".repeat(width(column) - length(cell));
    return right.get(column) ? gap + cell : cell + gap;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
