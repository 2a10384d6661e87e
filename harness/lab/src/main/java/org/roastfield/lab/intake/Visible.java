package org.roastfield.lab.intake;

/** Untrusted text on a screen: what would move the cursor, colour or turn words is spelt out. */
public final class Visible {

  private Visible() {}

  /** The text with control and format characters as their numbers. */
  public static String text(String text) {
    StringBuilder visible = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (isPlain(point)) {
                visible.appendCodePoint(point);
              } else {
                visible.append(String.format("\\u%04x", point));
              }
            });
    return visible.toString();
  }

  /** Whether a text has none of them. */
  static boolean isPlain(String text) {
    return text.codePoints().allMatch(Visible::isPlain);
  }

  private static boolean isPlain(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      default -> true;
    };
  }
}
