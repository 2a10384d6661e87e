package org.roastfield.lab.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a cook file says, in its own words and units and without its comments and layout: a text,
 * items, or keys. {@link CookFile#statements()} has those of a file, {@link CookFileWriter} writes
 * them.
 */
public sealed interface Statement {

  /** A text. */
  static Text text(String text) {
    return new Text(text);
  }

  /** Items in order. */
  static Items items(Statement... items) {
    return new Items(List.of(items));
  }

  /** Texts in order. */
  static Items texts(String... texts) {
    return new Items(List.of(texts).stream().<Statement>map(Text::new).toList());
  }

  /** No keys, to which {@link Keys#with} adds. */
  static Keys keys() {
    return new Keys(Map.of());
  }

  /**
   * A single value.
   *
   * @param text not empty
   */
  record Text(String text) implements Statement {

    /**
     * @throws IllegalArgumentException if it is empty, or no Unicode text
     */
    public Text {
      if (text.isEmpty() || !isUnicode(text)) {
        throw new IllegalArgumentException(
            "text must be Unicode and not empty, was " + SourceText.quoted(text));
      }
    }

    private static boolean isUnicode(String text) {
      return text.codePoints().noneMatch(point -> point >= 0xD800 && point <= 0xDFFF);
    }
  }

  /**
   * A list.
   *
   * @param items at least one
   */
  record Items(List<Statement> items) implements Statement {

    /**
     * @throws IllegalArgumentException if there is none
     */
    public Items {
      items = List.copyOf(items);
      if (items.isEmpty()) {
        throw new IllegalArgumentException("items must be at least one, were none");
      }
    }
  }

  /**
   * Keys and values in order.
   *
   * @param values by key, which is words in lower case joined by hyphens
   */
  record Keys(Map<String, Statement> values) implements Statement {

    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9-]{0,39}");

    /**
     * @throws IllegalArgumentException if a key is none
     */
    public Keys {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
      for (String key : values.keySet()) {
        if (!KEY.matcher(key).matches()) {
          throw new IllegalArgumentException(
              "key must be words in lower case joined by hyphens, was " + SourceText.quoted(key));
        }
      }
    }

    /** With a key at the end, or in its place if it is there. */
    public Keys with(String key, Statement value) {
      Map<String, Statement> more = new LinkedHashMap<>(values);
      more.put(key, value);
      return new Keys(more);
    }

    /** The same with a text. */
    public Keys with(String key, String text) {
      return with(key, new Text(text));
    }

    /** Without a key. */
    public Keys without(String key) {
      Map<String, Statement> fewer = new LinkedHashMap<>(values);
      fewer.remove(key);
      return new Keys(fewer);
    }

    /** Value of a key, if there. */
    public Optional<Statement> value(String key) {
      return Optional.ofNullable(values.get(key));
    }
  }
}
