package org.roastfield.lab.report;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writer of markup that reads the same as HTML and as XML: it escapes all text and closes what was
 * opened.
 *
 * <p>Attributes come as pairs of name and value.
 */
final class Markup {

  private static final char UNPRINTABLE = '\uFFFD';

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element. */
  Markup open(String tag, String... attributes) {
    startTag(tag, attributes).append('>');
    open.push(tag);
    return this;
  }

  /** Closes the element opened last. */
  Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element that HTML lets stand without an end tag, or any SVG element without content. */
  Markup empty(String tag, String... attributes) {
    startTag(tag, attributes).append("/>");
    return this;
  }

  /** An element with nothing but text in it. */
  Markup element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  /** Text, escaped. */
  Markup text(String text) {
    escapeTo(out, text);
    return this;
  }

  /** Markup that was written by this class before, or a style sheet of ours. */
  Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  /** A line break in the source, for those who read it. */
  Markup newLine() {
    out.append('\n');
    return this;
  }

  /**
   * All that was written.
   *
   * @throws IllegalStateException if an element is still open
   */
  String finished() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("element still open: " + open.peek());
    }
    return out.toString();
  }

  /**
   * Text in which no character can be taken for markup, nor turn the direction of what follows it.
   */
  static String escape(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    escapeTo(escaped, text);
    return escaped.toString();
  }

  private StringBuilder startTag(String tag, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException(
          "attributes must be pairs of name and value, were " + attributes.length);
    }
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      escapeTo(out, attributes[i + 1]);
      out.append('"');
    }
    return out;
  }

  private static void escapeTo(StringBuilder to, String text) {
    text.codePoints().forEach(codePoint -> escapeTo(to, codePoint));
  }

  private static void escapeTo(StringBuilder to, int codePoint) {
    switch (codePoint) {
      case '&' -> to.append("&amp;");
      case '<' -> to.append("&lt;");
      case '>' -> to.append("&gt;");
      case '"' -> to.append("&quot;");
      case '\'' -> to.append("&#39;");
      default -> to.appendCodePoint(isPlain(codePoint) ? codePoint : UNPRINTABLE);
    }
  }

  private static boolean isPlain(int codePoint) {
    boolean control = codePoint < ' ' && codePoint != '\n' && codePoint != '\t';
    boolean laterControl = codePoint >= 0x7F && codePoint < 0xA0;
    boolean surrogate = codePoint >= 0xD800 && codePoint <= 0xDFFF;
    boolean turnsDirection =
        (codePoint >= 0x202A && codePoint <= 0x202E)
            || (codePoint >= 0x2066 && codePoint <= 0x2069);
    boolean noCharacter = (codePoint & 0xFFFE) == 0xFFFE;
    return !(control || laterControl || surrogate || turnsDirection || noCharacter);
  }
}
