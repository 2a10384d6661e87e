package org.roastfield.lab.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Keys and values of a cook file, none twice and none unknown. */
final class Section {

  private final Entry place;
  private final Map<String, Entry> entries;

  private Section(Entry place, Map<String, Entry> entries) {
    this.place = place;
    this.entries = entries;
  }

  /** Section of a mapping whose keys must be among {@code known}. */
  static Section of(String file, MappingNode mapping, List<String> known) {
    return of(file, mapping, node -> key(file, node, known));
  }

  /** Section of a mapping whose keys may be any. */
  static Section open(String file, MappingNode mapping) {
    return of(file, mapping, node -> new Entry(file, node).text());
  }

  private static Section of(String file, MappingNode mapping, Function<Node, String> keys) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      String key = keys.apply(tuple.getKeyNode());
      if (entries.put(key, new Entry(file, tuple.getValueNode())) != null) {
        throw Entry.errorAt(
            file, tuple.getKeyNode(), SourceText.quoted(key) + " a second time", "each key once");
      }
    }
    return new Section(new Entry(file, mapping), entries);
  }

  private static String key(String file, Node node, List<String> known) {
    String expected = "one of " + String.join(", ", known);
    if (!(node instanceof ScalarNode scalar)) {
      throw Entry.errorAt(file, node, "a key that is no single word", expected);
    }
    String key = scalar.getValue();
    if (!known.contains(key)) {
      String hint =
          Spelling.nearest(key, known).map(near -> "; nearest known key: " + near).orElse("");
      throw Entry.errorAt(file, node, SourceText.quoted(key), expected + hint);
    }
    return key;
  }

  /** Value of a key, if there. */
  Optional<Entry> optional(String key) {
    return Optional.ofNullable(entries.get(key));
  }

  /** Value of a key that must be there. */
  Entry required(String key) {
    return optional(key).orElseThrow(() -> missing(key, "it among these keys"));
  }

  /** Error of a key that is not there. */
  CookFileException missing(String key, String expected) {
    return Entry.errorAt(place.file(), place.node(), "no key \"" + key + "\"", expected);
  }

  /** Whether a key is there. */
  boolean has(String key) {
    return entries.containsKey(key);
  }

  /** Quantity of a key that must be there, see {@link Entry#quantity}. */
  double quantity(String key, Dimension dimension, double low, double high) {
    return required(key).quantity(dimension, low, high);
  }

  /** All that the section says. */
  Statement.Keys statements() {
    Map<String, Statement> values = new LinkedHashMap<>();
    entries.forEach((key, entry) -> values.put(key, entry.statement()));
    return new Statement.Keys(values);
  }

  /** The section itself as a value, for errors about all of it. */
  Entry place() {
    return place;
  }
}
