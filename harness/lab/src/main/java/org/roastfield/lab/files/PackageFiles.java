package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * Names of the files of a log package. Only these are read, whatever a descriptor says, and none
 * that is a link: nothing outside the folder is reached.
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

  private PackageFiles() {}

  /** Whether a file of the package is there. */
  static boolean has(Path folder, String name) {
    return Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  /** Bytes of a file of the package. */
  static byte[] bytes(Path folder, String name, int limit) throws IOException {
    Path file = folder.resolve(name);
    if (!has(folder, name)) {
      throw new CookFileException(name, 1, 1, "no such file", "it in the log package");
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new CookFileException(name, 1, 1, "a link or folder", "a file of the log package");
    }
    return SourceText.bytes(file, limit);
  }
}
