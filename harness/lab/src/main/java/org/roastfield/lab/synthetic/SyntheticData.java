package org.roastfield.lab.synthetic;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.roastfield.lab.files.LogPackageWriter;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.result.AtomicFolder;
import org.roastfield.lab.result.Inputs;

/**
 * A folder of made-up cooks: a log package for each, and apart from them {@code truth/ID.json}.
 *
 * <p>The computation uses IEEE arithmetic, square roots and {@code StrictMath} alone, all exact to
 * the last bit on every Java virtual machine from 17 on, and no order of a hash table: so are the
 * files. {@link #checksums} are of what is data in them: readings, events, weights, cook file and
 * truth.
 */
public final class SyntheticData {

  /** Folder of the truths. */
  public static final String TRUTH = "truth";

  private static final List<String> DATA = List.of("readings.csv", "events.csv", "cook.yaml");

  /** Of cuts that are weighed. */
  private static final String WEIGHTS = "afterwards.yaml";

  private SyntheticData() {}

  /**
   * Writes one cook.
   *
   * @param folder of all of them; made if need be
   * @throws IOException if it cannot be written, or the cook is there already
   */
  public static void write(MadeCook made, Path folder) throws IOException {
    AtomicFolder.write(
        folder.resolve(made.recipe().id()), partial -> LogPackageWriter.write(made.log(), partial));
    Files.createDirectories(folder.resolve(TRUTH));
    AtomicFile.write(folder.resolve(truth(made.recipe().id())), TruthJson.text(made));
  }

  /** SHA-256 sums of a cook's data in a folder, by path. */
  public static Map<String, String> checksums(String id, Path folder) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    for (String name : DATA) {
      sums.put(id + "/" + name, sum(folder.resolve(id).resolve(name)));
    }
    Path weights = folder.resolve(id).resolve(WEIGHTS);
    if (Files.exists(weights)) {
      sums.put(id + "/" + WEIGHTS, sum(weights));
    }
    sums.put(truth(id), sum(folder.resolve(truth(id))));
    return sums;
  }

  /** Sums as {@code sha256sum} writes them. */
  public static String text(Map<String, String> sums) {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(sums)
        .forEach((path, sum) -> text.append(sum).append("  ").append(path).append('\n'));
    return text.toString();
  }

  /**
   * Sums that {@link #text} wrote.
   *
   * @throws IllegalArgumentException if a line is none
   */
  public static Map<String, String> parse(String text) {
    Map<String, String> sums = new TreeMap<>();
    for (String line : text.lines().toList()) {
      if (!line.matches("[0-9a-f]{64}  [a-z0-9./-]{1,200}")) {
        throw new IllegalArgumentException(
            "line must be a SHA-256 sum, two blanks and a path, was \"" + line + "\"");
      }
      sums.put(line.substring(66), line.substring(0, 64));
    }
    return sums;
  }

  private static String truth(String id) {
    return TRUTH + "/" + id + ".json";
  }

  private static String sum(Path file) throws IOException {
    return Inputs.file("data", String.valueOf(file.getFileName()), Files.readAllBytes(file))
        .sha256();
  }

  /** Text of a list of recipes, as read from a file in UTF-8. */
  public static String recipes(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
