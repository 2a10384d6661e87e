package org.roastfield.core.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Documents and sources as files of the checkout. */
final class Documents {

  private static final Path MODULE = Path.of("").toAbsolutePath();
  private static final Path ROOT = MODULE.resolveSibling("");

  private Documents() {}

  static Path module() {
    return MODULE;
  }

  /** Root of the checkout. */
  static Path root() {
    return ROOT;
  }

  /** Text of a file of the checkout. */
  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(file.toString(), e);
    }
  }

  /** Every Markdown document that speaks of the library. */
  static List<Path> markdown() {
    List<Path> docs = files(MODULE.resolve("docs"), ".md");
    return Stream.concat(
            Stream.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")), docs.stream())
        .toList();
  }

  /** Comments of the sources of library and harness, one line a file. */
  static List<String> comments() {
    return Stream.of(MODULE, ROOT.resolve("harness/lab"), ROOT.resolve("harness/bench"))
        .flatMap(module -> files(module.resolve("src/main/java"), ".java").stream())
        .map(Documents::commentsOf)
        .toList();
  }

  /** Files under a folder whose name ends in a given way, without build output. */
  static List<Path> files(Path folder, String ending) {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(path -> path.toString().endsWith(ending))
          .filter(path -> !path.toString().contains("/target/"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(folder.toString(), e);
    }
  }

  private static String commentsOf(Path file) {
    return text(file)
        .lines()
        .map(String::strip)
        .filter(line -> line.startsWith("*") || line.startsWith("/*") || line.startsWith("//"))
        .map(line -> line.replaceFirst("^[/*]+", "").strip())
        .collect(Collectors.joining(" "));
  }
}
