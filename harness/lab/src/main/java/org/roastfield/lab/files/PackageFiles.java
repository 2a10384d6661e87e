package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Objects;

/**
 * Names of the files of a log package. Only these are read, whatever a descriptor says, and none
 * that is a link: nothing outside the folder is reached. A file that is larger than may be read is
 * not written either.
 */
final class PackageFiles {

  static final String DESCRIPTOR = "datapackage.json";
  static final String READINGS = "readings.csv";
  static final String EVENTS = "events.csv";
  static final String SPOTS = "spots.csv";
  static final String CHECKS = "checks.csv";
  static final String AFTERWARDS = "afterwards.yaml";
  static final String COOK = "cook.yaml";
  static final String SOURCE = "SOURCE.md";

  private static final Map<String, Integer> LARGEST =
      Map.of(
          DESCRIPTOR, 1 << 20,
          READINGS, CookLogReader.LARGEST,
          EVENTS, PeopleTable.LARGEST,
          SPOTS, PeopleTable.LARGEST,
          CHECKS, PeopleTable.LARGEST,
          AFTERWARDS, AfterwardsFile.LARGEST,
          COOK, CookFileReader.LARGEST,
          SOURCE, 1 << 20);

  private PackageFiles() {}

  /** Largest size of a file of the package [bytes]. */
  static int largest(String name) {
    return Objects.requireNonNull(LARGEST.get(name), name);
  }

  /** Whether a file of the package is there. */
  static boolean has(Path folder, String name) {
    return Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  /** Bytes of a file of the package. */
  static byte[] bytes(Path folder, String name) throws IOException {
    Path file = folder.resolve(name);
    if (!has(folder, name)) {
      throw new CookFileException(name, 1, 1, "no such file", "it in the log package");
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new CookFileException(name, 1, 1, "a link or folder", "a file of the log package");
    }
    return SourceText.bytes(file, largest(name));
  }

  /**
   * Writes a file of the package.
   *
   * @throws IllegalArgumentException if it could not be read back
   */
  static void write(Path folder, String name, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    checkSize(name, bytes.length);
    Files.write(
        folder.resolve(name), bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }

  /** Refuses a file that could not be read back. */
  static void checkSize(String name, long bytes) {
    if (bytes > largest(name)) {
      throw new IllegalArgumentException(
          name + " must be at most " + largest(name) + " bytes to be read back, was " + bytes);
    }
  }
}
