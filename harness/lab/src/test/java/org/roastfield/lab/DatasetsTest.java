package org.roastfield.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.result.Inputs;

/**
 * Walks every record of {@code datasets}: schema, checksum, units, monotone time, licence and
 * source. A file that no rule here knows is a failure.
 */
class DatasetsTest {

  private static final Path DATASETS = Path.of("../../datasets");
  private static final Path REFERENCE = DATASETS.resolve("reference");
  private static final Path COOKS = DATASETS.resolve("cooks");
  private static final Path SYNTHETIC = DATASETS.resolve("synthetic");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Columns of reference tables that are words or counts, and so have no unit. */
  private static final Set<String> WITHOUT_UNIT =
      Set.of("meat", "n_roasts", "printed_unit", "phase", "stage");

  /** Measured D-values, no course of time, of which a source gives one or the other number only. */
  private static final String NOT_GIVEN = "lethality_d_values.json.items.rows";

  @Test
  void everyFolder_isKnownHere_andStandsInTheReadme() throws IOException {
    String readme = Files.readString(DATASETS.resolve("README.md"));
    for (Path path : children(DATASETS)) {
      String name = String.valueOf(path.getFileName());
      if (Files.isDirectory(path)) {
        assertTrue(readme.contains("`" + name + "/`") || readme.contains("`" + name + "/"), name);
      } else {
        assertEquals("README.md", name);
      }
    }
  }

  @Test
  void everyCook_hasASourceWithALicence_andIsMadeUpIfItSaysSo() throws IOException {
    for (Path cook : children(COOKS)) {
      String source = Files.readString(cook.resolve("SOURCE.md"));
      assertTrue(source.contains("Licence: "), cook.toString());
      if (Files.exists(cook.resolve("cook.yaml"))) {
        boolean madeUp = CookFileReader.read(cook.resolve("cook.yaml")).madeUp();
        assertEquals(madeUp, source.contains("no such cook took place"), cook.toString());
      } else {
        assertTrue(Files.exists(cook.resolve("datapackage.json")), cook.toString());
      }
    }
  }

  /** Units and hash are the reader's business; time that increases and the schema are looked at. */
  @Test
  void everyLog_isByTheSchema_andItsTimeIncreases() throws IOException {
    JsonNode schemaText =
        MAPPER.readTree(DATASETS.resolve("schema/log-package.schema.json").toFile());
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schemaText);
    int logs = 0;
    for (Path cook : children(COOKS)) {
      if (Files.exists(cook.resolve("datapackage.json"))) {
        logs++;
        JsonNode descriptor = MAPPER.readTree(cook.resolve("datapackage.json").toFile());
        assertEquals(List.of(), schema.validate(descriptor), cook.toString());
        LogPackage log = LogPackageReader.read(cook);
        assertTrue(log.facts().licence().isPresent(), cook.toString());
        assertFalse(log.facts().sources().isEmpty(), cook.toString());
        log.readings().channels().forEach(DatasetsTest::assertIncreasing);
      }
    }
    assertTrue(logs > 0);
  }

  private static void assertIncreasing(LogChannel channel) {
    for (int i = 1; i < channel.size(); i++) {
      assertTrue(channel.time(i) > channel.time(i - 1), channel.name() + " at reading " + i);
    }
  }

  /** Each file has a row in the README with units, provenance, trust and licence, and its sum. */
  @Test
  void everyReference_hasItsSum_andItsRowOfSourceAndLicence() throws IOException {
    Map<String, String[]> rows = rows(Files.readString(REFERENCE.resolve("README.md")));
    Map<String, String> sums = sums(REFERENCE);
    for (Path file : files(REFERENCE)) {
      String name = REFERENCE.relativize(file).toString().replace('\\', '/');
      if (name.equals("README.md") || name.equals("checksums.sha256")) {
        continue;
      }
      assertEquals(sums.remove(name), sum(file), name);
      String[] cells = rows.get(name);
      assertTrue(cells != null && cells.length == 6, name + " has no row of six cells");
      for (String cell : cells) {
        assertFalse(cell.isBlank(), name);
      }
    }
    assertEquals(Map.of(), sums, "sums of files that are not there");
  }

  @Test
  void everyReferenceTable_hasUnitsInItsColumns_andNumbersInItsCells() throws IOException {
    int tables = 0;
    for (Path file : files(REFERENCE)) {
      if (file.toString().endsWith(".csv")) {
        tables++;
        table(file);
      } else if (file.toString().endsWith(".json")) {
        tables++;
        walk(file.getFileName() + "", MAPPER.readTree(file.toFile()));
      }
    }
    assertEquals(11, tables);
  }

  private static void table(Path file) throws IOException {
    List<String> header = new ArrayList<>();
    for (CsvRecord record : CsvReader.builder().ofCsvRecord(Files.readString(file))) {
      if (header.isEmpty()) {
        header.addAll(record.getFields());
        header.forEach(name -> assertTrue(hasUnit(name), file + " " + name));
        continue;
      }
      assertEquals(header.size(), record.getFieldCount(), file + " " + record);
      for (int i = 0; i < header.size(); i++) {
        if (!header.get(i).equals("meat") && !header.get(i).equals("printed_unit")) {
          assertTrue(Double.isFinite(Double.parseDouble(record.getField(i))), file + " " + record);
        }
      }
    }
  }

  private static boolean hasUnit(String column) {
    return WITHOUT_UNIT.contains(column)
        || column.matches(".*(_s|_C|_F|_K|_lb|_oz|_kg|_min|_pct|_mm|_MJ_m2|_kg_m2)(_derived)?")
        || column.equals("min_per_lb")
        || column.matches("(loss_pct|mean_raw_kg|mean_time_min)_derived");
  }

  /** Wherever a table of JSON has a first column of seconds, its rows are in order of time. */
  private static void walk(String where, JsonNode node) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              entry -> {
                String key = entry.getKey();
                if (key.equals("columns") || key.endsWith("_columns")) {
                  String rows = key.equals("columns") ? "rows" : key.substring(0, key.length() - 8);
                  rows(where + "." + rows, entry.getValue(), node.get(rows));
                }
                walk(where + "." + key, entry.getValue());
              });
    } else if (node.isArray()) {
      node.forEach(child -> walk(where, child));
    } else if (node.isNumber()) {
      assertTrue(Double.isFinite(node.asDouble()), where);
    } else if (node.isTextual()) {
      assertFalse(node.asText().isBlank(), where);
    } else if (!node.isBoolean() && !(node.isNull() && where.equals(NOT_GIVEN))) {
      fail(where + " is " + node);
    }
  }

  private static void rows(String where, JsonNode columns, JsonNode rows) {
    int time = -1;
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).asText().matches("t(_in_phase)?_s")) {
        time = i;
      }
    }
    if (where.equals(NOT_GIVEN)) {
      assertEquals(-1, time);
      return;
    }
    assertTrue(time >= 0, where + " has no column of seconds: " + columns);
    double last = Double.NEGATIVE_INFINITY;
    String phase = "";
    for (JsonNode row : rows) {
      assertEquals(columns.size(), row.size(), where);
      String here = columns.get(0).asText().equals("phase") ? row.get(0).asText() : phase;
      if (!here.equals(phase)) {
        last = Double.NEGATIVE_INFINITY;
        phase = here;
      }
      assertTrue(row.get(time).asDouble() > last, where + " after " + last);
      last = row.get(time).asDouble();
    }
  }

  /**
   * Facts of print: no more time for more heat, a source for each D-value. The print rounds to
   * tenths of a degree, 137 and 139 °F upwards.
   */
  @Test
  void lethalityTables_fallWithTemperature_andNameTheirSources() throws IOException {
    double hotter = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (CsvRecord row : CsvReader.builder().ofCsvRecord(REFERENCE.resolve("lethality_beef.csv"))) {
      if (row.getStartingLineNumber() > 1) {
        double fahrenheit = Double.parseDouble(row.getField(0));
        assertTrue(fahrenheit > hotter, row.toString());
        assertEquals((fahrenheit - 32) / 1.8, Double.parseDouble(row.getField(1)), 0.1);
        assertTrue(Double.parseDouble(row.getField(3)) <= least, row.toString());
        assertTrue(Double.parseDouble(row.getField(2)) <= Double.parseDouble(row.getField(3)));
        hotter = fahrenheit;
        least = Double.parseDouble(row.getField(3));
      }
    }
    for (JsonNode item :
        MAPPER.readTree(REFERENCE.resolve("lethality_d_values.json").toFile()).get("items")) {
      assertFalse(item.get("source").asText().isBlank());
    }
  }

  /** The recipes themselves are tested by SyntheticDataTest; here that all of them have sums. */
  @Test
  void syntheticSums_areOfTheListedCooks_fourEachAndWeights() throws IOException {
    List<String> ids =
        Files.readAllLines(SYNTHETIC.resolve("cooks.csv")).stream()
            .skip(1)
            .map(line -> line.substring(0, line.indexOf(',')))
            .toList();
    Map<String, String> sums = sums(SYNTHETIC);
    long weights = sums.keySet().stream().filter(path -> path.endsWith("/afterwards.yaml")).count();
    assertEquals(4L * ids.size() + weights, sums.size());
    for (String id : ids) {
      assertTrue(sums.containsKey("truth/" + id + ".json"), id);
      assertTrue(sums.containsKey(id + "/readings.csv"), id);
    }
    assertTrue(Files.readString(SYNTHETIC.resolve("SOURCE.md")).contains("Licence: "));
    assertEquals(
        Set.of("SOURCE.md", "checksums.sha256", "cooks.csv"),
        Set.copyOf(
            children(SYNTHETIC).stream().map(p -> String.valueOf(p.getFileName())).toList()));
  }

  private static Map<String, String[]> rows(String readme) {
    Map<String, String[]> rows = new TreeMap<>();
    for (String line : readme.lines().toList()) {
      if (line.startsWith("| `")) {
        String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
        rows.put(cells[0].replace("`", ""), cells);
      }
    }
    return rows;
  }

  private static Map<String, String> sums(Path folder) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    for (String line : Files.readAllLines(folder.resolve("checksums.sha256"))) {
      sums.put(line.substring(66), line.substring(0, 64));
    }
    return sums;
  }

  private static String sum(Path file) throws IOException {
    return Inputs.file("data", "x", Files.readAllBytes(file)).sha256().toLowerCase(Locale.ROOT);
  }

  private static List<Path> children(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.sorted().toList();
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
