package org.roastfield.lab.notebook;

/** A notebook with what it printed and showed, as a page for those who have no Jupyter. */
final class NotebookPage {

  private static final String STYLES =
      """
      body { max-width: 60rem; margin: auto; padding: 1rem; font: 1rem/1.5 serif }
      pre { white-space: pre-wrap; font: 0.85rem/1.4 monospace }
      .text { white-space: pre-wrap }
      .code { background: #f1f3f5; padding: 0.5rem }
      """;

  private final StringBuilder html = new StringBuilder();

  NotebookPage(String title) {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<meta charset=\"utf-8\">\n<title>")
        .append(escaped(title))
        .append("</title>\n<style>\n")
        .append(STYLES)
        .append("</style>\n");
  }

  /** Adds a cell and its output. */
  void add(NotebookFile.Cell cell, String output) {
    html.append(cell.isCode() ? "<pre class=\"code\">" : "<div class=\"text\">")
        .append(escaped(cell.source()))
        .append(cell.isCode() ? "</pre>\n" : "</div>\n");
    String[] parts = output.split(Kernel.SHOWN, -1);
    for (int i = 0; i < parts.length; i++) {
      boolean isShown = i % 2 == 1;
      html.append(isShown ? parts[i] : "<pre>" + escaped(parts[i]) + "</pre>").append('\n');
    }
  }

  String finished() {
    return html.append("</html>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }
}
