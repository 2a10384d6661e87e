package org.roastfield.lab.intake;

/** A log that cannot be taken in as declared: says where, what was found and what was expected. */
public final class IntakeException extends RuntimeException {

  private static final long serialVersionUID = 1;

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
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .limit(60)
        .forEach(
            point -> {
              if (Character.isISOControl(point)) {
                quoted.append(String.format("\\u%04x", point));
              } else {
                quoted.appendCodePoint(point);
              }
            });
    return quoted.append(text.codePointCount(0, text.length()) > 60 ? "…\"" : "\"").toString();
  }
}
