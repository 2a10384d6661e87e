package org.roastfield.lab.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Keys somewhere in a cook file.
 *
 * @param path in words
 * @param keys that stand there
 * @param schema of them
 * @param whole gives the whole file with other keys there
 */
record Place(String path, Statement.Keys keys, JsonNode schema, UnaryOperator<Statement> whole) {

  /** All places of a file. */
  static List<Place> all(Statement.Keys cook) {
    List<Place> places = new ArrayList<>();
    add("", cook, CookSchema.root(), UnaryOperator.identity(), places);
    return places;
  }

  private static void add(
      String path,
      Statement statement,
      JsonNode schema,
      UnaryOperator<Statement> whole,
      List<Place> places) {
    if (statement instanceof Statement.Items items) {
      for (int i = 0; i < items.items().size(); i++) {
        int index = i;
        UnaryOperator<Statement> inner =
            item -> {
              List<Statement> others = new ArrayList<>(items.items());
              others.set(index, item);
              return whole.apply(new Statement.Items(others));
            };
        add(path + i + " ", items.items().get(i), schema.path("items"), inner, places);
      }
    } else if (statement instanceof Statement.Keys keys) {
      JsonNode own = CookSchema.objectSchema(schema, keys.values().keySet()).orElseThrow();
      places.add(new Place(path, keys, own, whole));
      for (Map.Entry<String, Statement> pair : keys.values().entrySet()) {
        String key = pair.getKey();
        UnaryOperator<Statement> inner = value -> whole.apply(keys.with(key, value));
        add(path + key + " ", pair.getValue(), own.at("/properties/" + key), inner, places);
      }
    }
  }

  /** The file with a key more, or another value of one. */
  Statement with(String key, Statement value) {
    return whole.apply(keys.with(key, value));
  }

  /** The same with a text. */
  Statement with(String key, String text) {
    return with(key, Statement.text(text));
  }

  /** The file without a key. */
  Statement without(String key) {
    return whole.apply(keys.without(key));
  }
}
