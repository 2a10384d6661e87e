package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every key of the published schema stands in a valid file of the corpus, as an example of it. */
class CookSchemaKeysTest {

  @Test
  void everyKey_hasAValidExample() throws IOException {
    Map<JsonNode, Set<String>> seen = new LinkedHashMap<>();
    CookSchema.objects().forEach(object -> seen.put(object, new HashSet<>()));
    for (Path path : CorpusTest.files("cook")) {
      if (CorpusTest.expected(path).equals("valid")) {
        CookFile file = CookFileReader.parse("cook.yaml", Files.readAllBytes(path));
        for (Place place : Place.all(file.statements())) {
          Objects.requireNonNull(seen.get(place.schema())).addAll(place.keys().values().keySet());
        }
      }
    }
    Set<String> without = new TreeSet<>();
    seen.forEach(
        (object, keys) ->
            CookSchema.keys(object).stream()
                .filter(key -> !keys.contains(key))
                .forEach(key -> without.add(CookSchema.nameOf(object) + ": " + key)));
    assertEquals(Set.of(), without);
  }
}
