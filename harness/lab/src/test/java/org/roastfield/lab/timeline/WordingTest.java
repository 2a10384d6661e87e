package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No string in the sources of library and lab may read as leave to serve or eat. */
class WordingTest {

  private static final List<String> FORBIDDEN =
      List.of(
          "safe to eat",
          "safe to serve",
          "is safe",
          "are safe",
          "food-safe",
          "guarantee",
          "ready to eat",
          "ready to serve",
          "may be served",
          "may be eaten",
          "can be served",
          "can be eaten",
          "no risk",
          "harmless",
          "pasteuri",
          "steril",
          "is fine",
          "okay",
          "without danger",
          "permitted to");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  /** A literal that goes on in the next line is one string to its reader. */
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

  @Test
  void noString_readsAsAPermission() throws IOException {
    int seen = 0;
    for (Path root :
        List.of(Path.of("src/main"), Path.of("..", "..", "thermal-core", "src", "main"))) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          seen += check(file);
        }
      }
    }
    assertTrue(seen > 1000, "strings seen: " + seen);
  }

  private static int check(Path file) throws IOException {
    String source = Files.readString(file, StandardCharsets.UTF_8);
    Matcher literals = LITERAL.matcher(JOINED.matcher(source).replaceAll(""));
    int seen = 0;
    while (literals.find()) {
      seen++;
      assertTrue(permits(literals.group(1)).isEmpty(), file + ": " + literals.group(1));
    }
    return seen;
  }

  private static List<String> permits(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return FORBIDDEN.stream().filter(lower::contains).toList();
  }

  @Test
  void permission_isFoundAcrossABrokenLine() {
    String source = "\"This roast is sa\"\n    + \"fe to eat\"";
    Matcher literals = LITERAL.matcher(JOINED.matcher(source).replaceAll(""));
    assertTrue(literals.find());
    assertFalse(permits(literals.group(1)).isEmpty());
  }
}
