package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every log among the datasets is a log package, written as the writer writes it. */
class PublishedPackagesTest {

  @TempDir Path again = Path.of("");

  @Test
  void everyPublishedLog_isAPackage_andIsWrittenAgainByteForByte()
      throws IOException, URISyntaxException {
    List<Path> logs = logs();
    assertFalse(logs.isEmpty());
    for (Path folder : logs) {
      LogPackage log = LogPackageReader.read(folder);
      assertEquals(String.valueOf(folder.getFileName()), log.facts().name());
      assertEquals(log.facts().name().startsWith("syn-"), log.facts().madeUp());
      assertTrue(log.facts().licence().isPresent(), "nothing is shipped without a licence");
      Path copy = Files.createDirectory(again.resolve(log.facts().name()));
      LogPackageWriter.write(log, copy);
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          assertEquals(
              Files.readString(file),
              Files.readString(copy.resolve(String.valueOf(file.getFileName()))),
              file.toString());
        }
      }
    }
  }

  private static List<Path> logs() throws IOException, URISyntaxException {
    Path cooks =
        Path.of(Objects.requireNonNull(PublishedPackagesTest.class.getResource("/cooks")).toURI());
    try (Stream<Path> folders = Files.list(cooks)) {
      return folders.filter(folder -> Files.exists(folder.resolve("readings.csv"))).toList();
    }
  }
}
