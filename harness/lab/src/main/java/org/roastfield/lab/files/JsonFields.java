package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Keys and values of an object in a JSON file, each of which says where it stands when it is wrong.
 * Keys beyond those that are asked for are allowed and not read.
 */
public final class JsonFields {

  private final Section section;

  private JsonFields(Section section) {
    this.section = section;
  }

  /** JSON is YAML too, and the YAML reader knows the place of every value. */
  static JsonFields of(SourceText source) {
    JsonText.object(source);
    return new JsonFields(new Entry(source.fileName(), YamlTree.rootOf(source)).openSection());
  }

  /** A text that must be there. */
  public String text(String key) {
    return section.required(key).quoted();
  }

  /**
   * A text that must be one of some.
   *
   * @param advice behind the words, or nothing
   */
  public String word(String key, List<String> words, String advice) {
    String text = text(key);
    if (!words.contains(text)) {
      String known = (words.size() > 1 ? "one of " : "") + String.join(", ", words);
      String hint = Spelling.nearest(text, words).map(near -> "; nearest: " + near).orElse("");
      throw error(key, known + advice + (words.size() > 1 ? hint : ""));
    }
    return text;
  }

  /** True or false. */
  public boolean flag(String key) {
    Entry entry = section.required(key);
    if (entry.isQuoted()) {
      throw entry.error("true or false without quotes");
    }
    return entry.flag();
  }

  /** A number in [{@code low}, {@code high}], either of which may be infinite. */
  public double number(String key, double low, double high) {
    return section.required(key).number(low, high);
  }

  /** The same, NaN where null stands. */
  public double numberOrNone(String key, double low, double high) {
    Entry entry = section.required(key);
    return entry.isNull() ? Double.NaN : entry.number(low, high);
  }

  /** A whole number of at least {@code low}. */
  public int whole(String key, int low) {
    double number = number(key, low, Integer.MAX_VALUE);
    if (number != Math.rint(number)) {
      throw error(key, "a whole number");
    }
    return (int) number;
  }

  /** An object. */
  public JsonFields inner(String key) {
    return new JsonFields(section.required(key).openSection());
  }

  /** A list of objects, at least one. */
  public List<JsonFields> list(String key) {
    return section.required(key).items().stream()
        .map(entry -> new JsonFields(entry.openSection()))
        .toList();
  }

  /** A list of so many numbers. */
  public double[] numbers(String key, int size) {
    return numbers(section.required(key), size);
  }

  /** A list of so many lists of so many numbers. */
  public double[][] rows(String key, int size) {
    List<double[]> rows = new ArrayList<>();
    for (Entry row : items(section.required(key), size, "lists")) {
      rows.add(numbers(row, size));
    }
    return rows.toArray(new double[0][]);
  }

  private static double[] numbers(Entry list, int size) {
    return items(list, size, "numbers").stream()
        .mapToDouble(each -> each.number(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY))
        .toArray();
  }

  private static List<Entry> items(Entry list, int size, String what) {
    List<Entry> items = list.items();
    if (items.size() != size) {
      throw list.error("a list of " + size + " " + what + ", not of " + items.size());
    }
    return items;
  }

  /**
   * What {@code supplier} makes of the value of a key, its complaint about an argument turned into
   * an error at that place.
   */
  public <T> T guard(String key, Supplier<T> supplier) {
    return section.required(key).guard(supplier);
  }

  /** Error at the value of a key. */
  public CookFileException error(String key, String expected) {
    return section.required(key).error(expected);
  }
}
