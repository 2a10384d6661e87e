package org.roastfield.lab.files;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.roastfield.lab.cooker.CookerProfileJson;

/** All readers of files that other people write, by the folder of their corpus. */
final class Readers {

  /** A reader takes a file's name and bytes. */
  static final Map<String, BiConsumer<String, byte[]>> ALL =
      new TreeMap<>(
          Map.of(
              "cook", CookFileReader::parse,
              "log", CookLogReader::parse,
              "json", (name, bytes) -> CookerProfileFile.parse(Path.of(name), bytes),
              "cooker",
                  (name, bytes) ->
                      CookerProfileJson.read(CookerProfileFile.parse(Path.of(name), bytes)),
              "descriptor", Descriptor::parse,
              "events", PeopleTables.EVENTS::read,
              "spots", PeopleTables.SPOTS::read,
              "checks", PeopleTables.CHECKS::read,
              "afterwards", AfterwardsFile::read));

  private Readers() {}

  /** What a reader says: {@code valid}, or its message. Any other exception is a bug and thrown. */
  static String message(String kind, String name, byte[] bytes) {
    try {
      Objects.requireNonNull(ALL.get(kind)).accept(name, bytes);
      return "valid";
    } catch (CookFileException e) {
      return String.valueOf(e.getMessage());
    }
  }
}
