package org.roastfield.lab.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {

  @TempDir Path folder = Path.of("");

  @Test
  void text_isWrittenInUtf8_andReplacesWhatWasThere() throws IOException {
    Path file = folder.resolve("a.json");
    AtomicFile.write(file, "old and longer");
    AtomicFile.write(file, "57 °C");
    assertEquals("57 °C", Files.readString(file));
    assertEquals(List.of("a.json"), names());
  }

  /** A folder with something in it cannot be replaced by a file, so the last step fails. */
  @Test
  void failureOfTheMove_leavesNothingBehind() throws IOException {
    Path target = folder.resolve("a.json");
    Files.createDirectories(target.resolve("inside"));
    assertThrows(IOException.class, () -> AtomicFile.write(target, "text"));
    assertEquals(List.of("a.json"), names());
  }

  @Test
  void failureOfTheWriting_leavesNothingBehind() throws IOException {
    Path target = folder.resolve("missing").resolve("a.json");
    assertThrows(IOException.class, () -> AtomicFile.write(target, "text"));
    assertEquals(List.of(), names());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }
}
