package org.roastfield.lab.synthetic;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.roastfield.lab.files.CookFileException;

/**
 * Reads a list of recipes: a CSV file with the columns id, cut, cooker, setting_degC, seed, split
 * and departures, the last with words between blanks, perhaps none.
 */
public final class RecipeFile {

  /** Header of the list. */
  static final List<String> HEADER =
      List.of("id", "cut", "cooker", "setting_degC", "seed", "split", "departures");

  /** Longest list [characters]. */
  private static final int LONGEST = 1 << 20;

  private final String fileName;

  private RecipeFile(String fileName) {
    this.fileName = fileName;
  }

  /**
   * Reads a list.
   *
   * @param fileName last part of its path, for messages
   * @param text content
   * @throws CookFileException if it is no list of recipes
   */
  public static List<SyntheticCook> parse(String fileName, String text) {
    return new RecipeFile(fileName).recipes(text);
  }

  private List<SyntheticCook> recipes(String text) {
    if (text.length() > LONGEST) {
      throw error(1, text.length() + " characters", "at most " + LONGEST);
    }
    List<SyntheticCook> recipes = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    boolean isHeader = true;
    try {
      for (CsvRecord record : CsvReader.builder().ofCsvRecord(text)) {
        if (isHeader) {
          checkHeader(record);
          isHeader = false;
        } else {
          SyntheticCook recipe = recipe(record);
          if (!ids.add(recipe.id())) {
            throw error(line(record), "the id " + recipe.id() + " again", "an id of its own");
          }
          recipes.add(recipe);
        }
      }
    } catch (CsvParseException e) {
      throw error(1, "no list: " + e.getMessage(), "lines of seven cells, as the header's");
    }
    if (recipes.isEmpty()) {
      throw error(1, "no recipe", "at least one line below the header");
    }
    return List.copyOf(recipes);
  }

  private void checkHeader(CsvRecord record) {
    if (!record.getFields().equals(HEADER)) {
      throw error(1, quoted(String.join(",", record.getFields())), String.join(",", HEADER));
    }
  }

  private SyntheticCook recipe(CsvRecord record) {
    int line = line(record);
    ScenarioCut cut =
        ScenarioCut.of(record.getField(1))
            .orElseThrow(() -> error(line, quoted(record.getField(1)), cuts()));
    SyntheticCooker cooker =
        SyntheticCooker.named(record.getField(2))
            .orElseThrow(() -> error(line, quoted(record.getField(2)), cookers()));
    SyntheticCook.Split split =
        split(record.getField(5))
            .orElseThrow(() -> error(line, quoted(record.getField(5)), "fit or held-out"));
    double setting = decimal(line, record.getField(3));
    long seed = whole(line, record.getField(4));
    Set<Departure> departures = departures(line, record.getField(6));
    try {
      return new SyntheticCook(record.getField(0), cut, cooker, setting, seed, split, departures);
    } catch (IllegalArgumentException e) {
      throw error(line, "a recipe that cannot be", String.valueOf(e.getMessage()));
    }
  }

  private Set<Departure> departures(int line, String words) {
    Set<Departure> departures = EnumSet.noneOf(Departure.class);
    for (String word : words.isEmpty() ? new String[0] : words.split(" ", -1)) {
      departures.add(
          Departure.of(word).orElseThrow(() -> error(line, quoted(word), "one of " + kinds())));
    }
    return departures;
  }

  private double decimal(int line, String text) {
    if (!text.matches("\\d{1,3}(\\.\\d{1,3})?")) {
      throw error(line, quoted(text), "degrees Celsius such as 110");
    }
    return Double.parseDouble(text);
  }

  private long whole(int line, String text) {
    if (!text.matches("\\d{1,18}")) {
      throw error(line, quoted(text), "a seed of 1 to 18 digits");
    }
    return Long.parseLong(text);
  }

  private static Optional<SyntheticCook.Split> split(String word) {
    return Arrays.stream(SyntheticCook.Split.values())
        .filter(split -> split.word().equals(word))
        .findFirst();
  }

  private static String cuts() {
    return "one of "
        + Arrays.stream(ScenarioCut.values())
            .map(ScenarioCut::word)
            .collect(Collectors.joining(", "));
  }

  private static String cookers() {
    return "one of "
        + SyntheticCooker.boathouse().stream()
            .map(SyntheticCooker::id)
            .collect(Collectors.joining(", "));
  }

  private static String kinds() {
    return Arrays.stream(Departure.values()).map(Departure::word).collect(Collectors.joining(", "));
  }

  private static String quoted(String text) {
    return "\"" + text.substring(0, Math.min(80, text.length())) + "\"";
  }

  private static int line(CsvRecord record) {
    return (int) record.getStartingLineNumber();
  }

  private CookFileException error(int line, String found, String expected) {
    return new CookFileException(fileName, line, 1, found, expected);
  }
}
