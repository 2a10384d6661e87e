package org.roastfield.core.reference;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Reads the reference files on the class path: {@code /reference} holds the project's published
 * data, {@code /exact} values of functions that were computed independently for these tests.
 */
public final class ReferenceFiles {
  private ReferenceFiles() {}

  /**
   * Bytes of one file.
   *
   * @param path absolute on the class path, such as {@code /reference/carryover.csv}
   * @throws IllegalArgumentException if there is no such file
   */
  public static byte[] bytes(String path) {
    try (InputStream stream = ReferenceFiles.class.getResourceAsStream(path)) {
      if (stream == null) {
        throw new IllegalArgumentException("path must name a file on the class path, was " + path);
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** Text of one UTF-8 file, as {@link #bytes}. */
  public static String text(String path) {
    return new String(bytes(path), StandardCharsets.UTF_8);
  }

  /** JSON tree of one file, as {@link #bytes}. */
  public static JsonNode json(String path) {
    try {
      return new ObjectMapper().readTree(bytes(path));
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /**
   * Rows of a CSV file without quoted fields, split at commas, without comment lines and header.
   */
  public static List<List<String>> rows(String path) {
    return text(path)
        .lines()
        .filter(line -> !line.startsWith("#"))
        .skip(1)
        .map(line -> List.of(line.split(",", -1)))
        .toList();
  }
}
