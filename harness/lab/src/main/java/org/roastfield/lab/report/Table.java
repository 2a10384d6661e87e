package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Rows of text under headings; the first entry of a row is its heading.
 *
 * @param caption what the table holds
 * @param kind how its entries are set
 * @param headings of the columns
 * @param rows as long as {@code headings}
 */
record Table(String caption, Kind kind, List<String> headings, List<List<String>> rows) {

  /** How entries are set. */
  enum Kind {
    /** Flush right, but for the first column. */
    NUMBERS,
    /** Flush left. */
    WORDS,
    /** Flush left, and broken anywhere if need be: checksums, and whatever a file may hold. */
    FILE_TEXT;

    /** Name in the style sheet. */
    String styleName() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  Table {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != headings.size()) {
        throw new IllegalArgumentException(
            "rows must have " + headings.size() + " entries, one had " + row.size());
      }
    }
  }

  /** Table of numbers. */
  static Table ofNumbers(String caption, List<String> headings, List<List<String>> rows) {
    return new Table(caption, Kind.NUMBERS, headings, rows);
  }

  /** Table of words. */
  static Table ofWords(String caption, List<String> headings, List<List<String>> rows) {
    return new Table(caption, Kind.WORDS, headings, rows);
  }

  /** Table of what files hold. */
  static Table ofFileText(String caption, List<String> headings, List<List<String>> rows) {
    return new Table(caption, Kind.FILE_TEXT, headings, rows);
  }

  /** A row with its heading first. */
  static List<String> row(String heading, List<String> entries) {
    List<String> row = new ArrayList<>();
    row.add(heading);
    row.addAll(entries);
    return row;
  }

  /**
   * Writes the table in a box that scrolls by itself, by keyboard too, where the screen is
   * narrower.
   */
  void writeTo(Markup page) {
    page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", caption);
    page.open("table", "class", kind.styleName()).element("caption", caption);
    page.open("thead").open("tr");
    headings.forEach(heading -> page.element("th", heading, "scope", "col"));
    page.close().close().newLine().open("tbody").newLine();
    for (List<String> row : rows) {
      page.open("tr").element("th", row.get(0), "scope", "row");
      row.subList(1, row.size()).forEach(entry -> page.element("td", entry));
      page.close().newLine();
    }
    page.close().close().close().newLine();
  }
}
