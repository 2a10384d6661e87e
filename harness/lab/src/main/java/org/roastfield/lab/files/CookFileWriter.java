package org.roastfield.lab.files;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes the statements of a cook file as YAML that {@link CookFileReader} reads back to the same
 * statements.
 *
 * <p>What belongs together and is short stands on one line, all else on lines of its own. Comments
 * of a file that was read are not kept. To change a cook file in a program, read it, put other
 * statements in, and write it with {@code result.AtomicFile}:
 *
 * <pre>{@code
 * Statement.Keys cook = CookFileReader.read(path).statements();
 * AtomicFile.write(path, CookFileWriter.yaml(cook.with("name", "Second try")));
 * }</pre>
 */
public final class CookFileWriter {

  private static final int WIDEST = 100;

  /** Texts that stand as they are, in lists and braces too: no sign in them means anything. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{Alnum}.°½¼¾+(](?:[\\p{Alnum} .°½¼¾+()/²³·%_\\u2212-]|:(?=\\p{Alnum}))*" + "(?<! )");

  /** Plain texts that YAML takes for no value at all. */
  private static final Pattern NOTHING = Pattern.compile("null|Null|NULL");

  private final StringBuilder yaml = new StringBuilder();

  private CookFileWriter() {}

  /** YAML of a whole file. */
  public static String yaml(Statement.Keys cook) {
    CookFileWriter writer = new CookFileWriter();
    cook.values().forEach((key, value) -> writer.pair("", "", key, value));
    return writer.yaml.toString();
  }

  /**
   * A line of a key, or several.
   *
   * @param lead what the first line begins with
   * @param indent what others begin with
   */
  private void pair(String lead, String indent, String key, Statement value) {
    yaml.append(lead).append(key).append(':');
    String flow = flow(value);
    boolean fits = indent.length() + key.length() + flow.length() < WIDEST;
    boolean inLine = isFlat(value) && fits && !indent.isEmpty();
    if (inLine || value instanceof Statement.Text || isEmpty(value)) {
      yaml.append(' ').append(flow).append('\n');
    } else {
      yaml.append('\n');
      block(indent + "  ", value);
    }
  }

  private void block(String indent, Statement value) {
    if (value instanceof Statement.Keys keys) {
      keys.values().forEach((key, each) -> pair(indent, indent, key, each));
    } else if (value instanceof Statement.Items items) {
      items.items().forEach(item -> item(indent, item));
    }
  }

  private void item(String indent, Statement item) {
    String flow = flow(item);
    boolean inLine = isFlat(item) && indent.length() + flow.length() < WIDEST;
    if (inLine || !(item instanceof Statement.Keys keys)) {
      yaml.append(indent).append("- ").append(flow).append('\n');
      return;
    }
    String lead = indent + "- ";
    for (Map.Entry<String, Statement> pair : keys.values().entrySet()) {
      pair(lead, indent + "  ", pair.getKey(), pair.getValue());
      lead = indent + "  ";
    }
  }

  private static boolean isEmpty(Statement value) {
    return value instanceof Statement.Keys keys && keys.values().isEmpty();
  }

  /** Whether a value has no keys or items below those of its own. */
  private static boolean isFlat(Statement value) {
    if (value instanceof Statement.Keys keys) {
      return keys.values().values().stream().allMatch(Statement.Text.class::isInstance);
    }
    return !(value instanceof Statement.Items items)
        || items.items().stream().allMatch(Statement.Text.class::isInstance);
  }

  private static String flow(Statement value) {
    if (value instanceof Statement.Keys keys) {
      return keys.values().entrySet().stream()
          .map(pair -> pair.getKey() + ": " + flow(pair.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof Statement.Items items) {
      List<String> texts = items.items().stream().map(CookFileWriter::flow).toList();
      return "[" + String.join(", ", texts) + "]";
    }
    return scalar(((Statement.Text) value).text());
  }

  private static String scalar(String text) {
    boolean plain = PLAIN.matcher(text).matches() && !NOTHING.matcher(text).matches();
    return plain ? text : quoted(text);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            point -> {
              if (point == '"' || point == '\\') {
                quoted.append('\\').appendCodePoint(point);
              } else if (isShown(point)) {
                quoted.appendCodePoint(point);
              } else {
                quoted.append(String.format(point > 0xFFFF ? "\\U%08x" : "\\u%04x", point));
              }
            });
    return quoted.append('"').toString();
  }

  /** Characters that may stand in a file as they are. */
  private static boolean isShown(int point) {
    int type = Character.getType(point);
    boolean written =
        type != Character.CONTROL
            && type != Character.FORMAT
            && type != Character.UNASSIGNED
            && type != Character.PRIVATE_USE
            && !Character.isSpaceChar(point);
    return written || point == ' ';
  }
}
