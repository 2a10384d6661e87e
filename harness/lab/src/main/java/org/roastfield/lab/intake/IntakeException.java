package org.roastfield.lab.intake;

/** A log that cannot be taken in as declared: says where, what was found and what was expected. */
public final class IntakeException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private static final int LONGEST_QUOTE = 60;

  /** Error with all there is to say. */
  IntakeException(String message) {
    super(message);
  }

  /** Error at a place of a file. */
  static IntakeException at(String file, long line, int cell, String found, String expected) {
    return new IntakeException(
        file + ":" + line + ", cell " + (cell + 1) + ": found " + found + ", expected " + expected);
  }

  /** Untrusted text in quotes, shortened, with control characters made visible. */
  static String quoted(String text) {
    boolean whole = text.codePointCount(0, text.length()) <= LONGEST_QUOTE;
    String shown = whole ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE));
    return "\"" + Visible.text(shown) + (whole ? "\"" : "…\"");
  }
}
