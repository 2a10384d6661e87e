package org.roastfield.lab.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A value of a cook file with its place.
 *
 * @param file last part of the path
 * @param node value
 */
record Entry(String file, Node node) {

  private static final int LONGEST_NAME = 120;

  private static final String JSON_NUMBER = "-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?";

  /** Plain words of YAML for no value. */
  private static final Set<String> NOTHING = Set.of("null", "Null", "NULL", "~");

  /** Text of a single value. */
  String text() {
    if (node instanceof ScalarNode scalar && !isNothing(scalar)) {
      return scalar.getValue();
    }
    throw error("a single value");
  }

  /** Whether YAML takes a value for none. */
  private static boolean isNothing(ScalarNode scalar) {
    return scalar.getValue().isEmpty()
        || (scalar.getScalarStyle() == ScalarStyle.PLAIN && NOTHING.contains(scalar.getValue()));
  }

  /**
   * All that stands here.
   *
   * @throws CookFileException if a value is missing in it, or a key is none
   */
  Statement statement() {
    if (node instanceof MappingNode mapping) {
      Map<String, Statement> values = new LinkedHashMap<>();
      for (NodeTuple tuple : mapping.getValue()) {
        Entry key = new Entry(file, tuple.getKeyNode());
        values.put(key.text(), new Entry(file, tuple.getValueNode()).statement());
      }
      return guard(() -> new Statement.Keys(values));
    }
    return node instanceof SequenceNode
        ? new Statement.Items(items().stream().map(Entry::statement).toList())
        : new Statement.Text(text());
  }

  /** A name: one line of printable text. */
  String name() {
    String text = text().strip();
    boolean printable = text.chars().noneMatch(Character::isISOControl);
    if (text.isEmpty() || text.length() > LONGEST_NAME || !printable) {
      throw error("a name of 1 to " + LONGEST_NAME + " printable characters");
    }
    return text;
  }

  /** Quantity in SI units, anywhere in [{@code low}, {@code high}]. */
  double quantity(Dimension dimension, double low, double high) {
    OptionalDouble value = Quantity.parse(text(), dimension);
    if (value.isEmpty()) {
      throw error(dimension.description() + Advice.on(text(), dimension));
    }
    if (!(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
      throw error("a value from " + dimension.text(low) + " to " + dimension.text(high));
    }
    return value.getAsDouble();
  }

  /** Whether something is so. */
  boolean flag() {
    return switch (text()) {
      case "true" -> true;
      case "false" -> false;
      default -> throw error("true or false");
    };
  }

  /** Text in quotes, as JSON writes it. */
  String quoted() {
    if (node instanceof ScalarNode scalar && isQuoted()) {
      return scalar.getValue();
    }
    throw error("a text in quotes");
  }

  /** Whether a single value stands in quotes. */
  boolean isQuoted() {
    return node instanceof ScalarNode scalar && scalar.getScalarStyle() != ScalarStyle.PLAIN;
  }

  /** Whether null stands here. */
  boolean isNull() {
    return node instanceof ScalarNode scalar && !isQuoted() && NOTHING.contains(scalar.getValue());
  }

  /** Number as JSON writes it, in [{@code low}, {@code high}], either of which may be infinite. */
  double number(double low, double high) {
    if (node instanceof ScalarNode scalar && scalar.getValue().matches(JSON_NUMBER)) {
      double value = Double.parseDouble(scalar.getValue());
      if (isQuoted()) {
        throw error("a number without quotes");
      }
      if (Double.isFinite(value) && value >= low && value <= high) {
        return value;
      }
    }
    throw error("a number" + range(low, high));
  }

  private static String range(double low, double high) {
    if (Double.isInfinite(low)) {
      return "";
    }
    return Double.isInfinite(high)
        ? " of at least " + plain(low)
        : " from " + plain(low) + " to " + plain(high);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Whole number in [{@code low}, {@code high}]. */
  int wholeNumber(int low, int high) {
    String text = text();
    if (text.matches("\\d{1,6}")) {
      int value = Integer.parseInt(text);
      if (value >= low && value <= high) {
        return value;
      }
    }
    throw error("a whole number from " + low + " to " + high);
  }

  /** Whether the value has keys of its own. */
  boolean isSection() {
    return node instanceof MappingNode;
  }

  /** Whether the value has keys, and one of these among them. */
  boolean hasAny(String... keys) {
    return node instanceof MappingNode mapping
        && mapping.getValue().stream()
            .map(NodeTuple::getKeyNode)
            .anyMatch(
                key -> key instanceof ScalarNode word && List.of(keys).contains(word.getValue()));
  }

  /** Value as a section with the given keys and no others. */
  Section section(String... keys) {
    if (node instanceof MappingNode mapping) {
      return Section.of(file, mapping, List.of(keys));
    }
    throw error(
        "keys and values (" + List.of(keys).stream().collect(Collectors.joining(", ")) + ")");
  }

  /** Value as a section whose keys may be any, none of them twice. */
  Section openSection() {
    if (node instanceof MappingNode mapping) {
      return Section.open(file, mapping);
    }
    throw error("keys and values");
  }

  /** Values of a list with at least one. */
  List<Entry> items() {
    if (node instanceof SequenceNode sequence && !sequence.getValue().isEmpty()) {
      List<Entry> items = new ArrayList<>();
      sequence.getValue().forEach(item -> items.add(new Entry(file, item)));
      return items;
    }
    throw error("a list with at least one item");
  }

  /** Adds every single value in here to {@code facts}, under the words of its keys. */
  void collect(String subject, List<Fact> facts) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        String key = new Entry(file, tuple.getKeyNode()).text().replace('-', ' ');
        new Entry(file, tuple.getValueNode()).collect(subject + ", " + key, facts);
      }
    } else if (node instanceof SequenceNode) {
      items().forEach(item -> item.collect(subject, facts));
    } else {
      facts.add(new Fact(subject, text()));
    }
  }

  /**
   * What {@code supplier} gives, its complaint about an argument turned into an error at this
   * place.
   */
  <T> T guard(Supplier<T> supplier) {
    try {
      return supplier.get();
    } catch (IllegalArgumentException e) {
      throw error("a value that can be computed with: " + e.getMessage());
    }
  }

  /** Error at this place. */
  CookFileException error(String expected) {
    return errorAt(file, node, found(), expected);
  }

  /** Error at a node. */
  static CookFileException errorAt(String file, Node node, String found, String expected) {
    int line = node.getStartMark().map(Mark::getLine).orElse(0) + 1;
    int column = node.getStartMark().map(Mark::getColumn).orElse(0) + 1;
    return new CookFileException(file, line, column, found, expected);
  }

  private String found() {
    if (node instanceof ScalarNode scalar) {
      return isNothing(scalar) ? "nothing" : SourceText.quoted(scalar.getValue());
    }
    if (node instanceof MappingNode mapping) {
      return mapping.getValue().isEmpty() ? "no keys" : "keys and values";
    }
    boolean empty = node instanceof SequenceNode list && list.getValue().isEmpty();
    return empty ? "an empty list" : "a list";
  }
}
