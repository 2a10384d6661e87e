package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Malformed and odd files, each with what the reader says of it beside it: one line, {@code valid}
 * or the message. The folder names the reader.
 */
class CorpusTest {

  static final Path CORPUS = Path.of("src", "test", "resources", "corpus");

  private static final String EXPECTED = ".expected";

  static Stream<Path> files() {
    return Readers.ALL.keySet().stream().flatMap(kind -> files(kind).stream());
  }

  /** Files of one kind, without their expectations. */
  static List<Path> files(String kind) {
    try (Stream<Path> files = Files.list(CORPUS.resolve(kind))) {
      return files.filter(path -> !path.toString().endsWith(EXPECTED)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is expected of a file. */
  static String expected(Path file) {
    String name = SourceText.name(file);
    String plain = name.substring(0, name.lastIndexOf('.'));
    try {
      return Files.readString(file.resolveSibling(plain + EXPECTED)).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void file_isReadOrRefusedAsExpected(Path file) throws IOException {
    String kind = CORPUS.relativize(file).getName(0).toString();
    String message = Readers.message(kind, SourceText.name(file), Files.readAllBytes(file));
    assertEquals(expected(file), message);
  }

  @Test
  void corpus_isLargeAndOfEveryKind() {
    assertTrue(files().filter(file -> !expected(file).equals("valid")).count() >= 120);
    for (String kind : Readers.ALL.keySet()) {
      assertTrue(files(kind).stream().anyMatch(file -> expected(file).equals("valid")), kind);
    }
  }

  @Test
  void messages_areOfOneLineForPeople() {
    for (Path file : files().toList()) {
      String message = expected(file).replaceFirst("^\\S+: ", "");
      assertTrue(message.chars().noneMatch(Character::isISOControl), message);
      for (String word : List.of("Exception", "java.", "jackson", "com.", "null", "Feature")) {
        assertTrue(!message.contains(word), message);
      }
    }
  }
}
