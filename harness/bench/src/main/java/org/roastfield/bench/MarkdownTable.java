package org.roastfield.bench;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Lines and tables of a document, ended as on Unix. */
final class MarkdownTable {

  private final PrintStream out;

  MarkdownTable(PrintStream out) {
    this.out = out;
  }

  void line(String text) {
    out.print(text + "\n");
  }

  /** A heading, a paragraph and the head of a table. */
  void start(String heading, String paragraph, String... columns) {
    line("");
    line("## " + heading);
    line("");
    line(paragraph);
    line("");
    row(columns);
    line("|" + "---|".repeat(columns.length));
  }

  void row(String... cells) {
    line("| " + String.join(" | ", cells) + " |");
  }

  static String fixed(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** Two digits that count. */
  static String rounded(double value) {
    return new BigDecimal(value).round(new MathContext(2)).toPlainString();
  }

  /** The same with its sign. */
  static String signed(double value) {
    return value > 0 ? "+" + rounded(value) : rounded(value);
  }
}
