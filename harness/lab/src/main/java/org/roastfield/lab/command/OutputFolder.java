package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.roastfield.lab.result.AtomicFile;

/**
 * Folder that a command writes its files into.
 *
 * @param path as given, or chosen from the name of the cook
 */
record OutputFolder(Path path) {

  private static final String DEFAULT_PARENT = "roastfield-out";
  private static final int LONGEST_NAME = 60;

  /** Folder in the working folder, named after a cook. */
  static OutputFolder named(String cookName) {
    return new OutputFolder(Path.of(DEFAULT_PARENT, plain(cookName)));
  }

  /**
   * Lower-case letters, digits and single hyphens of a name; never empty, never a way out of a
   * folder.
   */
  static String plain(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceAll("^-|-$", "");
    return plain.isEmpty() ? "cook" : plain;
  }

  /** Refuses before any work what cannot be written into after it. */
  void check() {
    Path there = path.toAbsolutePath().normalize();
    while (there != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
      there = there.getParent();
    }
    if (there != null && !(Files.isDirectory(there) && Files.isWritable(there))) {
      throw new BadInputException(
          "--out must be a folder that can be written into, was "
              + path
              + ": "
              + there
              + " is none");
    }
  }

  /** Refuses before any work a file that cannot be written after it: its folder must be there. */
  static void checkFile(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder) || !Files.isWritable(folder)) {
      throw new BadInputException(
          "--out must be in a folder that exists and can be written into, was " + file);
    }
    if (Files.isDirectory(file)) {
      throw new BadInputException("--out must be a file, was the folder " + file);
    }
  }

  /** Writes all of the files, by name; the folder is made if need be. */
  void write(Map<String, String> texts) throws IOException {
    Files.createDirectories(path);
    for (Map.Entry<String, String> file : texts.entrySet()) {
      AtomicFile.write(path.resolve(file.getKey()), file.getValue());
    }
  }
}
