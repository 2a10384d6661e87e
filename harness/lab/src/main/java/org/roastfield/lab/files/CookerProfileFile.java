package org.roastfield.lab.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;

/**
 * A cooker profile as it stands in its file: a JSON object whose {@code schema} is {@value #SCHEMA}
 * and whose {@code id} is the name of the file.
 *
 * @param path as it was found
 * @param id words in lower case joined by hyphens
 * @param json all of it; what it means is for those to say who use it
 */
public record CookerProfileFile(Path path, String id, String json) {

  /** What the key {@code schema} must say. */
  public static final String SCHEMA = "cooker/1";

  /** Largest size [bytes]. */
  public static final int LARGEST = 1 << 20;

  /**
   * Reads a profile.
   *
   * @param path whose file name is the id and {@code .json}
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is no profile
   */
  public static CookerProfileFile read(Path path) throws IOException {
    return parse(path, SourceText.bytes(path, LARGEST));
  }

  static CookerProfileFile parse(Path path, byte[] bytes) {
    String fileName = SourceText.name(path);
    SourceText source = SourceText.decode(fileName, bytes);
    JsonNode content = JsonText.object(source);
    String id = fileName.replaceFirst("\\.json$", "");
    require(source, content, "schema", SCHEMA);
    require(source, content, "id", id);
    return new CookerProfileFile(path, id, source.text());
  }

  private static void require(SourceText source, JsonNode content, String key, String value) {
    JsonNode stated = content.path(key);
    if (!stated.isTextual() || !stated.textValue().equals(value)) {
      String found =
          stated.isMissingNode()
              ? "no key \"" + key + "\""
              : SourceText.quoted(stated.isTextual() ? stated.textValue() : stated.toString());
      throw source.error(0, found, "\"" + key + "\": \"" + value + "\"");
    }
  }
}
