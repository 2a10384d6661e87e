package org.roastfield.lab.files;

import java.util.Locale;
import java.util.OptionalDouble;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads and writes what was found when a cook was over: a YAML document of flat keys. */
final class AfterwardsFile {

  /** What the key {@code roastfield} must say. */
  static final String FORMAT = "afterwards/1";

  /** Largest size [bytes]. */
  static final int LARGEST = 64 << 10;

  private static final String[] KEYS = {
    "roastfield", "weight-before", "weight-after", "ring", "final-core", "served", "verdict"
  };

  private AfterwardsFile() {}

  static Afterwards read(String fileName, byte[] bytes) {
    Node root = YamlTree.rootOf(SourceText.decode(fileName, bytes));
    Entry whole = new Entry(fileName, root);
    if (!(root instanceof MappingNode)) {
      throw whole.error("keys and values (" + String.join(", ", KEYS) + ")");
    }
    Section section = whole.section(KEYS);
    Entry format = section.required("roastfield");
    if (!format.text().equals(FORMAT)) {
      throw format.error(FORMAT);
    }
    return whole.guard(
        () ->
            new Afterwards(
                quantity(section, "weight-before", Dimension.MASS, 1e-3, 1000),
                quantity(section, "weight-after", Dimension.MASS, 1e-3, 1000),
                quantity(section, "ring", Dimension.LENGTH, 0, 1),
                quantity(
                    section, "final-core", Dimension.TEMPERATURE, LogRows.COLDEST, LogRows.HOTTEST),
                section.optional("served").map(Clock::read),
                section.optional("verdict").map(entry -> entry.text().strip())));
  }

  private static OptionalDouble quantity(
      Section section, String key, Dimension dimension, double low, double high) {
    return section
        .optional(key)
        .map(entry -> OptionalDouble.of(entry.quantity(dimension, low, high)))
        .orElse(OptionalDouble.empty());
  }

  static String text(Afterwards afterwards) {
    StringBuilder text = new StringBuilder("roastfield: " + FORMAT + "\n");
    afterwards.weightBefore().ifPresent(kg -> line(text, "weight-before", kg, 1, "kg"));
    afterwards.weightAfter().ifPresent(kg -> line(text, "weight-after", kg, 1, "kg"));
    afterwards.ring().ifPresent(depth -> line(text, "ring", depth, 1000, "mm"));
    afterwards
        .finalCore()
        .ifPresent(core -> text.append("final-core: " + PeopleTable.celsius(core) + "\n"));
    afterwards.served().ifPresent(clock -> text.append("served: " + clock + "\n"));
    afterwards.verdict().ifPresent(words -> text.append("verdict: " + quoted(words) + "\n"));
    return text.toString();
  }

  private static void line(
      StringBuilder text, String key, double value, double factor, String unit) {
    text.append(key + ": " + PeopleTable.plain(value * factor, 6) + " " + unit + "\n");
  }

  /** A double-quoted scalar, in which YAML folds and interprets nothing but escapes. */
  private static String quoted(String words) {
    StringBuilder quoted = new StringBuilder("\"");
    words
        .codePoints()
        .forEach(
            point -> {
              if (point == '"' || point == '\\') {
                quoted.append('\\').appendCodePoint(point);
              } else if (point >= ' ' && point <= '~') {
                quoted.appendCodePoint(point);
              } else {
                quoted.append(String.format(Locale.ROOT, "\\U%08x", point));
              }
            });
    return quoted.append('"').toString();
  }
}
