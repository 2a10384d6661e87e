package org.roastfield.lab.report;

import java.util.List;

/**
 * Pictures with a caption and the numbers behind them.
 *
 * @param title in a few words
 * @param caption how to read it
 * @param panels one above the other, at least one
 * @param tables the numbers, at least one
 */
record Figure(String title, String caption, List<Panel> panels, List<Table> tables) {

  Figure {
    panels = List.copyOf(panels);
    tables = List.copyOf(tables);
    if (panels.isEmpty() || tables.isEmpty()) {
      throw new IllegalArgumentException("a figure must have a picture and a table");
    }
  }

  /** Writes the figure under a number. */
  void writeTo(Markup page, int number) {
    page.open("figure").newLine().open("figcaption");
    page.element("strong", "Figure " + number + ". " + title + ".").text(" " + caption).close();
    page.newLine();
    panels.forEach(panel -> panel.writeTo(page));
    page.open("details").element("summary", "Numbers of figure " + number).newLine();
    tables.forEach(table -> table.writeTo(page));
    page.close().newLine().close().newLine();
  }
}
