package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.roastfield.core.material.Foodstuff;
import org.roastfield.core.material.Materials;

/**
 * The reader is what a cook file is; the schema says the same to editors and other programs. Both
 * know the same keys and the same grammar of quantities. What the schema refuses, the reader
 * refuses; what it accepts and the reader refuses is listed here by the file of the corpus or the
 * key that is left out.
 */
class CookSchemaTest {

  private static final Path COOKS = Path.of("", "..", "..", "datasets", "cooks");

  /** Ranges, clock times, and what one statement asks of another: for the reader alone. */
  private static final Set<String> READER_ALONE =
      new TreeSet<>(
          List.of(
              "air-that-fills-from-a-constant-wetness",
              "air-that-rains",
              "composition-of-too-much",
              "core-hotter-than-its-surroundings",
              "duplicate-key",
              "duplicate-key-deep",
              "endless-name",
              "endless-scalar",
              "frozen",
              "handling-of-poultry",
              "humidity-missing",
              "negative-thickness",
              "no-such-day",
              "plan-across-of-no-taper",
              "plan-certain-minimum",
              "plan-core-beside-doneness",
              "plan-earliest-of-another-day",
              "plan-fire-much-hotter",
              "plan-hold-minimum-in-a-fridge",
              "plan-latest-before-service",
              "plan-loss-missed-for-nothing",
              "plan-loss-of-nothing",
              "plan-rest-turned-round",
              "plan-salt-deeper-than-the-cut",
              "plan-window-kept-beside-minimum",
              "plan-window-without-service",
              "plan-zone-of-no-city",
              "same-stage-twice",
              "served-before-it-starts",
              "surface-without-humidity",
              "unknown-probe",
              "weight-against-sizes",
              "wetness-that-nobody-reads",
              "coals-that-nobody-sees",
              "board-that-nobody-touches",
              "wetness-beyond-one"));

  /**
   * Keys that values of others ask for: shares that make 100 %, the humidity about a wet face, a
   * wetness of 0 where there is no humidity.
   */
  private static final Set<String> READER_ALONE_WITHOUT =
      new TreeSet<>(
          List.of(
              "cut material composition fat",
              "cut material composition protein",
              "cut material composition water",
              "serves",
              "stages chamber draught",
              "stages chamber humidity-ratio",
              "stages wetness"));

  private static String read(byte[] bytes) {
    return Readers.message("cook", "cook.yaml", bytes);
  }

  private static boolean readerAccepts(Statement.Keys cook) {
    return read(bytes(cook)).equals("valid");
  }

  private static byte[] bytes(Statement.Keys cook) {
    return CookFileWriter.yaml(cook).getBytes(StandardCharsets.UTF_8);
  }

  private static JsonNode json(Statement.Keys cook) {
    return CookSchema.json(new SourceText("cook.yaml", CookFileWriter.yaml(cook))).orElseThrow();
  }

  /** Valid files of the corpus and published cooks, by name. */
  private static Map<String, Statement.Keys> examples() throws IOException {
    List<Path> paths = new ArrayList<>(CorpusTest.files("cook"));
    paths.removeIf(path -> !CorpusTest.expected(path).equals("valid"));
    try (Stream<Path> cooks = Files.walk(COOKS)) {
      cooks.filter(path -> path.endsWith("cook.yaml")).sorted().forEach(paths::add);
    }
    Map<String, Statement.Keys> examples = new LinkedHashMap<>();
    for (Path path : paths) {
      CookFile file = CookFileReader.parse("cook.yaml", Files.readAllBytes(path));
      String name = path.endsWith("cook.yaml") ? SourceText.name(folder(path)) : plain(path);
      examples.put(name, file.statements());
    }
    return examples;
  }

  private static Path folder(Path path) {
    return path.resolveSibling("").normalize();
  }

  private static String plain(Path path) {
    return SourceText.name(path).replaceFirst("\\.yaml$", "");
  }

  @Test
  void grammarOfQuantities_isThatOfTheReader() {
    JsonNode defs = CookSchema.root().get("$defs");
    for (Dimension dimension : Dimension.values()) {
      String name = dimension.name().toLowerCase(Locale.ROOT).replace('_', '-');
      assertEquals(
          dimension.pattern().pattern(), defs.path(name).path("pattern").textValue(), name);
      assertEquals(Quantity.LONGEST, defs.path(name).path("maxLength").intValue(), name);
    }
    assertEquals(Clock.PATTERN.pattern(), defs.at("/clock/pattern").textValue());
  }

  @Test
  void foodsOfTheCatalogue_areNamed() {
    List<String> names = new ArrayList<>();
    CookSchema.root()
        .at("/$defs/cut/properties/material/anyOf/0/enum")
        .forEach(name -> names.add(name.textValue()));
    assertEquals(Materials.all().stream().map(Foodstuff::name).toList(), names);
  }

  @Test
  void publishedAndValidFiles_areAccepted() throws IOException {
    for (Map.Entry<String, Statement.Keys> example : examples().entrySet()) {
      assertEquals(List.of(), CookSchema.complaints(json(example.getValue())), example.getKey());
    }
  }

  @Test
  void whatTheSchemaRefuses_theReaderRefuses_andTheRestIsListed() throws IOException {
    Set<String> alone = new TreeSet<>();
    for (Path path : CorpusTest.files("cook")) {
      byte[] bytes = Files.readAllBytes(path);
      boolean read = CorpusTest.expected(path).equals("valid");
      SourceText source;
      try {
        source = SourceText.decode("cook.yaml", bytes);
      } catch (CookFileException e) {
        continue;
      }
      CookSchema.json(source)
          .ifPresent(
              json -> {
                boolean accepted = CookSchema.accepts(json);
                assertTrue(accepted || !read, () -> path + " " + CookSchema.complaints(json));
                if (accepted && !read) {
                  alone.add(plain(path));
                }
              });
    }
    assertEquals(READER_ALONE, alone);
  }

  /** In every place of the examples an unknown key makes the reader say which it knows. */
  @Test
  void keysOfTheReader_areThoseOfTheSchema_andAllAreSeen() throws IOException {
    Set<JsonNode> seen = new LinkedHashSet<>();
    for (Map.Entry<String, Statement.Keys> example : examples().entrySet()) {
      Statement.Keys cook = example.getValue();
      for (Place place : Place.all(cook)) {
        JsonNode schema = place.schema();
        if (seen.add(schema)) {
          String message = read(bytes((Statement.Keys) place.with("zzzzzz", "x")));
          List<String> known =
              Arrays.asList(message.replaceFirst("^.*expected one of ", "").split(", "));
          assertEquals(
              new TreeSet<>(CookSchema.keys(schema)),
              new TreeSet<>(known),
              example.getKey() + ": " + message);
        }
      }
    }
    Set<JsonNode> never = CookSchema.objects();
    never.removeAll(seen);
    assertEquals(Set.of(), never);
  }

  @Test
  void keyLeftOut_isMissedByBoth() throws IOException {
    Set<String> alone = new TreeSet<>();
    for (Map.Entry<String, Statement.Keys> example : examples().entrySet()) {
      for (Place place : Place.all(example.getValue())) {
        for (String key : place.keys().values().keySet()) {
          Statement.Keys without = (Statement.Keys) place.without(key);
          boolean read = readerAccepts(without);
          boolean accepted = CookSchema.accepts(json(without));
          String what = example.getKey() + ": " + place.path() + key;
          assertTrue(accepted || !read, () -> what + " " + CookSchema.complaints(json(without)));
          if (accepted && !read) {
            alone.add((place.path() + key).replaceAll("\\d+ ", ""));
          }
        }
      }
    }
    assertEquals(READER_ALONE_WITHOUT, alone);
  }

  @Test
  void valueOfAnotherKind_isRefusedByBoth() throws IOException {
    List<Statement> others =
        List.of(
            Statement.text("zzz"),
            Statement.texts("1", "2"),
            Statement.keys().with("zzz", "1"),
            Statement.text("1 furlong"),
            Statement.text("1,5 cm"));
    for (Map.Entry<String, Statement.Keys> example : examples().entrySet()) {
      for (Place place : Place.all(example.getValue())) {
        for (String key : place.keys().values().keySet()) {
          for (Statement other : others) {
            Statement.Keys spoilt = (Statement.Keys) place.with(key, other);
            boolean read = readerAccepts(spoilt);
            boolean accepted = CookSchema.accepts(json(spoilt));
            boolean free = Set.of("name", "rub", "probe", "cooker").contains(key);
            String what = example.getKey() + ": " + place.path() + key + " = " + other;
            assertTrue(accepted == read || (accepted && free), what + " " + read);
          }
        }
      }
    }
  }
}
