package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

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

  /**
   * The same from its content.
   *
   * @param path whose file name is the id and {@code .json}
   * @throws CookFileException if it is no profile
   */
  public static CookerProfileFile parse(Path path, byte[] bytes) {
    String fileName = SourceText.name(path);
    SourceText source = SourceText.decode(fileName, bytes);
    JsonFields content = JsonFields.of(source);
    String id = fileName.replaceFirst("\\.json$", "");
    content.word("schema", List.of(SCHEMA), ", which this Roastfield reads");
    content.word(
        "id", List.of(id), ", the name of the file: rename the file, or change its id with it");
    return new CookerProfileFile(path, id, source.text());
  }

  /** What it says, with the places of its values. */
  public JsonFields fields() {
    return JsonFields.of(new SourceText(SourceText.name(path), json));
  }
}
