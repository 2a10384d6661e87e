package org.roastfield.lab.files;

import de.siegmar.fastcsv.reader.CsvRecord;

/**
 * A row of a log with its place.
 *
 * @param source whole text
 * @param row as parsed
 */
record LogRow(SourceText source, CsvRecord row) {

  /** Number of cells. */
  int size() {
    return row.getFieldCount();
  }

  /** Text of a cell. */
  String cell(int i) {
    return row.getField(i);
  }

  /** Error at the start of a cell. */
  CookFileException error(int cell, String found, String expected) {
    String line = line();
    return new CookFileException(
        source.fileName(), (int) row.getStartingLineNumber(), column(line, cell), found, expected);
  }

  private String line() {
    return source.text().lines().skip(row.getStartingLineNumber() - 1).findFirst().orElse("");
  }

  /** Column of the start of a cell: after as many commas as come before it outside quotes. */
  private static int column(String line, int cell) {
    boolean quoted = false;
    int commas = 0;
    for (int i = 0; i < line.length() && commas < cell; i++) {
      char c = line.charAt(i);
      quoted ^= c == '"';
      if (c == ',' && !quoted && ++commas == cell) {
        return line.codePointCount(0, i + 1) + 1;
      }
    }
    return 1;
  }
}
